/** The workshop page in a real browser: built once, opened from its single file with no network. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { buildPage } from '../../scripts/build-page.js';
import { startChromium } from './chromium.js';

export const root = fileURLToPath(new URL('../../', import.meta.url));

export class PageInBrowser {
  private constructor(
    readonly folder: string,
    readonly browser: Browser,
    /** what the browser complained of */
    readonly complaints: string[],
  ) {}

  /** `graphics`: how the browser draws in space; not at all unless told. */
  static async start(graphics?: readonly string[]): Promise<PageInBrowser> {
    const folder = mkdtempSync(join(tmpdir(), 'staveloft-page-'));
    await buildPage(folder, () => '');
    return new PageInBrowser(folder, await startChromium(graphics), []);
  }

  async close(): Promise<void> {
    await this.browser.close();
    rmSync(this.folder, { recursive: true });
  }

  /**
   * A visit of somebody who was never here before, and has no network; to the single file unless to an address. `before` is
   * script that runs before the page's own.
   */
  async open(
    options: BrowserContextOptions = {},
    address?: string,
    before?: string,
  ): Promise<Page> {
    const size = { width: 1280, height: 900 };
    const context = await this.browser.newContext({ viewport: size, offline: true, ...options });
    const page = await context.newPage();
    if (before !== undefined) await page.addInitScript(before);
    page.on('pageerror', (error) => this.complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') this.complaints.push(message.text());
    });
    const single = pathToFileURL(join(this.folder, 'staveloft.html')).href;
    await page.goto(address ?? single);
    await settled(page);
    return page;
  }
}

/** All drawings are as the spec says. */
export async function settled(page: Page): Promise<void> {
  await page.locator('.picture').waitFor();
  await page.locator('.strip[aria-busy=false]').waitFor();
}

/** Begins from a template, whose name is that of its file. */
export async function begin(page: Page, template: string): Promise<void> {
  await page.locator('header select').first().selectOption(template);
  await settled(page);
}

/** Presses what hands out a file, and reads it. */
export async function fileFrom(
  page: Page,
  press: () => Promise<void>,
): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/**
 * Takes the pictures of the workshop page in out-samples/page, to be looked at: `npm run page-pictures`. It needs Chromium, and
 * the bytes of a picture differ from one to the next, so no test compares them.
 */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { buildPage } from './build-page.js';

interface Picture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly colorScheme: 'light' | 'dark';
  readonly template: string;
  readonly before?: (page: Page) => Promise<void>;
}

const part = (name: string) => async (page: Page) => {
  await page.locator(`#tab-${name}`).click();
  await page.locator('.parts').scrollIntoViewIfNeeded();
  await page.locator('.parts').evaluate((element) => element.scrollIntoView());
};

async function inSpace(page: Page): Promise<void> {
  await part('space')(page);
  await page.locator('.space canvas[data-drawn]').waitFor();
  await page.getByLabel('Taken apart along the axis').fill('45');
  // at rest it is drawn finely
  await page.waitForTimeout(1500);
}

const pictures: readonly Picture[] = [
  { name: 'desktop', width: 1280, height: 900, colorScheme: 'light', template: 'wine-cask-225' },
  { name: 'tablet', width: 820, height: 1180, colorScheme: 'dark', template: 'bucket' },
  { name: 'phone', width: 375, height: 812, colorScheme: 'light', template: 'keg-10-inches' },
  {
    name: 'drawing',
    width: 1280,
    height: 800,
    colorScheme: 'light',
    template: 'wine-cask-225',
    before: (page) => page.locator('.sheet').nth(3).click(),
  },
  {
    name: 'dips',
    width: 820,
    height: 900,
    colorScheme: 'dark',
    template: 'wine-cask-225',
    before: part('dip'),
  },
  {
    name: 'space',
    width: 1280,
    height: 1000,
    colorScheme: 'light',
    template: 'wine-cask-225',
    before: inSpace,
  },
];

const root = fileURLToPath(new URL('../', import.meta.url));
const out = join(root, 'out-samples/page');
const scratch = mkdtempSync(join(tmpdir(), 'staveloft-pictures-'));
const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--use-gl=angle',
    '--use-angle=swiftshader',
    '--enable-unsafe-swiftshader',
  ],
});
try {
  mkdirSync(out, { recursive: true });
  await buildPage(scratch, () => '');
  const address = pathToFileURL(join(scratch, 'staveloft.html')).href;
  for (const { name, width, height, colorScheme, template, before } of pictures) {
    const page = await browser.newPage({ viewport: { width, height }, colorScheme });
    await page.goto(address);
    await page.locator('header select').first().selectOption(template);
    await page.locator('.strip[aria-busy=false]').waitFor();
    await before?.(page);
    await page.screenshot({ path: join(out, `${name}.png`) });
    await page.close();
  }
} finally {
  await browser.close();
  rmSync(scratch, { recursive: true });
}

/** Chromium prints the page of a job sheet on two sheets of A4, in every language. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { languages, planVessel, renderVessel } from '../../src/index.js';
import { startChromium } from './chromium.js';

const templates = ['wine-cask-225', 'cask-110', 'keg-30'];

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(() => browser.close());

it.each(languages.flatMap((language) => templates.map((name) => [name, language] as const)))(
  '%s in %s',
  async (name, language) => {
    const file = fileURLToPath(new URL(`../../templates/${name}.yaml`, import.meta.url));
    const vessel = planVessel(readFileSync(file, 'utf8'), name).vessel!;
    const options = { formats: ['svg'], pieces: ['job-sheet'], language } as const;
    const [html] = await renderVessel(vessel, options);
    const page = await browser.newPage();
    await page.setContent(String(html!.content));
    const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
    await page.close();
  },
);

/** Chromium shows an SVG at the size in millimetres that its drawing has: 1 CSS mm is 96 / 25.4 pixels. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/measure.js';
import { drawVessel, planVessel, renderVessel } from '../../src/index.js';
import { startChromium } from './chromium.js';

const pixelsPerMillimetre = 96 / 25.4;
const text = readFileSync(
  fileURLToPath(new URL('../../templates/wine-cask-225.yaml', import.meta.url)),
  'utf8',
);
const vessel = planVessel(text, 'wine-cask-225.yaml').vessel!;

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(() => browser.close());

it.each(['stave', 'head'])(
  'the outline of the %s is as wide and as high as the drawing says',
  async (piece) => {
    const [file] = await renderVessel(vessel, { formats: ['svg'], pieces: [piece] });
    const page = await browser.newPage();
    await page.setContent(String(file!.content).replace(/^<\?xml[^>]*>/, ''));
    const box = await page.evaluate(() => {
      const { width, height } = document.querySelector('#outline path')!.getBoundingClientRect();
      return { width, height };
    });
    const drawing = drawVessel(vessel, { pieces: [piece] })[0]!;
    const bounds = boundsOf(
      ...drawing.strokes.filter(({ layer }) => layer === 'outline').map(({ curve }) => curve),
    )!;
    // Chromium keeps boxes in 32-bit floats of pixels and flattens curves a little
    expect(Math.abs(box.width / pixelsPerMillimetre - (bounds.maxX - bounds.minX))).toBeLessThan(
      0.05,
    );
    expect(Math.abs(box.height / pixelsPerMillimetre - (bounds.maxY - bounds.minY))).toBeLessThan(
      0.05,
    );
    await page.close();
  },
);

/** How soon the vessel in space follows a keystroke, in a Chromium without graphics hardware. */
import { chromium, type Page } from 'playwright-core';
import { late, median } from './processes.js';
import { untilDrawn } from './until-drawn.js';

type Row = readonly [what: string, result: string, target: string];

const keystrokes = 40;
const warmUp = 15;

/** What Chromium does by itself where there is no graphics hardware: the page is painted, the vessel drawn, in software. */
const without = ['--enable-unsafe-swiftshader'];
/** Made to believe in graphics hardware, so that the page's picture goes the same slow way as the vessel. */
const pretended = [...without, '--use-gl=angle', '--use-angle=swiftshader'];

/** `address`: of the page in one file. */
export async function spaceRows(address: string): Promise<Row[]> {
  return [
    await spaceRow(address, 'keystroke to the vessel in space, without graphics', without),
    await spaceRow(address, 'the same, with the page drawn by pretended graphics too', pretended),
  ];
}

async function spaceRow(address: string, what: string, args: readonly string[]): Promise<Row> {
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', ...args],
  });
  try {
    const page = await browser.newPage();
    await page.goto(address);
    await page.locator('.picture').waitFor();
    await page.getByRole('tab', { name: 'In the round' }).click();
    if ((await page.locator('.space.without').count()) > 0)
      return [what, 'not measured: no WebGL here', ''];
    await page.locator('.space canvas[data-drawn]').waitFor();
    const times = await timesOf(page);
    const shown = `${median(times).toFixed(0)} ms, 95th percentile ${late(times).toFixed(0)} ms`;
    return [what, shown, 'under 100 ms'];
  } finally {
    await browser.close();
  }
}

async function timesOf(page: Page): Promise<number[]> {
  const times: number[] = [];
  for (let i = 0; i < warmUp + keystrokes; i++) {
    const time = await page.evaluate<number>(typing(678 + (i % 7)));
    if (i >= warmUp) times.push(time);
  }
  return times;
}

/**
 * As a key does it, while nothing else moves; ends when the next frame has been drawn to its last pixel, which reading one
 * of them waits for. Then the patterns are waited for, so that no keystroke has the work of the one before it.
 */
const typing = (value: number): string => `(async () => {
  const box = document.getElementById('drawing-bilge');
  const canvas = document.querySelector('.space canvas');
  const frame = () => new Promise((go) => requestAnimationFrame(go));
  await frame();
  await frame();
  const patterns = ${untilDrawn};
  const shown = new Promise((done) =>
    new MutationObserver((changes, observer) => {
      observer.disconnect();
      const gl = canvas.getContext('webgl2');
      gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4));
      done();
    }).observe(canvas, { attributeFilter: ['data-drawn'] }));
  const held = () => document.querySelector('.capacity').textContent;
  const before = held();
  const start = performance.now();
  box.value = '${value}';
  box.dispatchEvent(new Event('input', { bubbles: true }));
  await shown;
  const time = performance.now() - start;
  await patterns;
  if (held() === before) throw new Error('the page did not follow');
  return time;
})()`;

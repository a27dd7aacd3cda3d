/** What the workshop page costs in Chromium: until it is there, at every keystroke, and how much script it loads. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { chromium, type CDPSession, type Page } from 'playwright-core';
import { buildPage } from '../scripts/build-page.js';
import { median } from './processes.js';

type Row = readonly [what: string, result: string, target: string];

const keystrokes = 60;
const warmUp = 20;

/** None where there is no Chromium. */
export async function pageRows(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'staveloft-bench-page-'));
  const args = ['--no-sandbox', '--disable-gpu'];
  const browser = await chromium
    .launch({ executablePath: '/usr/bin/chromium', args })
    .catch(() => null);
  if (!browser) return [['the workshop page', 'not measured: no Chromium here', '']];
  try {
    await buildPage(folder, () => '');
    const page = await browser.newPage();
    const address = pathToFileURL(join(folder, 'staveloft.html')).href;
    return [await readyRow(page, address), ...(await keystrokeRows(page)), sizeRow(folder)];
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true });
  }
}

async function readyRow(page: Page, address: string): Promise<Row> {
  const times: number[] = [];
  for (let i = 0; i < 7; i++) {
    await page.goto(address);
    await page.locator('.picture').waitFor();
    const entry = "performance.getEntriesByName('ready')[0].startTime";
    times.push(await page.evaluate<number>(entry));
  }
  return ['workshop page ready, from one file', `${median(times).toFixed(0)} ms`, 'under 1 s'];
}

/**
 * The script that a keystroke runs: until the picture and its boxes stand, until every piece on the screen is drawn anew, and
 * until all are.
 */
async function keystrokeRows(page: Page): Promise<Row[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const [picture, seen, all]: [number[], number[], number[]] = [[], [], []];
  for (let i = 0; i < warmUp + keystrokes; i++) {
    await page.locator('.strip[aria-busy=false]').waitFor();
    const before = await scriptTime(session);
    const first = await page.evaluate<number>(typing(678 + (i % 7)));
    const inView = await scriptTime(session);
    await page.locator('.strip[aria-busy=false]').waitFor();
    const after = await scriptTime(session);
    if (i < warmUp) continue;
    picture.push(first);
    seen.push(inView - before);
    all.push(after - before);
  }
  const shown = (times: readonly number[]): string =>
    `${median(times).toFixed(1)} ms, 95th percentile ${late(times).toFixed(1)} ms`;
  return [
    ['keystroke to picture, figures and messages, script', shown(picture), 'under 16 ms'],
    ['the same to every pattern on the screen', shown(seen), 'under 16 ms'],
    ['the same to every pattern, the others once typing pauses', shown(all), ''],
  ];
}

const late = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(0.95 * times.length)]!;

/**
 * As a key does it; then whatever the page put off until after the event. Ends when the pieces on the screen are drawn, and
 * answers with the time that the picture took.
 */
const typing = (value: number): string => `(async () => {
  const box = document.getElementById('drawing-bilge');
  const held = () => document.querySelector('.capacity').textContent;
  const before = held();
  const drawn = new Promise((done) =>
    new PerformanceObserver((list, observer) => {
      if (list.getEntriesByName('drawn').length === 0) return;
      observer.disconnect();
      done();
    }).observe({ type: 'mark' }));
  const start = performance.now();
  box.value = '${value}';
  box.dispatchEvent(new Event('input', { bubbles: true }));
  for (let i = 0; i < 5; i++) await Promise.resolve();
  const time = performance.now() - start;
  if (held() === before) throw new Error('the picture did not follow');
  await drawn;
  return time;
})()`;

async function scriptTime(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? NaN);
}

/** A script with all that it imports before it runs. */
function withImports(
  name: string,
  read: (name: string) => string,
  found = new Set<string>(),
): Set<string> {
  if (found.has(name)) return found;
  found.add(name);
  for (const [, from] of read(name).matchAll(/(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g))
    withImports(from!, read, found);
  return found;
}

function sizeRow(folder: string): Row {
  const assets = join(folder, 'page/assets');
  const size = (name: string): number => gzipSync(readFileSync(join(assets, name))).length / 1000;
  const html = readFileSync(join(folder, 'page/index.html'), 'utf8');
  const names = readdirSync(assets).filter((name) => name.endsWith('.js'));
  const [start] = names.filter((name) => html.includes(name));
  const first = withImports(start!, (name) => readFileSync(join(assets, name), 'utf8'));
  const kilobytes = [...first].reduce((sum, name) => sum + size(name), 0);
  return ['script of the page at first, gzipped', `${kilobytes.toFixed(0)} kB`, 'under 350 kB'];
}

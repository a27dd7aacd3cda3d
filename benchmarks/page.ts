/** What the workshop page costs in Chromium: until it is there, at every keystroke, and how much script it loads. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { chromium, type CDPSession, type Page } from 'playwright-core';
import { buildPage } from '../scripts/build-page.js';
import { spaceRows } from './page-space.js';
import { late, median } from './processes.js';
import { untilDrawn } from './until-drawn.js';

type Row = readonly [what: string, result: string, target: string];

const keystrokes = 60;
const warmUp = 20;
/** ms */
const betweenKeys = 100;

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
    const ready = await readyRow(page, address);
    const typed = await keystrokeRows(page);
    await page.close();
    return [ready, ...typed, ...(await spaceRows(address)), sizeRow(folder)];
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
 * What a keystroke costs: the page's script until the picture and its boxes stand, and until every pattern is drawn anew, which
 * a helper does beside the page; and how long that takes in all.
 */
async function keystrokeRows(page: Page): Promise<Row[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const [picture, script, wait]: [number[], number[], number[]] = [[], [], []];
  for (let i = 0; i < warmUp + keystrokes; i++) {
    // as fast as anybody types: the browser has shown what the key before changed
    await page.waitForTimeout(betweenKeys);
    const before = await scriptTime(session);
    const times = await page.evaluate<[number, number]>(typing(678 + (i % 7)));
    const after = await scriptTime(session);
    if (i < warmUp) continue;
    picture.push(times[0]);
    wait.push(times[1]);
    script.push(after - before);
  }
  const shown = (times: readonly number[]): string =>
    `${median(times).toFixed(1)} ms, 95th percentile ${late(times).toFixed(1)} ms`;
  return [
    ['keystroke to picture, figures and messages, script', shown(picture), 'under 16 ms'],
    ['the same to every pattern, script of the page', shown(script), 'under 16 ms'],
    ['the same to every pattern, all in all, with the helper beside the page', shown(wait), ''],
  ];
}

/**
 * As a key does it; then whatever the page put off until after the event. Ends when every pattern is drawn, and answers
 * with the times that the picture and the patterns took.
 */
const typing = (value: number): string => `(async () => {
  const box = document.getElementById('drawing-bilge');
  const held = () => document.querySelector('.capacity').textContent;
  const before = held();
  const drawn = ${untilDrawn};
  const start = performance.now();
  box.value = '${value}';
  box.dispatchEvent(new Event('input', { bubbles: true }));
  for (let i = 0; i < 5; i++) await Promise.resolve();
  const time = performance.now() - start;
  if (held() === before) throw new Error('the picture did not follow');
  await drawn;
  return [time, performance.now() - start];
})()`;

async function scriptTime(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? NaN);
}

/** Scripts with all that they import before they run. */
function withImports(
  names: readonly string[],
  read: (name: string) => string,
  found = new Set<string>(),
): Set<string> {
  for (const name of names) {
    if (found.has(name)) continue;
    found.add(name);
    const imports = /(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g;
    withImports(
      [...read(name).matchAll(imports)].map(([, from]) => from!),
      read,
      found,
    );
  }
  return found;
}

/** What the page and the helper that draws beside it load before the first drawing stands. */
function sizeRow(folder: string): Row {
  const assets = join(folder, 'page/assets');
  const size = (name: string): number => gzipSync(readFileSync(join(assets, name))).length / 1000;
  const html = readFileSync(join(folder, 'page/index.html'), 'utf8');
  const names = readdirSync(assets).filter((name) => name.endsWith('.js'));
  const first = names.filter((name) => html.includes(name) || /^(main|helper)-/.test(name));
  const all = withImports(first, (name) => readFileSync(join(assets, name), 'utf8'));
  const kilobytes = [...all].reduce((sum, name) => sum + size(name), 0);
  return ['script of the page at first, gzipped', `${kilobytes.toFixed(0)} kB`, 'under 350 kB'];
}

/** From widths to sets in a real browser, from the single file and without a network: the search runs in a worker from a blob. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { matchStaves, planVessel, readStock, requestFor } from '../../src/index.js';
import { filesOfSet, keptChosen } from '../../src/page/rack/chosen.js';
import { fontFile } from '../cli/workshop.js';
import { begin, fileFrom, PageInBrowser, root, settled } from './page.js';
import { unpacked } from './pdf-programs.js';

let workshop: PageInBrowser;
let page: Page;
beforeAll(async () => {
  workshop = await PageInBrowser.start();
  page = await workshop.open();
  await begin(page, 'wine-cask-225');
  await page.locator('.handle').click();
});
afterAll(() => workshop.close());

const said = () => page.locator('#rack-width-said').innerText();
const list = join(root, 'templates/rack-invented.csv');

it('widths are typed one after the other, wrong ones stay to be mended', async () => {
  for (const text of ['71.5', '72,5', '2 13/16', '66 mm']) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  expect(await said()).toBe('4: 66.0 mm. 4 staves on the rack.');
  await page.keyboard.type('7x');
  await page.keyboard.press('Enter');
  expect(await said()).toContain('no length');
  expect(await page.locator('#rack-width').inputValue()).toBe('7x');
  await page.locator('#rack-width').fill('');
  expect(await page.locator('.handle').innerText()).toContain('4 staves');
});

it('a list that is broken takes nothing, and says where', async () => {
  const input = page.locator('.rack input[type=file]');
  const buffer = Buffer.from('mark,width\nX1,70\nX1,seventy\n');
  await input.setInputFiles({ name: 'rack.csv', mimeType: 'text/csv', buffer });
  await page.getByRole('alert').waitFor();
  expect(await page.getByRole('alert').innerText()).toMatch(/Line 3: .*X1/);
  expect(await page.locator('.handle').innerText()).toContain('4 staves');
  await page.getByRole('button', { name: 'Empty the rack' }).click();
  await page.locator('.handle:has-text("Rack of staves")').waitFor();
  await page.getByRole('button', { name: 'Bring them back' }).click();
  await page.locator('.handle:has-text("4 staves")').waitFor();
  await page.getByRole('button', { name: 'Empty the rack' }).click();
  await input.setInputFiles(list);
  await page.locator('.handle:has-text("118 staves")').waitFor();
});

it('chooses the sets that the command chooses', async () => {
  await page.getByLabel('How many vessels').fill('2');
  await page.getByRole('button', { name: 'Choose sets' }).click();
  await page.locator('.set').nth(1).waitFor();
  const spec = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
  const { vessel } = planVessel(spec, '');
  const { stock } = readStock(readFileSync(list, 'utf8'), 'mm');
  const result = await matchStaves(stock!, requestFor(vessel!, { vessels: 2 }));
  for (const [i, set] of result.sets.entries()) {
    const marks = await page.locator('.set').nth(i).locator('tbody th').allInnerTexts();
    expect(marks.map((text) => text.replace(' (bung)', ''))).toEqual(
      set.staves.map(({ mark }) => mark),
    );
  }
  expect(await page.locator('.ring svg path').count()).toBeGreaterThan(10);
}, 120_000);

it('staves are marked as set up, which the browser keeps with the rack and the sets', async () => {
  const boxes = page.locator('.set').first().getByRole('checkbox');
  await boxes.nth(0).check();
  await boxes.nth(1).check();
  await page.reload();
  await settled(page);
  await page.locator('.handle').click();
  expect(await page.locator('.set').first().innerText()).toContain('Set up: 2 of');
  expect(await page.locator('.handle').innerText()).toContain('118 staves');
});

it('the rack is saved as the list that it was', async () => {
  const file = await fileFrom(page, () =>
    page.getByRole('button', { name: 'Save the list (CSV)' }).click(),
  );
  const saved = readStock(file.bytes.toString('utf8'), 'mm').stock!;
  const given = readStock(readFileSync(list, 'utf8'), 'mm').stock!;
  expect(saved.staves).toEqual(given.staves);
});

it('a set’s files come in one zip, made beside the page: those that `match --out` writes', async () => {
  let helpers = 0;
  page.once('worker', () => helpers++);
  const file = await fileFrom(page, () =>
    page.getByRole('button', { name: 'Files of this set (zip)' }).last().click(),
  );
  expect(file.name).toBe('set-2.zip');
  const files = unzipSync(file.bytes);
  const names = Object.keys(files);
  expect(names.slice(0, 5)).toEqual([
    ...['sets.csv', 'set-2.svg', 'set-2.pdf', 'set-2/spec.yaml', 'set-2/index.html'],
  ]);
  expect(names.filter((name) => /^set-2\/stave-\d\d\.(dxf|svg)$/.test(name))).toHaveLength(
    2 * (await page.locator('.set').nth(1).locator('tbody tr').count()),
  );
  expect(strFromU8(files['set-2.pdf']!.subarray(0, 5))).toBe('%PDF-');
  expect(helpers).toBe(1);
  expect(page.workers().length).toBeLessThan(2);

  const kept = await page.evaluate(() => localStorage.getItem('staveloft.sets'));
  const font = () => Promise.resolve(new Uint8Array(readFileSync(fontFile)));
  const due = await filesOfSet(keptChosen(kept)!, 2, { font, language: 'en', paper: 'a4' });
  if ('refused' in due) throw new Error('refused');
  expect(names).toEqual(due.map(({ name }) => name));
  for (const { name, content } of due) {
    const [made, written] = [Buffer.from(files[name]!), Buffer.from(content)];
    const plain = name.endsWith('.pdf') ? unpacked : (bytes: Buffer) => bytes;
    expect(plain(made).equals(plain(written)), name).toBe(true);
  }

  const alone = await workshop.open(
    {},
    undefined,
    `delete globalThis.Worker; localStorage.setItem('staveloft.sets', ${JSON.stringify(kept)})`,
  );
  await alone.locator('.handle').click();
  const same = await fileFrom(alone, () =>
    alone.getByRole('button', { name: 'Files of this set (zip)' }).last().click(),
  );
  expect([alone.workers().length, same.bytes.equals(file.bytes)]).toEqual([0, true]);
  await alone.close();
}, 60_000);

it('a broken stave gives its place to a spare, and leaves the rack', async () => {
  const first = page.locator('.set').first();
  const mark = first.locator('tbody th button').nth(3);
  const gone = await mark.innerText();
  await mark.click();
  const group = page.getByRole('group', { name: `${gone}: broken` });
  expect(await group.innerText()).toMatch(
    /Or cut one [\d.]+ mm wide; [\d.]+ mm to [\d.]+ mm close/,
  );
  const take = group.getByRole('button').first();
  const spare = (await take.innerText()).replace('Take ', '');
  await take.click();
  await page.locator('.handle:has-text("117 staves")').waitFor();
  expect(await mark.innerText()).toBe(spare);
  await expect.poll(() => mark.evaluate((e) => e === document.activeElement)).toBe(true);
  expect(await first.innerText()).toContain(`${spare} takes the place of ${gone}`);
});

it('no part of a set is wider than the sheet, on a desk, a tablet or a phone', async () => {
  for (const width of [1280, 800, 390]) {
    await page.setViewportSize({ width, height: 900 });
    const wide = await page
      .locator('.sheet-of-rack, .sheet-of-rack *:not(svg *)')
      .evaluateAll(
        (all) => all.filter((e) => e.clientWidth > 0 && e.scrollWidth > e.clientWidth + 1).length,
      );
    expect(wide, `${width} px`).toBe(0);
  }
  await page.setViewportSize({ width: 1280, height: 900 });
});

it('staves that stand already are kept in the first set; unknown ones are named in place', async () => {
  const box = page.locator('#rack-standing');
  await box.fill('Q7');
  await page.getByText('The rack has no stave Q7.').waitFor();
  expect(await page.getByRole('button', { name: 'Choose sets' }).isDisabled()).toBe(true);
  await box.fill('A11');
  await page.getByRole('button', { name: 'Stave B07 stands already' }).click();
  expect(await box.inputValue()).toBe('A11, B07');
  const choose = page.getByRole('button', { name: 'Choose sets' });
  await choose.press('Enter');
  await page.locator('button:has-text("Choose sets"):not([aria-disabled=true])').waitFor();
  // the keyboard's place is not lost while it is of no use
  expect(await choose.evaluate((button) => button === document.activeElement)).toBe(true);
  const marks = await page.locator('.set').first().locator('tbody th button').allInnerTexts();
  expect(marks[marks.indexOf('A11') + 1]).toBe('B07');
  expect(await page.locator('.set').first().innerText()).toContain('Set up: 2 of');
  await page.reload();
  await settled(page);
  await page.locator('.handle').click();
  expect(await box.inputValue()).toBe('A11, B07');
  await box.fill('');
}, 60_000);

it('what an older page kept is taken on', async () => {
  await page.evaluate(() => {
    const sets = JSON.parse(localStorage.getItem('staveloft.sets')!) as { wishes?: unknown };
    delete sets.wishes;
    localStorage.setItem('staveloft.sets', JSON.stringify(sets));
    localStorage.removeItem('staveloft.standing');
    localStorage.setItem('staveloft.language', 'de');
  });
  await page.reload();
  await settled(page);
  await page.locator('.handle').click();
  expect(await page.locator('.handle').innerText()).toContain('117 Dauben');
  await page.locator('.set').first().locator('tbody th button').nth(2).click();
  expect(await page.locator('.broken').innerText()).toContain('Gebrochen:');
  await page.evaluate(() => localStorage.setItem('staveloft.language', 'en'));
  await page.reload();
  await settled(page);
  await page.locator('.handle').click();
});

it('a set becomes the vessel that is drawn', async () => {
  await page.getByRole('button', { name: 'Draw the vessel of this set' }).first().click();
  await settled(page);
  expect(await page.locator('h1').innerText()).toContain('set 1');
  await page.getByRole('tab', { name: 'As text' }).click();
  expect(await page.locator('#spec-text').inputValue()).toContain('widths:');
});

it('a search is stopped', async () => {
  await page.locator('.handle').click();
  await page.getByLabel('as many as the rack gives').check();
  await page.getByText('How near, how many staves, planing, bung stave').click();
  await page.getByLabel('Diameter may be off by, mm').fill('0.01');
  await page.getByLabel('Planed off a set at most, mm').fill('0');
  await page.getByRole('button', { name: 'Choose sets' }).click();
  const stop = page.getByRole('button', { name: 'Stop, and take the best so far' });
  await stop.click();
  await page.locator('button:has-text("Choose sets"):not([aria-disabled=true])').waitFor();
  expect(await page.locator('.sets').innerText()).toContain('The search was stopped');
}, 60_000);

it('the browser had nothing to complain of', () => {
  expect(workshop.complaints).toEqual([]);
});

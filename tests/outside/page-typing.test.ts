/** Typing into the page, right and wrong: nothing is lost, and it says in plain words what cannot be. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { planVessel, renderVessel } from '../../src/index.js';
import { begin, fileFrom, PageInBrowser, root, settled } from './page.js';

let workshop: PageInBrowser;
let page: Page;
beforeAll(async () => {
  workshop = await PageInBrowser.start();
  page = await workshop.open();
});
afterAll(() => workshop.close());
beforeEach(async () => {
  await page.getByRole('tab').first().click();
  await begin(page, 'wine-cask-225');
});

const bilge = () => page.locator('#drawing-bilge');
const capacity = () => page.locator('.capacity strong').innerText();

async function type(text: string): Promise<void> {
  await bilge().fill(text);
  await settled(page);
}

it.each([
  ['26 3/4', 679.45],
  ['679,45', 679.45],
  ['26.75 in', 679.45],
  ['67.945 cm', 679.45],
])('%s in a box is a length', async (text, expected) => {
  await type(text);
  await page.getByRole('tab', { name: 'As text' }).click();
  expect(await page.locator('#spec-text').inputValue()).toContain(`bilge: ${expected}`);
});

it('what cannot be read stays as it was typed, and the vessel as it was', async () => {
  const before = await capacity();
  await type('69x');
  expect(await capacity()).toBe(before);
  await page.locator('#drawing-bilge-said', { hasText: 'no length' }).waitFor();
  await page.getByRole('tab', { name: 'Numbers' }).click();
  expect(await bilge().inputValue()).toBe('69x');
  await type('690');
  expect(await capacity()).not.toBe(before);
  expect(await page.locator('#drawing-bilge-said').innerText()).toBe('');
});

it('is there again after the page was left in the middle of typing', async () => {
  await bilge().fill('681');
  await page.reload();
  await page.locator('.picture').waitFor();
  expect(await bilge().inputValue()).toBe('681');
});

it('what cannot be built is said beside the number, with what would help; the text is kept', async () => {
  await type('400');
  expect(await page.locator('.lag').count()).toBe(1);
  const said = await page.locator('.notes .error').first().innerText();
  expect(said).toMatch(/bilge|ends/);
  await page.getByRole('tab', { name: 'As text' }).click();
  expect(await page.locator('#spec-text').inputValue()).toContain('bilge: 400');
});

it('undo and redo go through the changes', async () => {
  const before = await capacity();
  await bilge().click();
  await page.keyboard.type('695');
  await page.locator('#drawing-height').click();
  await page.keyboard.type('900');
  const after = await capacity();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await capacity()).toBe(before);
  expect(await bilge().inputValue()).toBe('680');
  await page.getByRole('button', { name: 'Redo' }).click();
  await page.getByRole('button', { name: 'Redo' }).click();
  expect(await capacity()).toBe(after);
});

it('an emptied box goes back to its default, a full one to the file', async () => {
  await page.getByRole('group').filter({ hasText: 'Heads' }).locator('summary').click();
  const inset = page.locator('#panel-heads\\.croze\\.inset');
  const byDefault = await inset.inputValue();
  await inset.fill('55');
  expect(await page.locator('#drawing-heads\\.croze\\.inset').inputValue()).toBe('55');
  await inset.fill('');
  await inset.blur();
  expect(await inset.inputValue()).toBe(byDefault);
});

it('heads that differ have boxes of their own, and those of heads alike come back with the choice', async () => {
  const openHeads = () =>
    page
      .locator('details', { hasText: 'Heads' })
      .evaluate((group) => group.setAttribute('open', ''));
  await openHeads();
  const choice = page.getByLabel('Top and bottom head');
  await choice.selectOption('apart');
  await page.getByLabel('Groove depth, top').fill('6');
  await settled(page);
  expect(await page.getByLabel('Groove depth, bottom').inputValue()).toBe('5');
  await page.getByRole('tab', { name: 'As text' }).click();
  const text = () => page.locator('#spec-text').inputValue();
  expect(await text()).toMatch(/top:.*croze: \{ depth: 6 \}/s);
  await page.getByRole('tab', { name: 'Settings' }).click();
  await openHeads();
  await choice.selectOption('alike');
  expect(await page.getByLabel('Groove depth (mm)', { exact: true }).inputValue()).toBe('5');
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await page.getByLabel('Groove depth, top').inputValue()).toBe('6');
});

it('staves become uneven and even again, and a bung hole comes and goes, each in one step', async () => {
  const text = async (): Promise<string> => {
    await page.getByRole('tab', { name: 'As text' }).click();
    const found = await page.locator('#spec-text').inputValue();
    await page.getByRole('tab', { name: 'Settings' }).click();
    return found;
  };
  const open = (group: string) =>
    page
      .locator('details', { has: page.locator('summary', { hasText: group }) })
      .evaluate((element) => element.setAttribute('open', ''));
  const first = await text();
  await page.getByLabel('Staves are').selectOption('uneven');
  const widths = await page.locator('#panel-staves\\.widths').inputValue();
  expect(widths.split(', ')).toHaveLength(28);
  expect(await text()).not.toContain('count');
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await text()).toBe(first);
  expect(await page.locator('#drawing-staves\\.count').inputValue()).toBe('28');

  await open('Bung');
  await page.getByLabel('Bung', { exact: true }).selectOption('none');
  expect(await text()).toContain('bung: none');
  await open('Bung');
  await page.locator('#panel-bung\\.diameter').fill('44');
  expect(await page.getByLabel('Bung', { exact: true }).inputValue()).toBe('bored');

  await begin(page, 'bucket');
  await open('Bung');
  await page.getByLabel('Bung', { exact: true }).selectOption('bored');
  const box = page.locator('#panel-bung\\.diameter');
  expect(Number(await box.inputValue())).toBeGreaterThan(10);
  await box.fill('');
  await box.pressSequentially('32');
  expect(await text()).toMatch(/bung: \{ diameter: 32 \}|diameter: 32/);
  expect(await page.locator('.notes .error').count()).toBe(0);
});

it('a fan of other widths is in its file as the command draws it, and one that cannot be is refused in words', async () => {
  await page.getByRole('tab', { name: 'Print and cut' }).click();
  const pack = page.getByRole('button', { name: 'The whole pack' });
  await page.getByLabel('Narrowest stave').fill('55');
  await page.locator('#fan-2-said', { hasText: 'both boxes' }).waitFor();
  expect(await pack.isDisabled()).toBe(true);
  await page.getByLabel('Widest stave').fill('400');
  await page.locator('#fan-2-said', { hasText: 'half of the vessel' }).waitFor();
  await page.getByLabel('Widest stave').fill('85');
  await page.getByLabel('Length along the grain').fill('1250');
  await page.getByRole('textbox', { name: 'Width (mm)', exact: true }).fill('25000');
  await page.locator('#plank-2-said', { hasText: '20 m' }).waitFor();
  await page.getByRole('textbox', { name: 'Width (mm)', exact: true }).fill('1250');
  await page.locator('#plank-2-said:empty').waitFor({ state: 'attached' });
  expect(await pack.isDisabled()).toBe(false);
  await page.getByRole('button', { name: /^Stave fan/ }).click();
  const dxf = await fileFrom(page, () => page.getByRole('button', { name: 'Save as DXF' }).click());
  await page.keyboard.press('Escape');
  const template = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
  const { vessel } = planVessel(template, 'wine-cask-225.yaml');
  const options = { formats: ['dxf'], pieces: ['stave-fan'], fan: { from: 55, to: 85 } } as const;
  const [file] = await renderVessel(vessel!, options);
  expect(dxf.bytes.toString('utf8')).toBe(file!.content);
  for (const id of ['fan-1', 'fan-2', 'plank-1', 'plank-2']) await page.locator(`#${id}`).fill('');
});

it('a broken text loses nothing, and boxes say that it has to be mended', async () => {
  await page.getByRole('tab', { name: 'As text' }).click();
  const editor = page.locator('#spec-text');
  const text = await editor.inputValue();
  await editor.fill(`${text}\nhoops: [`);
  expect(await page.locator('.notes .error').count()).toBeGreaterThan(0);
  await bilge().fill('700');
  await page.locator('#drawing-bilge-said', { hasText: 'broken' }).waitFor();
  expect(await editor.inputValue()).toBe(`${text}\nhoops: [`);
  await editor.fill(text);
  expect(await page.locator('.notes .error').count()).toBe(0);
  const file = await fileFrom(page, () =>
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  );
  expect(file.bytes.toString('utf8')).toBe(text);
});

it('a hostile title is text, on the page and in its files', async () => {
  await page.locator('#panel-title').fill('<img src=x onerror=alert(1)>');
  await settled(page);
  expect(await page.locator('h1').innerText()).toContain('<img src=x onerror=alert(1)>');
  expect(await page.locator('h1 img').count()).toBe(0);
});

it('a file that is opened is drawn, and one that is none is refused in words', async () => {
  const input = page.locator('input[type=file]');
  const text =
    'vessel: tub\ntitle: Mine\nunits: mm\nheight: 280\ntop: 300\nbottom: 260\nstaves: { count: 16 }\n';
  await input.setInputFiles({
    name: 'mine.yaml',
    mimeType: 'text/yaml',
    buffer: Buffer.from(text),
  });
  await page.locator('#drawing-top').waitFor();
  expect(await page.locator('h1').innerText()).toContain('Mine');
  const bytes = Buffer.from([0xff, 0xfe, 0x00]);
  await input.setInputFiles({ name: 'photo.yaml', mimeType: 'text/yaml', buffer: bytes });
  expect(await page.getByRole('alert').innerText()).toContain('not a text file');
});

it('sizes for a capacity and makes it so', async () => {
  await page.getByRole('tab', { name: 'Size for a capacity' }).click();
  await page.getByLabel('It is to hold').fill('228');
  await page.getByRole('button', { name: 'Make it so' }).click();
  expect(await capacity()).toBe('228.0');
});

it('every piece follows each key, drawn beside the page; the last key counts', async () => {
  const data = `[...document.querySelectorAll('.sheets li')].map((li) => li.querySelector('path').getAttribute('d'))`;
  await type('690');
  const wanted = await page.evaluate<string[]>(data);
  await type('700');
  const others = await page.evaluate<string[]>(data);
  expect(others.length).toBeGreaterThan(20);
  expect(others.at(0)).not.toBe(wanted.at(0));
  expect(others.at(-1)).not.toBe(wanted.at(-1));
  for (const text of ['69', '698', '695', '690']) await bilge().fill(text);
  await settled(page);
  expect(await page.evaluate(data)).toEqual(wanted);
  expect(page.workers()).toHaveLength(1);
});

it('where the browser has no helpers, the page draws by itself', async () => {
  const alone = await workshop.open({}, undefined, 'delete globalThis.Worker');
  const titles = `[...document.querySelectorAll('.sheets li')].map((li) => li.innerText)`;
  await begin(alone, 'wine-cask-225');
  expect(await alone.evaluate(titles)).toEqual(await page.evaluate(titles));
  expect(alone.workers()).toHaveLength(0);
  await alone.close();
});

it('measures between two corners by keyboard and by hand', async () => {
  await page.getByRole('button', { name: /^Head, board 1/ }).click();
  await page.getByRole('button', { name: 'Measure' }).click();
  const canvas = page.locator('.canvas');
  const box = (await canvas.boundingBox())!;
  await canvas.click({ position: { x: box.width * 0.25, y: box.height / 2 } });
  await canvas.press('Enter');
  expect(await page.locator('[data-read=measured]').innerText()).toMatch(/^\d+(\.\d+)? mm apart/);
  await page.keyboard.press('Escape');
  expect(await page.locator('.viewer[open]').count()).toBe(0);
});

it('changes units and language, and is the same vessel', async () => {
  const before = await capacity();
  await page.locator('.habits summary').click();
  await page.getByRole('button', { name: 'Change mm to inches' }).click();
  expect(await capacity()).toBe(before);
  expect(await bilge().inputValue()).toMatch(/^26\.77/);
  await page.getByLabel('Language', { exact: true }).selectOption('de');
  await settled(page);
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  expect(await capacity()).toBe(before.replace('.', ','));
  expect(
    await page
      .getByRole('button', { name: /^Daube/ })
      .first()
      .isVisible(),
  ).toBe(true);
});

it('the browser had nothing to complain of', () => {
  expect(workshop.complaints).toEqual([]);
});

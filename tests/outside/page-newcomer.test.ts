/** From opening the page for the first time to files that are true: nothing but the page's single file, and no network. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { packVessel, planVessel, renderVessel } from '../../src/index.js';
import { darkRuns, rasterOf, saved, unpacked } from './pdf-programs.js';
import { servePage } from '../../src/cli/page-server.js';
import { begin, fileFrom, PageInBrowser, root, settled } from './page.js';

let workshop: PageInBrowser;
beforeAll(async () => {
  workshop = await PageInBrowser.start();
});
afterAll(() => workshop.close());

const dpi = 150;
const pixels = (mm: number): number => (mm * dpi) / 25.4;

/** Width and height of the square of 100 mm: the upper and lower of the lines that are so wide and begin at one place. */
function squareOn(path: string, wanted = 100): [number, number] {
  const raster = rasterOf(path, 1, dpi);
  const sides: { y: number; from: number; length: number }[] = [];
  for (let y = 0; y < raster.height; y++) {
    const row = Array.from({ length: raster.width }, (_, x) => raster.at(x, y));
    for (const { middle, length } of darkRuns(row))
      if (Math.abs(length - pixels(wanted)) < 4)
        sides.push({ y, length, from: middle - length / 2 });
  }
  const [first] = sides;
  const last = sides.filter(({ from }) => Math.abs(from - first!.from) < 2).at(-1)!;
  return [first!.length, last.y - first!.y + 1];
}

it('a newcomer types the bilge, opens the stave, and prints it true to scale', async () => {
  const page = await workshop.open();
  await begin(page, 'wine-cask-225');
  const before = await page.locator('.capacity').innerText();
  const bilge = page.getByLabel('Bilge ⌀', { exact: true });
  await bilge.click();
  await page.keyboard.type('695');
  await settled(page);
  expect(await page.locator('.capacity').innerText()).not.toBe(before);
  await page.getByRole('button', { name: /^Stave, 28/ }).click();
  const drawn = await page.locator('.lines #outline path').first().boundingBox();
  const canvas = (await page.locator('.canvas').boundingBox())!;
  expect(drawn!.width).toBeGreaterThan(canvas.width / 2);
  expect(drawn!.width).toBeLessThan(canvas.width);
  const pdf = await fileFrom(page, () => page.getByRole('button', { name: 'Save as PDF' }).click());
  expect(pdf.name).toBe('stave.pdf');
  const [across, along] = squareOn(saved(pdf.bytes));
  // the line's own width, and a pixel
  expect(Math.abs(across - pixels(100))).toBeLessThan(4);
  expect(Math.abs(along - pixels(100))).toBeLessThan(4);
  await page.context().close();
});

it('a printer that draws 100 mm as 99 and 101 is put right', async () => {
  const page = await workshop.open();
  await page.getByRole('tab', { name: 'Print and cut' }).click();
  await page.getByLabel('My printer draws 100 mm across').fill('99');
  await page.getByLabel('and 100 mm along').fill('101');
  await page.getByRole('button', { name: /^Head$/ }).click();
  const pdf = await fileFrom(page, () => page.getByRole('button', { name: 'Save as PDF' }).click());
  const [across, along] = squareOn(saved(pdf.bytes), 100 / 0.99);
  expect(Math.abs(across - pixels(100 / 0.99))).toBeLessThan(4);
  expect(Math.abs(along - pixels(100 / 1.01))).toBeLessThan(4);
  await page.context().close();
});

it('the pack is what the command writes, byte for byte; of a PDF, what is packed in it', async () => {
  const page = await workshop.open();
  await begin(page, 'keg-30');
  await page.getByRole('tab', { name: 'Print and cut' }).click();
  const zip = await fileFrom(page, () =>
    page.getByRole('button', { name: 'The whole pack' }).click(),
  );
  const files = unzipSync(new Uint8Array(zip.bytes));
  const text = readFileSync(join(root, 'templates/keg-30.yaml'), 'utf8');
  const font = (): Promise<Uint8Array> =>
    Promise.resolve(readFileSync(join(root, 'fonts/DejaVuSans.ttf')));
  const formats = ['svg', 'dxf', 'pdf'] as const;
  const pack = await packVessel(planVessel(text, 'keg-30.yaml').vessel!, { formats, font });
  expect(Object.keys(files).sort()).toEqual(pack.map(({ name }) => name).sort());
  for (const { name, content } of pack) {
    const [made, due] = [Buffer.from(files[name]!), Buffer.from(content)];
    const plain = name.endsWith('.pdf') ? unpacked : (bytes: Buffer) => bytes;
    expect(plain(made).equals(plain(due)), name).toBe(true);
  }
  await page.context().close();
}, 120_000);

it('the served page, in parts and under its strict rules, does the same and asks nobody else', async () => {
  const server = await servePage(join(workshop.folder, 'page'), 0);
  const page = await workshop.open({ offline: false }, server.address);
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(server.address) && !/^(blob|data):/.test(url)) elsewhere.push(url);
  });
  await page.locator('.habits summary').click();
  await page.locator('.habits select').first().selectOption('fr');
  await settled(page);
  await page.getByRole('button', { name: /^Fond$/ }).click();
  const pdf = await fileFrom(page, () =>
    page.getByRole('button', { name: 'Enregistrer en PDF' }).click(),
  );
  const [across, along] = squareOn(saved(pdf.bytes));
  expect(Math.abs(across - pixels(100))).toBeLessThan(4);
  expect(Math.abs(along - pixels(100))).toBeLessThan(4);
  expect(elsewhere).toEqual([]);
  // small drawings in French come from the helper
  expect(page.workers()).toHaveLength(1);
  await page.context().close();
  await server.close();
});

it('the served page searches the rack in a worker, which its rules allow', async () => {
  const server = await servePage(join(workshop.folder, 'page'), 0);
  const page = await workshop.open({ offline: false }, server.address);
  await begin(page, 'wine-cask-225');
  await page.locator('.handle').click();
  await page
    .locator('.rack input[type=file]')
    .setInputFiles(join(root, 'templates/rack-invented.csv'));
  await page.locator('.handle:has-text("118 staves")').waitFor();
  await page.getByRole('button', { name: 'Choose sets' }).click();
  await page.locator('.set').first().waitFor();
  expect(await page.locator('.set').first().locator('tbody th').count()).toBeGreaterThan(24);
  await page.context().close();
  await server.close();
}, 60_000);

it('DXF has its lettering as outlines where that is chosen, as the command draws it', async () => {
  const page = await workshop.open();
  await begin(page, 'wine-cask-225');
  await page.getByRole('tab', { name: 'Print and cut' }).click();
  await page.getByLabel('Lettering in DXF').selectOption('outlines');
  await page.getByRole('button', { name: /^Head$/ }).click();
  const dxf = await fileFrom(page, () => page.getByRole('button', { name: 'Save as DXF' }).click());
  const text = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
  const { vessel } = planVessel(text, 'wine-cask-225.yaml');
  const options = { formats: ['dxf'], pieces: ['head'], letteringAs: 'outlines' } as const;
  const [file] = await renderVessel(vessel!, options);
  expect(dxf.bytes.toString('utf8')).toBe(file!.content);
  expect(dxf.bytes.toString('utf8')).not.toContain('\nTEXT\n');
  await page.context().close();
});

it('the browser had nothing to complain of', () => {
  expect(workshop.complaints).toEqual([]);
});

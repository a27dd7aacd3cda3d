/** The vessel in space, in a real browser: it is drawn, a body is chosen by touch and by list, and without WebGL there is the section. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { begin, PageInBrowser, settled } from './page.js';

const softwareGl = ['--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'];

const caption = (page: Page) => page.locator('.chosen caption').innerText();
const drawn = async (page: Page): Promise<number> =>
  Number(await page.locator('.space canvas').getAttribute('data-drawn'));

async function openSpace(workshop: PageInBrowser): Promise<Page> {
  const page = await workshop.open();
  await begin(page, 'wine-cask-225');
  await page.getByRole('tab', { name: 'In the round' }).click();
  return page;
}

describe('with WebGL', () => {
  let workshop: PageInBrowser;
  let page: Page;
  beforeAll(async () => {
    workshop = await PageInBrowser.start(softwareGl);
    page = await openSpace(workshop);
    await page.locator('.space canvas[data-drawn]').waitFor();
  });
  afterAll(() => workshop.close());

  it('shows the vessel, which fills the picture and is not all of one shade', async () => {
    const shades = await page.locator('.space canvas').evaluate(async (canvas) => {
      // right after a frame, while its pixels are there
      canvas.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true }));
      await new Promise((go) => requestAnimationFrame(() => requestAnimationFrame(go)));
      const copy = document.createElement('canvas');
      [copy.width, copy.height] = [60, 60];
      const context = copy.getContext('2d')!;
      canvas.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true }));
      await new Promise((go) => requestAnimationFrame(go));
      context.drawImage(canvas as HTMLCanvasElement, 0, 0, 60, 60);
      const { data } = context.getImageData(0, 0, 60, 60);
      const opaque = [...Array(3600).keys()].filter((i) => data[4 * i + 3]! > 0);
      return { covered: opaque.length / 3600, tones: new Set(opaque.map((i) => data[4 * i])).size };
    });
    expect(shades.covered).toBeGreaterThan(0.15);
    expect(shades.tones).toBeGreaterThan(10);
  });

  it('a body chosen in the list shows its numbers and its drawing', async () => {
    await page.getByRole('button', { name: 'Staves: 5', exact: true }).click();
    expect(await caption(page)).toBe('Stave 5 of 28');
    await page.getByRole('button', { name: 'Hoops: quarter, top' }).click();
    expect(await caption(page)).toBe('Hoop: quarter, top');
    await page.locator('.chosen .sheet').click();
    expect(await page.locator('#viewer-title').innerText()).toContain('Hoops');
    // its words are there before it is shown
    await page.locator('dialog.viewer[open]').waitFor();
    await page.keyboard.press('Escape');
  });

  it('a touch chooses the body that is there, and one beside the vessel none', async () => {
    const canvas = page.locator('.space canvas');
    const box = (await canvas.boundingBox())!;
    await canvas.click({ position: { x: box.width / 2, y: box.height / 2 } });
    expect(await caption(page)).toMatch(/^Stave \d+ of 28$/);
    await canvas.click({ position: { x: 5, y: 5 } });
    expect(await page.locator('.chosen caption').count()).toBe(0);
  });

  it('is turned by keys and taken apart, and follows what is typed', async () => {
    const before = await drawn(page);
    await page.locator('.space canvas').press('ArrowRight');
    await page.getByLabel('Taken apart along the axis').fill('60');
    await page.waitForFunction(
      (n) => Number(document.querySelector('canvas')?.dataset['drawn']) > n,
      before,
    );
    await page.getByRole('button', { name: 'Staves: 1', exact: true }).click();
    const width = await page.locator('.chosen td').first().innerText();
    const then = await drawn(page);
    await page.locator('#drawing-bilge').fill('700');
    await settled(page);
    expect(await page.locator('.chosen td').first().innerText()).not.toBe(width);
    await page.waitForFunction(
      (n) => Number(document.querySelector('canvas')?.dataset['drawn']) > n,
      then,
    );
  });

  it('is rough while it moves where there is no graphics hardware, and fine once it rests', async () => {
    const fineness = await page.locator('.space canvas').evaluate(async (element) => {
      const canvas = element as HTMLCanvasElement;
      const shown: number[] = [];
      const both = new Promise<void>((done) => {
        new MutationObserver(() => {
          shown.push(canvas.width / canvas.clientWidth);
          if (shown.length === 2) done();
        }).observe(canvas, { attributeFilter: ['data-drawn'] });
      });
      canvas.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true }));
      await both;
      return shown;
    });
    expect(fineness[0]).toBeCloseTo(0.5, 1);
    expect(fineness[1]).toBeCloseTo(1.5, 1);
  });

  it('in French on a tablet every number is in sight, and hoops go by their French names', async () => {
    await page.setViewportSize({ width: 820, height: 1180 });
    await page.locator('.habits summary').click();
    await page.locator('.habits select').first().selectOption('fr');
    await settled(page);
    await page.getByRole('button', { name: 'Douelles: 1', exact: true }).click();
    const hidden = await page
      .locator('.chosen .scroll')
      .evaluate((element) => element.scrollWidth - element.clientWidth);
    expect(hidden).toBeLessThan(2);
    expect(await page.locator('.part-list').innerText()).toContain('cercle de tête, haut');
  });

  it('the browser had nothing to complain of', () => {
    expect(workshop.complaints).toEqual([]);
  });
});

it('without WebGL there is the section, and the list works all the same', async () => {
  const workshop = await PageInBrowser.start(['--disable-gpu', '--disable-3d-apis']);
  const page = await openSpace(workshop);
  await page.locator('.space.without svg').waitFor();
  expect(await page.locator('.space.without').innerText()).toContain('WebGL');
  await page.getByRole('button', { name: 'Staves: 7', exact: true }).click();
  expect(await caption(page)).toBe('Stave 7 of 28');
  expect(workshop.complaints).toEqual([]);
  await workshop.close();
});

/** The page for everyone: WCAG 2.2 AA by axe, targets for gloved hands, the keyboard alone, every width, light and dark. */
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PageInBrowser, settled } from './page.js';

let workshop: PageInBrowser;
beforeAll(async () => {
  workshop = await PageInBrowser.start();
});
afterAll(() => workshop.close());

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** Past the page's own rule against foreign scripts, which the protocol of the browser is not bound by. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const found = (await page.evaluate(
    `axe.run(document, { runOnly: ${JSON.stringify(tags)} }).then((result) => result.violations)`,
  )) as Violation[];
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

const tabs = ['settings', 'sizing', 'space', 'numbers', 'dip', 'slips', 'output', 'text'];
const widths = [
  ['phone', 375, 812, 'light'],
  ['tablet', 820, 1180, 'dark'],
  ['desktop', 1440, 900, 'light'],
] as const;

describe.each(widths)('on a %s', (_, width, height, colorScheme) => {
  it('every part has contrast, names and roles, and fits the width', async () => {
    const page = await workshop.open({ viewport: { width, height }, colorScheme });
    for (const tab of tabs) {
      await page.locator(`#tab-${tab}`).click();
      expect(await violations(page), tab).toEqual([]);
      const wide = await page.evaluate('document.documentElement.scrollWidth');
      expect(wide, tab).toBeLessThanOrEqual(width);
      expect(await smallTargets(page), tab).toEqual([]);
    }
    await page.locator('.sheet').first().click();
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  });
});

/** Buttons and boxes that are in view and lower or narrower than 44 px; a tick counts with its label. */
function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('button, select, input, textarea, summary')]
      .map((element) => element.closest('.ticks label') ?? element)
      .filter((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width > 0 && (width < 43.5 || height < 43.5);
      })
      .map((element) => element.outerHTML.slice(0, 120)),
  );
}

it('the keyboard alone reaches a number, changes it, and opens and closes a drawing', async () => {
  const page = await workshop.open();
  const focused = (): Promise<string> => page.evaluate('document.activeElement.id');
  for (let i = 0; i < 40 && (await focused()) !== 'drawing-bilge'; i++)
    await page.keyboard.press('Tab');
  expect(await focused()).toBe('drawing-bilge');
  const outline = await page.evaluate('getComputedStyle(document.activeElement).outlineWidth');
  expect(outline).toBe('3px');
  const before = await page.locator('.capacity').innerText();
  await page.keyboard.type('700');
  await settled(page);
  expect(await page.locator('.capacity').innerText()).not.toBe(before);
  const onSheet = (): Promise<boolean> =>
    page.evaluate("document.activeElement.classList.contains('sheet')");
  for (let i = 0; i < 40 && !(await onSheet()); i++) await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.locator('.viewer[open]').waitFor();
  await page.keyboard.press('Escape');
  expect(await onSheet()).toBe(true);
  await page.context().close();
});

it('the keyboard keeps its place where a button is gone or of no more use', async () => {
  const page = await workshop.open();
  const onIt = (): Promise<string> =>
    page.evaluate(
      'document.activeElement.getAttribute("aria-label") ?? document.activeElement.textContent',
    );
  await page.getByRole('button', { name: /^Rack/ }).press('Enter');
  for (const width of ['71', '72', '73']) {
    await page.keyboard.type(width);
    await page.keyboard.press('Enter');
  }
  await page.getByRole('button', { name: 'Take stave 2 away' }).press('Enter');
  expect(await onIt()).toBe('Take stave 1 away');
  await page.keyboard.press('Enter');
  expect(await onIt()).toBe('Take stave 3 away');
  await page.getByRole('button', { name: 'Choose sets' }).press('Enter');
  await page.getByRole('button', { name: 'Put these sets away' }).press('Enter');
  expect(await onIt()).toBe('Choose sets');
  await page.getByRole('button', { name: /^Rack/ }).press('Enter');
  await page.locator('#drawing-bilge').fill('700');
  await page.locator('#drawing-bilge').press('Tab');
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  expect(await onIt()).toBe('Undo');
  await page.context().close();
});

it('light and dark can be chosen against the device', async () => {
  const page = await workshop.open({ colorScheme: 'light' });
  const paper = (): Promise<string> =>
    page.evaluate('getComputedStyle(document.documentElement).backgroundColor');
  const light = await paper();
  await page.locator('.habits summary').click();
  await page.getByLabel('Light or dark').selectOption('dark');
  expect(await paper()).not.toBe(light);
  await page.context().close();
});

it('the browser had nothing to complain of', () => {
  expect(workshop.complaints).toEqual([]);
});

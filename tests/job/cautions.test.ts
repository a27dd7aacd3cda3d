/** Each caution stands at the step where the work can hurt. */
import { expect, test } from 'vitest';
import { Said, templateText } from './sheets.js';

const said = new Said(templateText('wine-cask-225'));

test.each([
  ['Billets', /Wedges/],
  ['Plane the blanks', /Saw, planer.*guards.*dust.*maker’s rules/],
  ['Joint', /Jointer.*push block/],
  ['Raise', /Staves fall.*hoops slip/],
  ['Fire and bend', /water at hand.*no ember left.*local fire rules.*under tension/],
  ['Heads', /Saw, drill, router.*maker’s rules/],
  ['Set the heads', /Loose staves/],
  ['Hoops', /edges cut.*hoops fly/],
  ['Test with water', /never air under pressure/],
  ['Finish', /Full of water \d+ kg: hoist.*sulphured: gas kills.*local food rules; licensed/],
])('%s', (title, caution) => {
  expect(said.step(title).caution).toMatch(/^Care: /);
  expect(said.step(title).caution).toMatch(caution);
});

test('the mass to lift is the mass when full', () => {
  const full = said.number('mass, full of water');
  expect(said.step('Finish').caution).toContain(`Full of water ${full}:`);
});

test('boxes to write in stand where the work is judged', () => {
  const names = said.form.steps.steps.flatMap(({ measures }) => measures.map(({ name }) => name));
  for (const name of ['girth before jointing', 'laid width on the bench', 'compass, top'])
    expect(names).toContain(name);
  expect(names.some((name) => name.startsWith('girth before fire'))).toBe(true);
});

/** The job sheet says the same in every language: the same boxes, numbers and cautions, in other words. */
import { describe, expect, test } from 'vitest';
import type { Form } from '../../src/drawing/form.js';
import { jobSheet } from '../../src/job/job-sheet.js';
import { jobWords } from '../../src/job/words/index.js';
import { wordsIn, type Language } from '../../src/language.js';
import { pieceWords } from '../../src/pieces/words/index.js';
import { templateText, vesselOf } from './sheets.js';

async function formIn(language: Language, template: string): Promise<Form> {
  const { typeset, hoopName } = await wordsIn(pieceWords, language);
  const words = await wordsIn(jobWords, language);
  return jobSheet(vesselOf(templateText(template)), words, { typeset, hoopName });
}

/** With decimal points, in order of size. */
const numbersIn = (text: string): number[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? [])
    .map((number) => Number(number.replace(',', '.')))
    .sort((a, b) => a - b);

const templates = ['wine-cask-225', 'bucket', 'cask-110', 'keg-10-inches', 'keg-30'];
const cases = (['de', 'fr'] as const).flatMap((language) =>
  templates.map((template) => [template, language] as const),
);

describe.each(cases)('%s in %s', (template, language) => {
  test('has the boxes, numbers and cautions of the English sheet', async () => {
    const [english, other] = [await formIn('en', template), await formIn(language, template)];
    const steps = english.steps.steps;
    expect(other.steps.steps).toHaveLength(steps.length);
    for (const [i, step] of other.steps.steps.entries()) {
      expect(numbersIn(step.text)).toEqual(numbersIn(steps[i]!.text));
      expect(numbersIn(step.caution)).toEqual(numbersIn(steps[i]!.caution));
      expect(step.caution === '').toBe(steps[i]!.caution === '');
      expect(step.measures.map(({ value }) => numbersIn(value))).toEqual(
        steps[i]!.measures.map(({ value }) => numbersIn(value)),
      );
    }
    expect(other.list.rows.map((row) => numbersIn(row.join(' ')))).toEqual(
      english.list.rows.map((row) => numbersIn(row.join(' '))),
    );
    expect(other.labels.texts.map(numbersIn)).toEqual(english.labels.texts.map(numbersIn));
  });

  test('has decimal commas, and its language in the file', async () => {
    const { subject, ...said } = await formIn(language, template);
    expect(subject).not.toBe('');
    expect(said.language).toBe(language);
    expect(JSON.stringify(said)).not.toMatch(/\d\.\d/);
  });

  test('calls the hoops by the names of the trade', async () => {
    const { list } = await formIn(language, template);
    const straps = list.rows
      .map(([piece]) => piece!)
      .filter((piece) => /Band|feuillard/.test(piece));
    expect(straps.length).toBeGreaterThan(0);
    for (const strap of straps)
      expect(strap).toMatch(/(Kopf|Hals|Bauch)reif|de (tête|collet|bouge)/);
  });
});

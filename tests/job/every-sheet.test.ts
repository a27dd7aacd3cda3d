/** The job sheet of every template in every language: clear lettering that can be read, two pages, right numbers. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Form } from '../../src/drawing/form.js';
import { jobSheet } from '../../src/job/job-sheet.js';
import { jobWords } from '../../src/job/words/index.js';
import { languages, wordsIn, type Language } from '../../src/language.js';
import { pieceWords } from '../../src/pieces/words/index.js';
import { planVessel } from '../../src/plan.js';
import { formSheets } from '../../src/sheets/form-sheets.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import type { PaperName } from '../../src/sheets/paper.js';
import { sheetWords } from '../../src/sheets/words.js';
import { titleBlockBox } from '../../src/sheets/title-block.js';
import type { Vessel } from '../../src/vessel/vessel.js';
import { faultsOn } from '../sheets/ink-faults.js';

const folder = fileURLToPath(new URL('../../templates/', import.meta.url));
const templates = readdirSync(folder)
  .filter((file) => file.endsWith('.yaml'))
  .map((file): [string, Vessel] => [
    file,
    planVessel(readFileSync(folder + file, 'utf8'), file).vessel!,
  ]);
const cases = templates.flatMap(([file, vessel]) =>
  languages.map((language) => ({ file, vessel, language })),
);

const titleBlock = {
  owner: 'A cooperage that does not exist',
  number: 'T-1',
  date: '2026-01-31',
  title: 'Job sheet',
  subtitle: 'Invented',
  creator: 'A. Nobody',
  approved: '',
};

async function formOf(vessel: Vessel, language: Language): Promise<Form> {
  const { typeset, hoopName } = await wordsIn(pieceWords, language);
  return jobSheet(vessel, await wordsIn(jobWords, language), { typeset, hoopName });
}

async function sheetsOf(vessel: Vessel, language: Language, paper: PaperName): Promise<Sheet[]> {
  const words = await wordsIn(sheetWords, language);
  const form = await formOf(vessel, language);
  return formSheets(form, { paper, titleBlock, units: vessel.spec.units, words });
}

describe.each(cases)('$file in $language', ({ vessel, language }) => {
  const ownPaper = vessel.spec.units === 'in' ? 'letter' : 'a4';

  test.each(['a4', 'letter'] as const)('keeps its lettering clear on %s', async (paper) => {
    const sheets = await sheetsOf(vessel, language, paper);
    expect(sheets.flatMap((sheet) => faultsOn(sheet))).toEqual([]);
  });

  test('takes two pages', async () => {
    expect(await sheetsOf(vessel, language, ownPaper)).toHaveLength(2);
  });

  test('is lettered to be read at arm’s length, but for the title block', async () => {
    const [first, ...rest] = await sheetsOf(vessel, language, ownPaper);
    const area = { minX: 10, minY: 10, maxX: first!.width - 10, maxY: first!.height - 10 };
    const above = first!.furniture.letterings.filter(({ at }) => at.y > titleBlockBox(area).maxY);
    const small = [...above, ...rest.flatMap(({ furniture }) => furniture.letterings)].filter(
      ({ height }) => height < 3.5,
    );
    expect(small).toEqual([]);
  });

  test('says every text of the form whole', async () => {
    const form = await formOf(vessel, language);
    const said = (await sheetsOf(vessel, language, ownPaper))
      .flatMap(({ furniture }) => furniture.letterings)
      .map(({ text }) => text)
      .join(' ');
    for (const { text, caution } of form.steps.steps) {
      expect(said).toContain(text);
      expect(said).toContain(caution);
    }
    for (const { name, value } of form.numbers.entries) {
      expect(said).toContain(name);
      expect(said).toContain(value);
    }
    for (const label of form.labels.texts) expect(said).toContain(label);
    for (const [piece] of form.list.rows) expect(said).toContain(piece);
    for (const { measures } of form.steps.steps)
      for (const { name, value } of measures) expect(said).toContain(`${name} ${value}`.trim());
  });
});

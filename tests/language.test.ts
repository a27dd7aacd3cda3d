/** Every language says all that English says. */
import { describe, expect, it, test } from 'vitest';
import { drawable } from '../src/drawing/glyphs.js';
import { matchWords } from '../src/cli/match-words.js';
import { cliWords } from '../src/cli/words.js';
import { jobWords } from '../src/job/words/index.js';
import { decimalComma, frenchText, languages, wordsIn } from '../src/language.js';
import { pieceWords } from '../src/pieces/words/index.js';
import { proofWords } from '../src/proof/words.js';
import { stockWords } from '../src/rack/stock-words.js';
import { sheetWords } from '../src/sheets/words.js';
import { indexPageWords } from '../src/writers/index-page.words.js';
import { said, samplesIn } from './translations.js';

const bundles = {
  drawings: pieceWords,
  sheets: sheetWords,
  'job sheet': jobWords,
  'page of patterns': indexPageWords,
  commands: cliWords,
  proof: proofWords,
  'command match': matchWords,
  'rack list': stockWords,
};

/** Words that are the same in another language as in English. */
const alike: Readonly<Record<'de' | 'fr', readonly string[]>> = {
  de: ['Letter', 'Legal', 'Tabloid'],
  fr: [
    'Letter',
    'Legal',
    'Tabloid',
    'joint',
    'joint ⟨1⟩',
    'Stations',
    'station ⟨1⟩',
    'rivets ⟨1⟩',
    'litres',
    'station, mm',
  ],
};

const others = ['de', 'fr'] as const;

describe.each(Object.entries(bundles))('the words of the %s', (_bundle, translations) => {
  const english = said(translations.en);

  it.each(others)('have every place in %s, and nothing besides', async (language) => {
    const words = said(await wordsIn<unknown>(translations, language));
    expect([...words.keys()].sort()).toEqual([...english.keys()].sort());
  });

  it.each(others)('say in %s all values that they say in English', async (language) => {
    const words = said(await wordsIn<unknown>(translations, language));
    for (const [place, text] of words) {
      expect(text, place).not.toMatch(/undefined|NaN|\bnull\b|\[object/);
      expect(text === '', place).toBe(english.get(place) === '');
      expect(samplesIn(text), place).toEqual(samplesIn(english.get(place)!));
    }
  });

  it.each(others)('leave nothing in English in %s', async (language) => {
    const words = said(await wordsIn<unknown>(translations, language));
    const same = [...words].filter(
      ([place, text]) => text === english.get(place) && /\p{L}{3}/u.test(text),
    );
    expect(same.map(([, text]) => text).filter((text) => !alike[language].includes(text))).toEqual(
      [],
    );
  });

  it.each(languages)('can be lettered in %s', async (language) => {
    const letters = new Set(drawable());
    const words = said(await wordsIn<unknown>(translations, language));
    for (const [place, text] of words)
      expect(
        [...text.replace(/[⟨⟩]/g, '')].filter((each) => !letters.has(each)),
        place,
      ).toEqual([]);
  });
});

describe('a decimal comma', () => {
  test('stands between the digits of a number and nowhere else', () => {
    expect(decimalComma('Breite 64.4 mm, siehe Nr. 2. Ende.')).toBe(
      'Breite 64,4 mm, siehe Nr. 2. Ende.',
    );
    expect(decimalComma('37.375 (37 3/8) in')).toBe('37,375 (37 3/8) in');
    expect(decimalComma('28 of 28, 5 left')).toBe('28 of 28, 5 left');
  });

  test('parts numbers in a row by semicolons', () => {
    expect(decimalComma('12.5, 30.0, -45.5')).toBe('12,5; 30,0; -45,5');
    expect(decimalComma('1, 2, 3')).toBe('1, 2, 3');
  });
});

test('French signs stay on the line of their word', () => {
  expect(frenchText('« bore » : 5 % ; 2.5 mm')).toBe(
    '«\u00a0bore\u00a0»\u00a0: 5\u00a0%\u00a0; 2,5 mm',
  );
});

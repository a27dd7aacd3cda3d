import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Issue } from '../../src/spec/issue.js';
import { putIntoWords } from '../../src/spec/read.js';
import type { Say } from '../../src/spec/say.js';
import { english } from '../../src/spec/wording.en.js';
import { specWordings } from '../../src/spec/wordings.js';
import { messagesOf, inchKeg, withLine } from './texts.js';

const locate = () => ({ line: 1, column: 1 });
const issue = (code: string, values: Issue['values'] = {}, path: Issue['path'] = []): Issue => ({
  severity: 'error',
  code,
  path,
  values,
});

describe('an issue without a wording', () => {
  it('is shown with its code and values', () => {
    expect(
      putIntoWords([issue('new-rule', { gap: 3 }, ['hoops', 1, 'width'])], { locate }, 'a.yaml'),
    ).toEqual([
      {
        severity: 'error',
        code: 'new-rule',
        file: 'a.yaml',
        line: 1,
        column: 1,
        key: 'hoops[1].width',
        found: 'gap 3',
        allowed: '',
        text: 'The rule `new-rule` is not met.',
      },
    ]);
  });
  it('may bear the name of something that every object has', () => {
    for (const code of ['constructor', '__proto__', 'toString'])
      expect(() => putIntoWords([issue(code)], { locate }, '')).not.toThrow();
  });
});

describe('every wording', () => {
  it.each(Object.keys(english.messages))('%s can do without values, and with any', (code) => {
    const anyValues: Issue['values'][] = [
      {},
      { found: NaN, min: Infinity, meant: 'in' },
      { found: 'x', left: -0.001, most: 1e300 },
    ];
    for (const values of anyValues) {
      for (const units of ['mm', 'in'] as const) {
        const [message] = putIntoWords(
          [issue(code, values, ['staves', 'count'])],
          { locate, units },
          'a.yaml',
        );
        expect(message!.text).toMatch(/[.?]$/);
        expect(message!.text).not.toContain('undefined');
      }
    }
  });

  it('exists for each code that reading or the geometry raises', () => {
    const files = ['src/spec', 'src/vessel'].flatMap((folder) =>
      readdirSync(folder).map((name) => `${folder}/${name}`),
    );
    const raised = files
      .filter((file) => file.endsWith('.ts') && !file.includes('wording'))
      .flatMap((file) => [
        ...readFileSync(file, 'utf8').matchAll(
          /(?:fault|finding|error|warning|code:)\(?\s*'([a-z-]+)'/g,
        ),
      ])
      .map((match) => match[1]!)
      .filter((code) => code !== 'custom');
    expect(raised.length).toBeGreaterThan(50);
    expect(raised.filter((code) => !Object.hasOwn(english.messages, code))).toEqual([]);
  });
});

describe('every wording in another language', () => {
  const { en, ...others } = specWordings;
  /** Answers with what it is asked for, so that two languages can be compared. */
  const asking = (hasAll: boolean): Say => {
    const ask = (kind: string) => (name: string) => `<${kind} ${name}>`;
    return {
      units: 'mm',
      key: '<key>',
      word: ask('word'),
      has: () => hasAll,
      length: ask('length'),
      degrees: ask('degrees'),
      number: ask('number'),
      range: (least, most) => `<range ${least} ${most}>`,
    };
  };
  const asked = (text: string): string[] => (text.match(/<[^>]*>/g) ?? []).sort();

  it.each(Object.entries(others))('says in %s what English says', async (_language, load) => {
    const { messages } = await load();
    expect(Object.keys(messages)).toEqual(Object.keys(en.messages));
    for (const [code, word] of Object.entries(messages)) {
      for (const say of [asking(true), asking(false)]) {
        const [theirs, ours] = [word(say), en.messages[code as keyof typeof en.messages](say)];
        for (const part of ['found', 'allowed', 'text'] as const) {
          expect(theirs[part] === '', code).toBe(ours[part] === '');
          expect(asked(theirs[part]), code).toEqual(asked(ours[part]));
        }
        expect(theirs.text, code).toMatch(/[.?]$/);
        expect(theirs.text, code).not.toBe(ours.text);
      }
    }
  });

  it('writes numbers and what the file holds in its own manner', async () => {
    const german = await others.de();
    const say = (code: string, values: Issue['values'], units: 'mm' | 'in' = 'mm') =>
      putIntoWords([issue(code, values)], { locate, units }, '', german)[0]!;
    const gap = { land: 4.7625, groove: 4.5 };
    expect(say('land-thicker-than-groove', gap).found).toBe('4,763 mm');
    expect(say('land-thicker-than-groove', gap, 'in').allowed).toBe(
      'höchstens 0,1772 in (etwa 3/16)',
    );
    expect(say('length-too-small', { found: 1.5, min: 50, max: 5000 }).allowed).toBe(
      '50 bis 5000 mm',
    );
    expect(say('not-a-group', { found: 'a list of 3' }).found).toBe('eine Liste von 3');
    expect(say('no-such-rule', {}).text).toBe('Die Regel `no-such-rule` ist nicht erfüllt.');
  });
});

describe('lengths in a message', () => {
  it('are in the units of the file', () => {
    const gap = issue('land-thicker-than-groove', { land: 4.7625, groove: 4.5 });
    expect(putIntoWords([gap], { locate, units: 'mm' }, '')[0]).toMatchObject({
      found: '4.763 mm',
      allowed: 'at most 4.5 mm',
    });
    expect(putIntoWords([gap], { locate, units: 'in' }, '')[0]).toMatchObject({
      found: '0.1875 in (3/16)',
      allowed: 'at most 0.1772 in (about 3/16)',
    });
  });
  it('are shown in inches for a file in inches', () => {
    expect(messagesOf(withLine(inchKeg, 'bilge: 8'))[0]!.found).toBe('8 in');
  });
});

describe('the place of a message', () => {
  it('is that of the value, of its nearest ancestor, or the start of the file', () => {
    const read = messagesOf('vessel: cask\nheads:\n  croze:\n    inset: x\n');
    expect(read.map(({ key, line, column }) => [key, line, column])).toContainEqual([
      'heads.croze.inset',
      4,
      12,
    ]);
    expect(read.map(({ key, line, column }) => [key, line, column])).toContainEqual([
      'height',
      1,
      1,
    ]);
  });
});

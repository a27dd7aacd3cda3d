/** Whatever the text: no crash, every fault has a place in the file, and there is a spec if and only if there is no fault. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import type { Message } from '../../src/spec/issue.js';
import { putIntoWords, readSpec } from '../../src/spec/read.js';
import { english } from '../../src/spec/wording.en.js';
import { anyHits, anySpecText, anyValue, damaged } from './arbitrary.js';

function holds(text: string): void {
  expect(broken(text)).toEqual([]);
}

/** Everything that is not as it should be, in words: one comparison a text, since thousands of them take their time. */
function broken(text: string): string[] {
  const read = readSpec(text);
  const lines = text.split('\n');
  const wrong = putIntoWords(read.issues, read, 'a.yaml').flatMap((message) => [
    ...(isInside(message, lines) ? [] : [`${message.code} at ${message.line}:${message.column}`]),
    ...(isWorded(message) ? [] : [JSON.stringify(message)]),
  ]);
  const faulty = read.issues.some(({ severity }) => severity === 'error');
  if (faulty !== (read.spec === null)) wrong.push('a spec in spite of errors, or none without');
  if (read.spec && !allFinite(read.spec)) wrong.push('not a number');
  return wrong;
}

/** JSON would write null for what is no number. */
function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return value !== undefined;
  return Object.values(value).every(allFinite);
}

function isInside({ line, column }: Message, lines: readonly string[]): boolean {
  const length = lines[line - 1]?.length;
  return length !== undefined && Number.isInteger(column) && column >= 1 && column <= length + 1;
}

function isWorded({ code, text, found, allowed }: Message): boolean {
  const unfilled = /undefined|\[object|is not met|\p{Cc}/u;
  return ![text, found, allowed].some((words) => unfilled.test(words)) && code in english.messages;
}

describe('reading', () => {
  it('takes most random specs as they are', () => {
    const texts = fc.sample(anySpecText, { seed: 8, numRuns: 400 });
    const sound = texts.filter((text) => readSpec(text).spec !== null);
    expect(sound.length).toBeGreaterThan(texts.length / 2);
  });

  it('holds for random specs', () => {
    fc.assert(fc.property(anySpecText, holds), { seed: 1, numRuns: 600 });
  });

  it('holds for specs that are damaged', () => {
    const spoilt = fc.tuple(anySpecText, anyHits).map(([text, hits]) => damaged(text, hits));
    fc.assert(fc.property(spoilt, holds), { seed: 2, numRuns: 2500 });
  });

  it('holds for specs with a value exchanged for any other', () => {
    const exchanged = fc
      .tuple(anySpecText, fc.nat(), anyValue)
      .map(([text, which, value]) => withValue(text, which, value));
    fc.assert(fc.property(exchanged, holds), { seed: 4, numRuns: 2000 });
  });

  it('holds for any text', () => {
    const anyText = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.string({ maxLength: 300 }),
      fc.json(),
    );
    fc.assert(fc.property(anyText, holds), { seed: 6, numRuns: 1500 });
  });
});

/** The text with the value of one of its keys, at any depth, replaced. */
function withValue(text: string, which: number, value: unknown): string {
  const data = parse(text) as Record<string, unknown>;
  const places: [Record<string, unknown>, string][] = [];
  const walk = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    for (const key of Object.keys(node)) {
      places.push([node as Record<string, unknown>, key]);
      walk((node as Record<string, unknown>)[key]);
    }
  };
  walk(data);
  const [node, key] = places[which % places.length]!;
  node[key] = value;
  return stringify(data, { aliasDuplicateObjects: false });
}

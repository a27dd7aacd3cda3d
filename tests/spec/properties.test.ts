/** Whatever the text: no crash, every fault has a place in the file, and there is a spec if and only if there is no fault. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { putIntoWords, readSpec } from '../../src/spec/read.js';
import { anyHits, anySpecText, anyValue, damaged } from './arbitrary.js';

function holds(text: string): void {
  const read = readSpec(text);
  const messages = putIntoWords(read.issues, read, 'a.yaml');
  const errors = read.issues.filter(({ severity }) => severity === 'error');
  expect(read.spec === null).toBe(errors.length > 0);
  const lines = text.split('\n');
  for (const { line, column, text: words, found, allowed, code } of messages) {
    expect(Number.isInteger(line) && Number.isInteger(column)).toBe(true);
    expect(line).toBeGreaterThanOrEqual(1);
    expect(line).toBeLessThanOrEqual(lines.length);
    expect(column).toBeGreaterThanOrEqual(1);
    expect(column).toBeLessThanOrEqual(lines[line - 1]!.length + 1);
    expect(words).not.toMatch(/undefined|\[object|is not met|\p{Cc}/u);
    expect(`${found}${allowed}`, code).not.toMatch(/undefined|\[object|\p{Cc}/u);
    if (code !== 'not-finite') expect(`${found}${allowed}`, code).not.toMatch(/\?$/);
  }
  if (read.spec) expect(JSON.stringify(read.spec)).not.toMatch(/NaN|Infinity|undefined/);
}

describe('reading', () => {
  it('takes most random specs as they are', () => {
    const texts = fc.sample(anySpecText, { seed: 8, numRuns: 400 });
    const sound = texts.filter((text) => readSpec(text).spec !== null);
    expect(sound.length).toBeGreaterThan(texts.length / 2);
  });

  it('holds for random specs', () => {
    fc.assert(fc.property(anySpecText, holds), { seed: 1, numRuns: 1000 });
  });

  it('holds for specs that are damaged', () => {
    const broken = fc.tuple(anySpecText, anyHits).map(([text, hits]) => damaged(text, hits));
    fc.assert(fc.property(broken, holds), { seed: 2, numRuns: 3000 });
  });

  it('holds for specs with a value exchanged for any other', () => {
    const exchanged = fc
      .tuple(anySpecText, fc.nat(), anyValue)
      .map(([text, which, value]) => withValue(text, which, value));
    fc.assert(fc.property(exchanged, holds), { seed: 4, numRuns: 3000 });
  });

  it('holds for any text', () => {
    const anyText = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.string({ maxLength: 300 }),
      fc.json(),
    );
    fc.assert(fc.property(anyText, holds), { seed: 6, numRuns: 2000 });
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

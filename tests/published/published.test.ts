/** Are we right? Every published value of `sources/` against our own, in one table. */
import { describe, expect, test } from 'vitest';
import { readThemes } from './entry.js';
import { compare, tableOf } from './gate.js';
import type { Row } from './gate.js';
import { measures } from './measures.js';
import type { Inputs } from './inputs.js';

const themes = readThemes(new URL('./sources/', import.meta.url));
const entries = themes.flatMap((theme) => theme.entries);

describe('published values', () => {
  test('each has its own id, and a way to measure it', () => {
    expect(new Set(entries.map((e) => e.id)).size).toBe(entries.length);
    for (const entry of entries) expect(Object.keys(measures)).toContain(entry.measure);
  });

  test('each says how it was obtained; trade habits claim no source', () => {
    for (const { obtained, citation, id } of entries) {
      if (obtained === 'common practice') expect(citation, id).toContain('no source');
      else expect(citation, id).not.toContain('no source');
      if (obtained !== 'seen') continue;
      // a retrieved text has a name: more than a word
      expect(citation.split(' ').length, id).toBeGreaterThan(3);
    }
  });

  test('we agree with every one, and disagree where we must', async () => {
    const tables: string[] = [];
    const failures: Row[] = [];
    for (const { theme, entries: own } of themes) {
      const rows: Row[] = [];
      for (const entry of own) rows.push(compare(entry, await ours(entry.measure, entry.inputs)));
      tables.push(`${theme}\n${tableOf(rows)}`);
      failures.push(...rows.filter((row) => !row.passed));
    }
    console.log(tables.join('\n\n'));
    expect(failures).toEqual([]);
  });
});

/** A measure that breaks down gives no number, and its row fails. */
async function ours(measure: string, inputs: Inputs): Promise<number> {
  try {
    return (await measures[measure]?.(inputs)) ?? NaN;
  } catch (error) {
    console.error(measure, inputs, error);
    return NaN;
  }
}

/** The rack goes to a file and to the core's reader and comes back the same. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readStock, type StockStave } from '../../../src/index.js';
import { keptRack, savedRack, stockOf } from '../../../src/page/rack/rack-text.js';

const stave = (mark: string, width: number, more: Partial<StockStave> = {}): StockStave => ({
  mark,
  width,
  length: null,
  thickness: null,
  bung: null,
  note: '',
  ...more,
});

const rack = [
  stave('A1', 71.5, { length: 960, bung: true, note: 'knot, near "the" end' }),
  stave('=A2', 2.8125 * 25.4, { thickness: 29, bung: false }),
  stave('-3', 66),
];

describe('the rack as text', () => {
  it('is to the core’s reader what it is to the page, hostile marks too', () => {
    expect(stockOf(rack).stock?.staves).toEqual(rack);
  });

  it.each(['mm', 'in'] as const)('comes back from a file in %s', (units) => {
    const plain = rack.filter(({ mark }) => !/^[=-]/.test(mark));
    const { stock, issues } = readStock(savedRack(plain, units), 'mm');
    expect(issues).toEqual([]);
    stock!.staves.forEach((read, i) => {
      expect(read.width).toBeCloseTo(plain[i]!.width, 3);
      expect({ ...read, width: 0, length: 0 }).toEqual({ ...plain[i], width: 0, length: 0 });
    });
  });

  it('knows the step that widths were read to', () => {
    expect(stockOf([stave('1', 71.5), stave('2', 72)]).stock?.step).toBe(0.5);
  });

  it('is the same as the command reads from the invented list', () => {
    const text = readFileSync(
      new URL('../../../templates/rack-invented.csv', import.meta.url),
      'utf8',
    );
    const { stock } = readStock(text, 'mm');
    const again = stockOf(stock!.staves).stock!;
    expect(again.staves).toEqual(stock!.staves);
    expect(again.step).toBe(stock!.step);
  });

  it('comes back from the browser’s memory, and anything else does not', () => {
    expect(keptRack(JSON.stringify(rack))).toEqual(rack);
    for (const bad of [null, '', '{', '{}', '[1]', '[{"mark":"A"}]', '[null]'])
      expect(keptRack(bad), String(bad)).toBeNull();
  });

  it('of any widths is read back to a millionth', () => {
    const widths = fc.array(fc.double({ min: 10, max: 400, noNaN: true }), { maxLength: 30 });
    fc.assert(
      fc.property(widths, (all) => {
        const staves = all.map((width, i) => stave(String(i), width));
        const read = stockOf(staves).stock!.staves;
        return read.every(({ width }, i) => Math.abs(width - all[i]!) < 1e-6);
      }),
      { seed: 7, numRuns: 50 },
    );
  });
});

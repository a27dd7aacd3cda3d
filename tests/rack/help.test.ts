/** What would make one set more: what is told is tried here, by closing rings of it. */
import { describe, expect, it } from 'vitest';
import { closeSet } from '../../src/rack/aims.js';
import { closesAt } from '../../src/rack/closing.js';
import { Driver } from '../../src/rack/drive.js';
import { helpFor } from '../../src/rack/help.js';
import { makePool } from '../../src/rack/pool.js';
import { asked, stockOf } from './racks.js';

const request = asked({ bung: null, plane: 0 });
const alike = (count: number, width = 76.4): number[] => new Array<number>(count).fill(width);
const poolOf = (widths: readonly number[], asking = request) =>
  makePool(stockOf(widths).staves, asking);

describe('help', () => {
  // 28 staves of 76.4 mm close at 678.1, so widths within about 4 mm of it close within 1.5 mm
  it('names the one stave that is missing, and the widths that will do, to the millimetre', async () => {
    const pool = poolOf(alike(27));
    const help = (await helpFor(pool, [], new Driver({})))!;
    expect(help).toMatchObject({ staves: 1, makesSet: 1 });
    const closes = (width: number): boolean =>
      Math.abs(closesAt([...alike(27), width], 'blank')! - 678) <= 1.5;
    expect(closes(help.fromWidth) && closes(help.toWidth)).toBe(true);
    expect(closes(help.fromWidth - 1)).toBe(false);
    expect(help.toWidth - help.fromWidth === 6 || !closes(help.toWidth + 1)).toBe(true);
  });

  it('asks for as few as will do', async () => {
    const help = (await helpFor(poolOf(alike(25)), [], new Driver({})))!;
    expect(help).toMatchObject({ staves: 3, makesSet: 1 });
    // two can't be wide enough within the widths worth asking for: 2136 less 25 x 76.4 leaves 113 each
    expect(help.fromWidth).toBeGreaterThan(70);
    expect(help.toWidth).toBeLessThan(84);
  });

  it('counts on what the sets made leave, and names the next set', async () => {
    const pool = poolOf(alike(55));
    const made = closeSet(pool, [...Array(28).keys()])!;
    const help = (await helpFor(pool, [made], new Driver({})))!;
    expect(help).toMatchObject({ staves: 1, makesSet: 2 });
  });

  it('is none on an empty rack, where a new rack would be needed, or once stopped', async () => {
    expect(await helpFor(poolOf([]), [], new Driver({}))).toBeNull();
    expect(await helpFor(poolOf(alike(10)), [], new Driver({}))).toBeNull();
    const stopping = new Driver({ now: () => 0, shouldStop: () => true });
    expect(await helpFor(poolOf(alike(27)), [], stopping)).toBeNull();
  });
});

/** A broken stave of a set on the page, what takes its place, and sets that an older page kept. */
import { describe, expect, it } from 'vitest';
import { matchStaves, planVessel, readStock, requestFor, writeSpec } from '../../../src/index.js';
import { keptChosen, type Chosen } from '../../../src/page/rack/chosen.js';
import { replaced, swapFor } from '../../../src/page/rack/replacing.js';
import { bucket } from '../../cli/workshop.js';
import { closing } from '../../sets/sets.js';

const widths = [
  52, 61.5, 55, 63, 58.5, 66, 57, 60, 62.5, 54.5, 59, 64, 56, 61, 58, 65, 53, 60.5, 57.5, 62,
];
const list = ['mark,width', ...widths.map((width, i) => `B${i + 1},${width}`)].join('\n');
const { stock } = readStock(list, 'mm');
const { vessel } = planVessel(bucket, '');
const wishes = { vessels: 1, standing: ['B4', 'B9'] };

async function choose(): Promise<Chosen> {
  const result = await matchStaves(stock!, requestFor(vessel!, wishes));
  const { spec } = vessel!;
  const asked = { spec: writeSpec(spec), title: spec.title, measured: 'blank' } as const;
  return { ...asked, wanted: 1, result, wishes, setUp: ['B4', 'B9'] };
}

describe('staves that stand', () => {
  it('are in the first set, side by side', async () => {
    const { result } = await choose();
    const marks = result.sets[0]!.staves.map(({ mark }) => mark);
    expect(marks[(marks.indexOf('B4') + 1) % marks.length]).toBe('B9');
  });
});

describe('a broken stave', () => {
  it('is replaced by a spare that is in no set, and the ring closes where it is said to', async () => {
    const chosen = await choose();
    const [set] = chosen.result.sets;
    const place = set!.staves.findIndex(({ mark }) => mark === 'B4') + 1;
    const swap = swapFor(chosen, { number: 1, place }, stock!.staves)!;
    expect(swap.broken.mark).toBe('B4');
    const spares = new Set(chosen.result.left);
    for (const { mark } of swap.replacements) expect(spares).toContain(mark);

    const taken = swap.replacements[0]!;
    const after = replaced(chosen, { number: 1, place }, taken);
    const mended = after.result.sets[0]!;
    const planed = mended.staves.map(({ width, planeOff }) => width - planeOff);
    expect(mended.staves[place - 1]!.mark).toBe(taken.mark);
    expect(mended.closesAt).toBeCloseTo(closing(planed), 6);
    expect(mended.laidWidth).toBeCloseTo(
      planed.reduce((sum, width) => sum + width, 0),
      8,
    );
    expect(after.result.left).not.toContain(taken.mark);
    expect(after.setUp).toEqual(['B9']);
    const others = (each: typeof mended) => each.staves.filter((_, i) => i !== place - 1);
    expect(others(mended)).toEqual(others(set!));
  });

  it('stands as it was planed: that is the width to cut', async () => {
    const chosen = await choose();
    const set = chosen.result.sets[0]!;
    const staves = set.staves.map((stave, i) => (i === 2 ? { ...stave, planeOff: 1.25 } : stave));
    const planed = { ...chosen, result: { ...chosen.result, sets: [{ ...set, staves }] } };
    const swap = swapFor(planed, { number: 1, place: 3 }, [])!;
    expect(swap.cut.width).toBeCloseTo(set.staves[2]!.width - 1.25, 8);
    expect(swap.replacements).toEqual([]);
  });

  it('that is the bung stave gives its place to one that can be', async () => {
    const chosen = await choose();
    const [first] = chosen.result.sets;
    const mark = first!.staves[0]!.mark;
    const result = { ...chosen.result, sets: [{ ...first!, bungStave: mark }] };
    const bung = { ...chosen, result, wishes: { ...wishes, bung: 40, tolerance: 20 } };
    const all = swapFor(bung, { number: 1, place: 1 }, stock!.staves)!.replacements;
    const unable = all[0]!.mark;
    const staves = stock!.staves.map((stave) => ({ ...stave, bung: stave.mark !== unable }));
    const swap = swapFor(bung, { number: 1, place: 1 }, staves)!;
    expect(swap.isBungStave).toBe(true);
    expect(swap.replacements).toEqual(all.slice(1));
    const taken = swap.replacements[0]!;
    const after = replaced(bung, { number: 1, place: 1 }, taken);
    expect(after.result.sets[0]!.bungStave).toBe(taken.mark);
  });
});

describe('sets that an older page kept', () => {
  it('are taken on, with what is usual asked for', async () => {
    const { wishes: _wishes, ...older } = await choose();
    const chosen = keptChosen(JSON.stringify(older))!;
    expect(chosen.result.sets).toHaveLength(1);
    expect(swapFor(chosen, { number: 1, place: 1 }, stock!.staves)).not.toBeNull();
  });

  it.each(['{', 'null', '{"result":{}}', '[]'])('are none in %s', (text) => {
    expect(keptChosen(text)).toBeNull();
  });
});

it('places that no set has change nothing', async () => {
  const chosen = await choose();
  const replacement = { mark: 'X', width: 60, planeOff: 0, closesAt: 300 };
  expect(replaced(chosen, { number: 2, place: 1 }, replacement)).toBe(chosen);
  expect(swapFor(chosen, { number: 2, place: 1 }, [])).toBeNull();
});

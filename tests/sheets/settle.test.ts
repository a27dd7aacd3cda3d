import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/drawing/build.js';
import { label, leaderLabel, merge, strokes } from '../../src/drawing/build.js';
import { line } from '../../src/geometry/curve.js';
import { lay } from '../../src/sheets/lay.js';
import { holds } from '../../src/sheets/rectangle.js';
import type { Region } from '../../src/sheets/settle.js';
import { settle } from '../../src/sheets/settle.js';
import { boxOf } from './ink-faults.js';

const at = (x: number, y: number) => ({ x, y });
const region = (minX: number, maxX: number): Region => ({
  area: { minX, maxX, minY: -100, maxY: 100 },
  marks: [],
});
const twoRegions = [region(-100, 0), region(0, 100)];
const settled = (part: Part, regions: readonly Region[] = twoRegions) => settle(lay(part), regions);

describe('lettering between two sheets', () => {
  it('stays where it is when it is whole', () => {
    const part = merge(label('left', at(-50, 0)), label('right', at(50, 0)));
    const places = settled(part);
    expect(places.map(({ region: index }) => index)).toEqual([0, 1]);
    expect(places.map(({ lettering }) => lettering)).toEqual(part.letterings);
  });

  it('moves along its baseline to the nearer side, no farther than it must', () => {
    const [place] = settled(label('cut', at(-2, 10)));
    expect(place!.region).toBe(1);
    expect(place!.lettering.at.y).toBe(10);
    const { minX } = boxOf(place!.lettering);
    expect(minX).toBeGreaterThanOrEqual(0);
    expect(minX).toBeLessThan(0.01);
  });

  it('moves upright lettering across, since along doesn’t help', () => {
    const [place] = settled(label('upright', at(1, 10), { angle: Math.PI / 2 }));
    expect(holds(twoRegions[place!.region]!.area, boxOf(place!.lettering))).toBe(true);
    expect(place!.lettering.at.y).toBeCloseTo(10, 6);
  });

  it('goes to the other side when the nearer place is taken by a line or by lettering', () => {
    const words = label('cut here', at(-8, 10));
    const free = settled(words)[0]!;
    const obstacle = { 0: line(at(-25, 10), at(-3, 13)), 1: line(at(3, 10), at(25, 13)) }[
      free.region
    ]!;
    const beside = settled(merge(words, strokes('station', obstacle)))[0]!;
    expect(boxOf(beside.lettering)).not.toEqual(boxOf(free.lettering));
    const other = label('also there', at(free.region === 0 ? -35 : 2, 10));
    const places = settled(merge(words, other));
    expect(boxOf(places[0]!.lettering)).not.toEqual(boxOf(free.lettering));
  });

  it('keeps clear of marks', () => {
    const mark = { minX: 40, maxX: 48, minY: -4, maxY: 4 };
    const marked = [region(-100, 0), { ...region(0, 100), marks: [mark] }];
    const [place] = settled(label('mark', at(42, 0)), marked);
    const box = boxOf(place!.lettering);
    expect(box.minX >= 48 || box.maxX <= 40 || box.minY >= 4 || box.maxY <= -4).toBe(true);
  });

  it('takes its leader along, which still ends at its target', () => {
    const part = leaderLabel('groove', at(-6, 20), at(-30, -10));
    const [place] = settled(merge(part));
    const leader = place!.lettering.leader!.vertices;
    expect(leader.at(-1)).toMatchObject({ x: -30, y: -10 });
    const before = part.letterings[0]!.leader!.vertices[0]!;
    const moved = place!.lettering.at.x - -6;
    expect(leader[0]!.x - before.x).toBeCloseTo(moved, 9);
  });

  it('becomes smaller when only that makes it fit', () => {
    const narrow = [region(-24, 0), region(0, 24)];
    const [place] = settled(label('eleven mm high?', at(-10, 0), { height: 5 }), narrow);
    expect(place!.lettering.height).toBeLessThan(5);
    expect(place!.lettering.text).toBe('eleven mm high?');
    expect(holds(narrow[place!.region]!.area, boxOf(place!.lettering))).toBe(true);
  });
});

/** The jig's holes are the head's dowels. */
import { expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/measure.js';
import { dowelJigs } from '../../src/pieces/dowel-jig.js';
import { en } from '../../src/pieces/words/en.js';
import { vesselOf, wineCask } from './vessels.js';

it('has a hole at every place where any joint has a dowel, at mid-thickness', () => {
  const vessel = vesselOf(wineCask);
  const [jig] = dowelJigs(vessel, en);
  const { dowels, spec } = vessel.heads.bottom;
  const bores = jig!.strokes
    .filter(({ layer }) => layer === 'bore')
    .map(({ curve }) => boundsOf(curve)!);
  const places = bores.map(({ minX, maxX }) => ((minX + maxX) / 2).toFixed(6));
  expect(new Set(places)).toEqual(new Set(dowels.map(({ x }) => x.toFixed(6))));
  const outline = boundsOf(jig!.strokes.find(({ layer }) => layer === 'outline')!.curve)!;
  expect(outline.maxY - outline.minY).toBeCloseTo(spec.thickness, 9);
  for (const { minX, maxX, minY, maxY } of bores) {
    expect(maxX - minX).toBeCloseTo(spec.dowels.diameter, 9);
    expect((minY + maxY) / 2).toBeCloseTo((outline.minY + outline.maxY) / 2, 9);
    expect(outline.maxX).toBeGreaterThan(maxX + 10);
  }
});

it('names the joints of each hole', () => {
  const vessel = vesselOf(wineCask);
  const texts = dowelJigs(vessel, en)[0]!.letterings.map(({ text }) => text);
  for (const { joint, x } of vessel.heads.bottom.dowels) {
    const label = texts.find((text) => text.endsWith(` ${x.toFixed(1)}`))!;
    expect(label.replace('joint ', '').split(':')[0]!.split(', ')).toContain(String(joint));
  }
});

it('is none without dowels, and one for each head that differs', () => {
  const names = (heads: string) =>
    dowelJigs(vesselOf(`${wineCask}heads: ${heads}\n`), en).map(({ name }) => name);
  expect(names('{ boards: 1 }')).toEqual([]);
  expect(names('{ top: { boards: 5 } }')).toEqual(['dowel-jig-top', 'dowel-jig-bottom']);
});

/** Hoops, jigs and gauges of arbitrary vessels: nothing fails, nothing overlaps. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { paperView } from '../../src/drawing/for-paper.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { drawPieces } from '../../src/pieces/index.js';
import { en } from '../../src/pieces/words/en.js';
import type { HoopSpec, Spec } from '../../src/spec/spec.js';
import type { Vessel } from '../../src/vessel/vessel.js';
import { arbitraryVessel, solved } from '../vessel/specs.js';
import { vesselOf } from './vessels.js';

const names = [
  'hoops',
  'hoop-sheet',
  'splay-gauge',
  'joint-gauge',
  'backing-gauge',
  'hollowing-gauge',
  'bilge-sweep',
  'listing-jig',
  'croze-gauge',
  'chime-gauge',
];

function expectClean(vessel: Vessel): void {
  const drawings = drawPieces(vessel, { words: en }, names);
  const views = drawings.flatMap((drawing): Drawing[] => [drawing, paperView(drawing)]);
  for (const view of views) {
    expect(overlaps(view), view.name).toEqual([]);
    const numbers = view.strokes.flatMap(({ curve }) =>
      curve.vertices.flatMap(({ x, y, bulge }) => [x, y, bulge]),
    );
    expect(numbers.every(Number.isFinite), view.name).toBe(true);
  }
}

/** A pair near the ends, and one with the longest name a spec may give. */
function hooped(spec: Spec): Spec {
  const width = 0.04 * spec.height;
  const pair = (name: string, offset: number): HoopSpec => ({
    name,
    end: 'both',
    offset,
    width,
    thickness: 1.5,
    lap: 2 * width,
  });
  const longest = 'forty letters and blanks make this name.';
  return { ...spec, hoops: [pair('chime', 0), pair(longest, 0.3 * spec.height)] };
}

describe('hoops, jigs and gauges', () => {
  it('of arbitrary vessels, in mm and in inches, are drawn without an overlap', () => {
    fc.assert(
      fc.property(arbitraryVessel, fc.constantFrom('mm' as const, 'in' as const), (spec, units) => {
        expectClean(solved(hooped({ ...spec, units })));
      }),
      { numRuns: 25 },
    );
  });

  it('of a vessel the size of an egg cup are drawn beside the plates where they have no room', () => {
    const staves = 'staves: { count: 8, thickness: 4 }';
    const cup = `vessel: tub\ntitle: Invented cup\nunits: mm\nheight: 60\ntop: 60\nbottom: 50\n${staves}\n`;
    expectClean(vesselOf(cup));
  });
});

/** The listing carriage: a blank that is cut at both its settings is the stave. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Spec } from '../../src/spec/spec.js';
import { leftForSecondCut, listingOf } from '../../src/vessel/listing.js';
import {
  arbitraryTub,
  bucket,
  cylinder,
  degrees,
  changed,
  solved,
  wallWithLean,
  wineCask,
} from './specs.js';

const listed = (spec: Spec) => {
  const vessel = solved(spec);
  return { vessel, stave: vessel.meanStave, listing: listingOf(vessel, vessel.meanStave)! };
};

describe('the taper', () => {
  // compound-angle joinery of coopered work: end taper atan(tan(180/n) sin(lean)); the formula is published, these
  // numbers were computed from it independently
  it.each([
    [6, 15, 8.499],
    [8, 15, 6.119],
    [12, 20, 5.236],
    [16, 5, 0.993],
  ])('of %i staves that lean %i degrees is the published relation’s', (count, lean, taper) => {
    const outside = wallWithLean(bucket.height, 600, lean);
    const spec = changed({ ...bucket, hoops: [], outside }, { staves: { count } });
    const { listing } = listed(spec);
    expect(degrees(Math.abs(listing.taper))).toBeCloseTo(taper, 3);
  });

  it('is 0 on a cylinder, whose fences are parallel to the blade', () => {
    const { listing, stave } = listed(cylinder);
    expect(listing.taper).toBeCloseTo(0, 12);
    expect(listing.secondFence(listing.reach)).toBeCloseTo(stave.width, 9);
    expect(listing.secondFence(-listing.reach)).toBeCloseTo(stave.width, 9);
    expect(listing.firstFence(99)).toBeCloseTo(stave.width + leftForSecondCut, 9);
  });
});

describe('the two cuts', () => {
  it('leave the stave: half of it beside the raw edge’s middle line, then all of it', () => {
    fc.assert(
      fc.property(arbitraryTub, (spec) => {
        const { stave, listing } = listed(spec);
        const theta = listing.taper;
        const width = { top: 0, bottom: 0 };
        for (const end of ['top', 'bottom'] as const) {
          const z = (end === 'top' ? 1 : -1) * (spec.height / 2);
          width[end] = 2 * stave.halfWidth(z, 0);
          // first cut: from the blade at the end plane square to the fence, which lies along the stave's middle line
          const x = listing.ends[end];
          const toFence = listing.firstFence(x) * Math.cos(theta);
          const rawHalf = listing.widestWidth / 2 + leftForSecondCut;
          expect(toFence).toBeCloseTo(width[end] / 2 + rawHalf, 6);
        }
        // second cut, turned end for end: from the blade at the bottom's end plane, which now lies where the top's did,
        // square to the middle line, the other corner stands on the fence
        for (const [end, x] of [
          ['bottom', -listing.ends.bottom],
          ['top', -listing.ends.top],
        ] as const) {
          const corner = {
            x: x + width[end] * Math.sin(theta),
            y: width[end] * Math.cos(theta),
          };
          expect(listing.secondFence(corner.x)).toBeCloseTo(corner.y, 6);
        }
      }),
    );
  });

  it('run on a carriage longer than the blank', () => {
    const { stave, listing } = listed(bucket);
    expect(listing.reach).toBeGreaterThan(stave.blankEnds.top.outer + 29);
    expect(listing.widestWidth).toBeGreaterThan(stave.width);
  });
});

it('a cask has none: its edges are curved', () => {
  const cask = solved(wineCask);
  expect(listingOf(cask, cask.meanStave)).toBeNull();
});

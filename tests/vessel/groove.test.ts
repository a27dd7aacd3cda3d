import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Spec } from '../../src/spec/spec.js';
import { wallRadius, type Groove } from '../../src/vessel/groove.js';
import { insideAt } from '../../src/vessel/inside.js';
import { bisect } from './numeric.js';
import {
  arbitraryVessel,
  between,
  bucket,
  changed,
  cylinder,
  radians,
  solved,
  wallWithLean,
  wineCask,
} from './specs.js';

const rho = (472.5 ** 2 + 53 ** 2) / (2 * 53);
const insideOfCask = (height: number): number =>
  339 - rho + Math.sqrt((rho - 27) ** 2 - height ** 2);

const grooveOf = (spec: Spec): Groove => solved(spec).heads.bottom.groove;
const wall = (spec: Spec) => {
  const { ring, profile, wall, heads } = solved(spec);
  const inside = insideAt('bottom', spec, ring, profile, wall);
  return (height: number): number => wallRadius(heads.bottom.groove, inside, height);
};

describe('groove of a straight tub', () => {
  const groove = grooveOf(cylinder);

  it('has its middle the inset inside the end plane, its lips half a width either way', () => {
    expect(groove.middle).toBe(-120);
    expect(groove.outerLip).toBe(-122.5);
    expect(groove.innerLip).toBe(-117.5);
    expect(groove.howelTo).toBe(-117.5 + 12);
  });

  it('is as deep as the howel and the croze together', () => {
    expect(groove.howelRadius(-120)).toBeCloseTo(132 + 1.5, 10);
    expect(groove.radius).toBeCloseTo(132 + 1.5 + 4, 10);
    expect(groove.lipDepth).toBeCloseTo(4, 10);
  });

  it('has a chime bevel that falls at its angle from the end plane to the howel', () => {
    // flat 8 of a wall 18 thick; the bevel drops (150 - 8 - 133.5) in radius
    const drop = 150 - 8 - 133.5;
    expect(groove.chime!.endRadius).toBeCloseTo(142, 10);
    expect(groove.chime!.footRadius).toBeCloseTo(133.5, 10);
    expect(groove.chime!.footHeight).toBeCloseTo(-150 + drop * Math.tan(radians(40)), 10);
    expect(groove.howelFrom).toBe(groove.chime!.footHeight);
  });

  it('opens by what the groove is deeper than the howel', () => {
    expect(groove.leastPassage).toBeCloseTo(133.5, 10);
    expect(groove.opening).toBeCloseTo(4, 10);
  });
});

describe('groove of the wine cask', () => {
  const groove = grooveOf(wineCask);

  it('lies on the concentric circle of the inside, howel and croze further out', () => {
    expect(groove.radius).toBeCloseTo(insideOfCask(412.5) + 2 + 5, 9);
  });

  it('is deepest at its lip on the chime side: 5.6 mm', () => {
    expect(groove.lipDepth).toBeCloseTo(groove.radius - insideOfCask(415.5) - 2, 9);
    expect(groove.lipDepth).toBeCloseTo(5.6, 2);
  });

  it('is the same at both ends, mirrored', () => {
    const { top } = solved(wineCask).heads;
    expect(top!.groove.middle).toBe(-groove.middle);
    expect(top!.groove.radius).toBeCloseTo(groove.radius, 10);
    expect(top!.groove.howelTo).toBe(-groove.howelTo);
    expect(top!.groove.chime!.footHeight).toBeCloseTo(-groove.chime!.footHeight, 9);
  });

  it('opens by the groove less the chime foot, the narrowest place the head passes', () => {
    const foot = bisect(
      (h) => 276 - (472.5 - h) / Math.tan(radians(40)) - insideOfCask(h) - 2,
      440,
      472.5,
    );
    expect(groove.chime!.footHeight).toBeCloseTo(-foot, 8);
    expect(groove.opening).toBeCloseTo(groove.radius - insideOfCask(foot) - 2, 8);
    expect(groove.opening).toBeCloseTo(15.4, 1);
  });
});

describe('special grooves', () => {
  it('without depth of howel lie on the plain inside', () => {
    const spec = changed(cylinder, { howel: { depth: 0, beyondGroove: 0 } });
    expect(grooveOf(spec).radius).toBeCloseTo(132 + 4, 10);
    expect(grooveOf(spec).howelTo).toBe(grooveOf(spec).innerLip);
  });

  it('of flat insides count from the corners', () => {
    const spec = changed(cylinder, { staves: { inside: 'flat' } });
    const corner = 132 / Math.cos(Math.PI / 16);
    expect(grooveOf(spec).radius).toBeCloseTo(corner + 1.5 + 4, 10);
  });

  it('need no chime bevel where the flat takes the whole end', () => {
    const spec = changed(cylinder, { chime: { flat: 18 } });
    expect(grooveOf(spec).chime).toBeNull();
    expect(grooveOf(spec).howelFrom).toBe(-150);
    expect(wall(spec)(-149.9)).toBeCloseTo(133.5, 10);
  });

  it('of a knife edge start the bevel at the outside', () => {
    const { chime } = grooveOf(changed(cylinder, { chime: { flat: 0 } }));
    expect(chime!.endRadius).toBeCloseTo(150, 10);
  });

  it('of a tub that widens downwards is deepest at the inner lip, and needs no opening there', () => {
    const spec = changed(bucket, { outside: wallWithLean(300, 400, 15) });
    const groove = grooveOf(spec);
    const slope = Math.tan(radians(15));
    // 2.5 mm along the axis from the groove's middle to either lip
    expect(groove.lipDepth).toBeCloseTo(4 + 2.5 * slope, 9);
    expect(groove.howelRadius(groove.outerLip)).toBeGreaterThan(
      groove.howelRadius(groove.innerLip),
    );
    expect(groove.opening).toBeLessThan(4);
  });

  it('of a tub that narrows downwards is deepest at the outer lip', () => {
    const groove = grooveOf(changed(bucket, { outside: wallWithLean(300, 300, -15) }));
    const slope = Math.tan(radians(15));
    expect(groove.lipDepth).toBeCloseTo(4 + 2.5 * slope, 9);
    expect(groove.opening).toBeGreaterThan(4 + 2.5 * slope);
  });
});

describe('wall', () => {
  it('runs from the end over bevel, howel, groove and howel to the plain inside', () => {
    const at = wall(cylinder);
    const { chime } = grooveOf(cylinder);
    expect(at(-150)).toBeCloseTo(142, 9);
    expect(at((-150 + chime!.footHeight) / 2)).toBeCloseTo((142 + 133.5) / 2, 9);
    expect(at(chime!.footHeight + 0.01)).toBeCloseTo(133.5, 9);
    expect(at(-122.6)).toBeCloseTo(133.5, 9);
    expect(at(-122.4)).toBeCloseTo(137.5, 9);
    expect(at(-117.6)).toBeCloseTo(137.5, 9);
    expect(at(-117.4)).toBeCloseTo(133.5, 9);
    expect(at(-105.6)).toBeCloseTo(133.5, 9);
    expect(at(-105.4)).toBeCloseTo(132, 9);
    expect(at(100)).toBeCloseTo(132, 9);
  });

  it('never stands further in than the plain inside, nor further out than the end', () => {
    fc.assert(
      fc.property(arbitraryVessel, between(0, 0.3), (spec, share) => {
        const height = -spec.height / 2 + share * spec.height;
        const { wall: plain, profile, heads } = solved(spec);
        const r = wall(spec)(height);
        expect(r).toBeGreaterThanOrEqual(plain.insideRadius(height) - 1e-9);
        expect(r).toBeLessThan(profile.radius(height));
        expect(r).toBeLessThanOrEqual(
          Math.max(heads.bottom.groove.radius, plain.insideRadius(height)) + spec.staves.thickness,
        );
      }),
    );
  });
});

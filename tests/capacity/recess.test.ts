import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recessLitres } from '../../src/capacity/recess.js';
import type { Spec } from '../../src/spec/spec.js';
import { wallRadius } from '../../src/vessel/groove.js';
import { insideAt } from '../../src/vessel/inside.js';
import { simpson } from '../vessel/numeric.js';
import { arbitraryVessel, changed, cylinder, solved, wineCask } from '../vessel/specs.js';

const cone = (a: number, b: number, height: number): number =>
  (Math.PI * height * (a * a + a * b + b * b)) / 3;
const disc = (r: number, height: number): number => Math.PI * r * r * height;

describe('recess of a straight tub', () => {
  // plain inside 132, howel 133.5, groove 137.5; rim 137.5, inner bevel from 127.5 at the face to 133 at the land, 5.75 on;
  // the groove's lip is 5.5 from the face, the howel ends 12 below the lip, 6.5 inside the face
  it('is howel, bevel and groove, in closed form', () => {
    const below = disc(133.5, 6.5) - disc(132, 6.5);
    const beside = disc(133.5, 5.5) + disc(137.5, 0.25) - cone(127.5, 133, 5.75);
    expect(recessLitres(solved(cylinder))).toBeCloseTo((below + beside) / 1e6, 10);
  });

  it('with a howel that ends beside the bevel counts the plain wall to there', () => {
    const spec = changed(cylinder, { howel: { beyondGroove: 2 } });
    const beside = disc(132, 3.5) + disc(133.5, 2) + disc(137.5, 0.25) - cone(127.5, 133, 5.75);
    expect(recessLitres(solved(spec))).toBeCloseTo(beside / 1e6, 10);
  });

  it('of flat staves counts the corners that the howel takes away', () => {
    const flat = changed(cylinder, {
      staves: { inside: 'flat' },
      howel: { beyondGroove: 2 },
      bottom: { edge: { innerBevel: 20 } },
    });
    const howel = 132 / Math.cos(Math.PI / 16) + 1.5;
    const [rim, polygon] = [howel + 4, 16 * Math.tan(Math.PI / 16) * 132 ** 2];
    const beside =
      polygon * 3.5 + disc(howel, 2) + disc(rim, 0.25) - cone(rim - 20, rim - 4.5, 5.75);
    expect(recessLitres(solved(flat))).toBeCloseTo(beside / 1e6, 10);
  });

  it('is nothing but the howel where the land lies on the inside face', () => {
    const spec = changed(cylinder, { bottom: { edge: { fromInside: 2.25 } } });
    // the groove's lip lies 0.25 inside the face
    const beyond = disc(137.5, 0.25) - disc(132, 0.25);
    const howel = disc(133.5, 12) - disc(132, 12);
    expect(recessLitres(solved(spec))).toBeCloseTo((beyond + howel) / 1e6, 10);
  });
});

describe('recess of any vessel', () => {
  it('is that of an independent integration, fine enough for the steps', () => {
    const separate = (spec: Spec): number => {
      const { ring, profile, wall, heads } = solved(spec);
      return [heads.top, heads.bottom].reduce((sum, head) => {
        if (!head) return sum;
        const inside = insideAt(head.groove.end, spec, ring, profile, wall);
        const perSquare = spec.staves.inside === 'flat' ? ring.sumOfTangents : Math.PI;
        const land = head.section[1]!;
        const face = head.section[0]!;
        const start = Math.min(0, (head.groove.howelTo - head.insideFace) * head.groove.towardsEnd);
        const area = (y: number): number => {
          const height = head.insideFace + head.groove.towardsEnd * y;
          const plain = perSquare * inside.radius(height) ** 2;
          const howelled = (height - head.groove.howelTo) * head.groove.towardsEnd > 0;
          const open = howelled ? Math.PI * wallRadius(head.groove, inside, height) ** 2 : plain;
          const bevel = face.x + ((land.x - face.x) * y) / land.y;
          return open - (y < 0 ? plain : Math.PI * bevel ** 2);
        };
        return sum + simpson(area, start, land.y, 4000);
      }, 0);
    };
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const exact = separate(spec) / 1e6;
        expect(Math.abs(recessLitres(solved(spec)) / exact - 1)).toBeLessThan(2e-3);
        expect(exact).toBeGreaterThan(0);
      }),
      { numRuns: 15 },
    );
  });

  it('of the wine cask is 0.14 litres a head, alike at both', () => {
    expect(recessLitres(solved(wineCask)) / 2).toBeCloseTo(0.1425, 3);
  });
});

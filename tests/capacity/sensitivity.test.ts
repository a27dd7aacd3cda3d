/** Small errors against rings built from coordinates, and against vessels solved anew. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sensitivityOf, type Sensitivity, type Slip } from '../../src/capacity/sensitivity.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import type { Spec } from '../../src/spec/spec.js';
import { arbitraryVessel, bucket, changed, radians, solved, wineCask } from '../vessel/specs.js';

const of = (spec: Spec, slip: Slip): Sensitivity =>
  sensitivityOf(solved(spec)).find((each) => each.slip === slip)!;

const wider = (spec: Spec, by: number): Spec =>
  changed(spec, {
    outside:
      spec.outside.kind === 'cask'
        ? { bilge: spec.outside.bilge + by, ends: spec.outside.ends + by }
        : { top: spec.outside.top + by, bottom: spec.outside.bottom + by },
  });
const litres = (spec: Spec): number => capacityLitres(solved(spec));
const crozeRadius = (spec: Spec): number => solved(spec).heads.bottom.groove.radius;

describe('bevels off by 0.1 degree', () => {
  const vessel = solved(wineCask);
  const alpha = Math.PI / 28;
  const thickness = vessel.meanStave.blankThickness;
  const half = 339 * Math.tan(alpha);

  it('too much: the inner corners of two staves set up side by side stand that far apart', () => {
    const inner = half - thickness * Math.tan(alpha + radians(0.1));
    // one stave turned by alpha about the axis: its inner corner from the joint plane
    const apart = (339 - thickness) * Math.sin(alpha) - inner * Math.cos(alpha);
    const slip = of(wineCask, 'bevels-steep');
    expect(slip.jointGap).toBeCloseTo(2 * apart, 9);
    expect(slip).toMatchObject({ opensAt: 'inside', diameter: 0, girth: 0, litres: 0 });
  });

  it('too little: the ring stands on its inner corners and closes that much wider', () => {
    const inner = half - thickness * Math.tan(alpha - radians(0.1));
    const radius = inner / Math.tan(alpha) + thickness;
    const slip = of(wineCask, 'bevels-flat');
    expect(slip.diameter).toBeCloseTo(2 * (radius - 339), 9);
    expect(slip.girth).toBeCloseTo(Math.PI * slip.diameter, 9);
    expect(slip.opensAt).toBe('outside');
  });
});

describe('staves too wide', () => {
  it('all of them: the diameter of a ring whose laid width is that much more', () => {
    const slip = of(wineCask, 'staves-wide');
    expect(slip.diameter).toBeCloseTo(0.2 / Math.tan(Math.PI / 28), 9);
    expect(slip.jointGap).toBeLessThan(1e-9);
    expect(slip.girth).toBeCloseTo(5.6, 1);
  });

  it('one of them: where the mixed set closes', () => {
    const width = solved(wineCask).meanStave.width;
    const widths = [width + 1, ...new Array<number>(27).fill(width)];
    const mixed = solved(changed(wineCask, { staves: { widths } }));
    const slip = of(wineCask, 'one-stave-wide');
    expect(slip.diameter).toBeCloseTo(mixed.ring.closesAt - 678, 9);
    // that stave takes more of the circle than its bevel was made for; the joint opens outside
    const miss = Math.tan(mixed.ring.alphas[0]!) - Math.tan(Math.PI / 28);
    expect(slip.jointGap).toBeCloseTo(solved(wineCask).meanStave.blankThickness * miss, 2);
    expect(slip.opensAt).toBe('outside');
  });
});

describe.each([
  ['a cask', wineCask],
  ['a bucket', bucket],
])('%s solved anew', (_name, spec) => {
  it('holds that much more and its head is that much looser when the wall stands further out', () => {
    for (const slip of ['staves-wide', 'one-stave-wide', 'bevels-flat'] as const) {
      const { diameter, litres: more, headClearance } = of(spec, slip);
      const anew = wider(spec, diameter);
      expect(more).toBeCloseTo(litres(anew) - litres(spec), 9);
      expect(headClearance).toBeCloseTo(2 * (crozeRadius(anew) - crozeRadius(spec)), 9);
    }
  });

  it('holds less with the groove further in, and its head is looser with a deeper one', () => {
    const { croze } = spec.heads.bottom;
    const further = changed(spec, { both: { croze: { inset: croze.inset + 1 } } });
    expect(of(spec, 'groove-inset').litres).toBeCloseTo(litres(further) - litres(spec), 9);
    expect(of(spec, 'groove-inset').headClearance).toBeCloseTo(
      2 * (crozeRadius(further) - crozeRadius(spec)),
      9,
    );
    expect(of(spec, 'groove-depth')).toMatchObject({ litres: 0, jointGap: 0, opensAt: null });
    expect(of(spec, 'groove-depth').headClearance).toBeCloseTo(2, 9);
  });
});

it('is finite and of the right sign for any vessel', () => {
  fc.assert(
    fc.property(arbitraryVessel, (spec) => {
      const slips = sensitivityOf(solved(spec));
      expect(slips).toHaveLength(6);
      for (const { slip, ...numbers } of slips) {
        for (const value of Object.values(numbers))
          if (typeof value === 'number') expect(Number.isFinite(value), slip).toBe(true);
        expect(numbers.diameter).toBeGreaterThanOrEqual(0);
        expect(Math.sign(numbers.litres)).toBe(
          slip === 'groove-inset' ? -1 : Math.sign(numbers.diameter),
        );
      }
    }),
  );
});

/** Sizing against closed forms, and against what was to stay. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keeps, sizeFor, type SizeRequest, type Sized } from '../../src/capacity/size.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import type { Spec } from '../../src/spec/spec.js';
import { arbitraryVessel, between, changed, cylinder, solved, wineCask } from '../vessel/specs.js';

function sized(spec: Spec, request: SizeRequest): Sized {
  const answer = sizeFor(spec, request);
  if ('unreachable' in answer) throw new Error(JSON.stringify(answer.unreachable.issues));
  return answer;
}

const staveLength = (spec: Spec): number => {
  const { top, bottom } = solved(spec).meanStave.ends;
  return top.outerStation - bottom.outerStation;
};
const headDiameter = (spec: Spec): number => solved(spec).heads.bottom.diameter;
const diameters = ({ outside }: Spec): [number, number] =>
  outside.kind === 'cask' ? [outside.bilge, outside.ends] : [outside.top, outside.bottom];

describe('a straight tub, by the formula of the cylinder', () => {
  // the bottom's inside face stands 30 + 8 from the end; the wall is 18 thick
  it('keeps its height and becomes as wide as the litres ask', () => {
    const { spec } = sized(cylinder, { litres: 20, keep: 'height' });
    const radius = Math.sqrt(20e6 / (Math.PI * (300 - 38))) + 18;
    expect(spec.height).toBe(300);
    for (const diameter of diameters(spec)) expect(diameter).toBeCloseTo(2 * radius, 2);
  });

  it('keeps its heads and becomes as high as the litres ask', () => {
    const { spec } = sized(cylinder, { litres: 20, keep: 'heads' });
    expect(spec.height).toBeCloseTo(20e6 / (Math.PI * 132 ** 2) + 38, 2);
    expect(diameters(spec)).toEqual([300, 300]);
  });
});

describe('any vessel', () => {
  const request = fc.record({
    share: between(0.94, 1.08),
    keep: fc.constantFrom(...keeps),
    longer: fc.option(between(0.99, 1.01)),
  });

  it('holds what was wanted within 0.01 %, and keeps what was to stay', () => {
    let reached = 0;
    fc.assert(
      fc.property(arbitraryVessel, request, (spec, { share, keep, longer }) => {
        const litres = capacityLitres(solved(spec)) * share;
        const length = longer === null || keep === 'height' ? null : staveLength(spec) * longer;
        const answer = sizeFor(spec, {
          litres,
          keep,
          ...(length !== null && { staveLength: length }),
        });
        // near the limits of what can be built the new one may lie outside them
        if ('unreachable' in answer) return;
        reached += 1;
        expect(Math.abs(capacityLitres(solved(answer.spec)) / litres - 1)).toBeLessThan(1e-4);
        expect(answer.litres / litres).toBeCloseTo(1, 4);
        if (length !== null) expect(Math.abs(staveLength(answer.spec) - length)).toBeLessThan(0.02);
        if (keep === 'height') expect(answer.spec.height).toBe(spec.height);
        if (keep === 'heads')
          expect(Math.abs(headDiameter(answer.spec) - headDiameter(spec))).toBeLessThan(0.02);
        if (keep !== 'heads') {
          const [is, was] = [diameters(answer.spec), diameters(spec)];
          expect(is[0] / is[1]).toBeCloseTo(was[0] / was[1], 4);
        }
        if (keep === 'proportions' && length === null)
          expect(answer.spec.height / diameters(answer.spec)[0]).toBeCloseTo(
            spec.height / (diameters(spec)[0] * scaleOf(spec)),
            4,
          );
      }),
    );
    expect(reached).toBeGreaterThan(25);
  });
});

/** A mixed set's diameters are told as it closes. */
const scaleOf = (spec: Spec): number => solved(spec).ring.closesAt / Math.max(...diameters(spec));

describe('what it says', () => {
  it('is nothing but the title’s old number when the capacity is there already', () => {
    const litres = capacityLitres(solved(wineCask));
    const { spec, changes } = sized(wineCask, { litres, keep: 'proportions' });
    expect(changes.every(({ from, to }) => Math.abs(from - to) < 0.002)).toBe(true);
    expect(spec.title).toBe(wineCask.title);
  });

  it('is every dimension that changes, old and new, hoops too', () => {
    const { spec, changes } = sized(wineCask, { litres: 250, keep: 'proportions' });
    const keys = ['height', 'bilge', 'ends', 'hoops[1].offset', 'hoops[2].offset'];
    expect(changes.map(({ key }) => key)).toEqual(keys);
    expect(changes[0]).toEqual({ key: 'height', from: 945, to: spec.height });
    expect(spec.staves).toEqual(wineCask.staves);
  });

  it('is round dimensions in order of how near they come, each of which holds what it says', () => {
    const { spec, nearby } = sized(wineCask, { litres: 230, keep: 'proportions' });
    expect(nearby.length).toBeGreaterThan(3);
    const offs = nearby.map(({ off }) => Math.abs(off));
    expect(offs).toEqual([...offs].sort((a, b) => a - b));
    for (const { height, outside, litres, off } of nearby) {
      expect([height, ...diameters({ ...spec, outside })].every((mm) => mm % 5 === 0)).toBe(true);
      expect(capacityLitres(solved({ ...spec, height, outside }))).toBeCloseTo(litres, 6);
      expect(litres - 230).toBeCloseTo(off, 9);
    }
  });

  it('is round quarters of an inch for a vessel in inches', () => {
    const inches: Spec = { ...wineCask, units: 'in' };
    const { nearby } = sized(inches, { litres: 230, keep: 'height' });
    for (const { height, outside } of nearby) {
      expect(height).toBe(945);
      const [bilge] = diameters({ ...inches, outside });
      expect(bilge / 6.35).toBeCloseTo(Math.round(bilge / 6.35), 9);
    }
  });

  it('is numbers of few digits', () => {
    const { spec } = sized(wineCask, { litres: 230, keep: 'heads', staveLength: 950 });
    for (const mm of [spec.height, ...diameters(spec)]) expect(mm).toBe(Number(mm.toFixed(3)));
  });

  it('keeps a mixed set in proportion, and closing', () => {
    const widths = [92, ...new Array<number>(9).fill(71), ...new Array<number>(17).fill(80.1)];
    const mixed = changed(wineCask, { staves: { count: widths.length, widths } });
    const { spec, changes } = sized(mixed, { litres: 240, keep: 'height' });
    expect(capacityLitres(solved(spec))).toBeCloseTo(240, 1);
    const [a, b] = [spec.staves.widths![0]! / 92, spec.staves.widths![26]! / 80.1];
    expect(a).toBeCloseTo(b, 4);
    expect(changes.map(({ key }) => key)).toContain('staves.widths');
    const outside = spec.outside.kind === 'cask' ? spec.outside.bilge : NaN;
    expect(solved(spec).ring.closesAt).toBeCloseTo(outside, 1);
  });
});

describe('what cannot be reached', () => {
  it('is said with the nearest capacity there is', () => {
    const answer = sizeFor(wineCask, { litres: 1, keep: 'heads' });
    expect(answer).toMatchObject({ unreachable: { issues: [], spec: null } });
    const { nearest } = 'unreachable' in answer ? answer.unreachable : { nearest: null };
    expect(nearest).toBeGreaterThan(30);
    expect(nearest).toBeLessThan(80);
  });

  it('is said with the reasons where there is a shape that cannot be built', () => {
    const answer = sizeFor(wineCask, { litres: 20, keep: 'proportions' });
    if (!('unreachable' in answer)) throw new Error('a bung wider than a stave was accepted');
    const codes = answer.unreachable.issues.map(({ code }) => code);
    expect(codes).toContain('bung-wider-than-stave');
    expect(answer.unreachable.spec).not.toBeNull();
  });

  it('is as near as it comes when staves of a length cannot make the bulge', () => {
    const length = staveLength(wineCask);
    const answer = sizeFor(wineCask, { litres: 400, keep: 'heads', staveLength: length });
    const { nearest } = 'unreachable' in answer ? answer.unreachable : { nearest: null };
    expect(nearest).toBeGreaterThan(250);
    expect(nearest).toBeLessThan(400);
  });
});

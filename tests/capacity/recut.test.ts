/** What is left of a vessel that was cut or shaved must be the same wood. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recut, type Recut, type Recutting } from '../../src/capacity/recut.js';
import { capacityLitres, volumeBetween } from '../../src/capacity/volume.js';
import type { Spec } from '../../src/spec/spec.js';
import {
  arbitraryCask,
  arbitraryTub,
  between,
  bucket,
  changed,
  solved,
  wineCask,
} from '../vessel/specs.js';

function made(spec: Spec, recutting: Recutting): Recut {
  const answer = recut(spec, recutting);
  if ('issues' in answer) throw new Error(JSON.stringify(answer.issues));
  return answer;
}

describe('a cask cut shorter', () => {
  it('is the old one, cut: the same radius at every height, inside and out', () => {
    let built = 0;
    fc.assert(
      fc.property(arbitraryCask, between(0.01, 0.1), (spec, share) => {
        const answer = recut(spec, { shorten: spec.height * share });
        if ('issues' in answer) return;
        built += 1;
        const [old, now] = [solved(spec), answer.vessel];
        for (const part of [-1, -0.6, 0, 0.3, 1]) {
          const z = (part * answer.spec.height) / 2;
          expect(Math.abs(now.profile.radius(z) - old.profile.radius(z))).toBeLessThan(0.002);
        }
        const [from, to] = [now.heads.bottom.insideFace, now.heads.top!.insideFace];
        const litres = volumeBetween(old, from, to) / 1e6;
        expect(Math.abs(capacityLitres(now) / litres - 1)).toBeLessThan(3e-5);
        expect(answer.residual.outside).toBeLessThan(0.002);
      }),
    );
    expect(built).toBeGreaterThan(25);
  });

  it('says what changed, and leaves hoops where they sit on the wood', () => {
    const { spec, changes } = made(wineCask, { shorten: 15 });
    expect(spec.height).toBe(915);
    const rho = (472.5 ** 2 + 53 ** 2) / 106;
    const ends = 2 * (339 - rho + Math.sqrt(rho * rho - 457.5 ** 2));
    expect(changes.map(({ key, to }) => [key, to])).toEqual([
      ['height', 915],
      ['ends', Number(ends.toFixed(3))],
      ['hoops[1].offset', 90],
      ['hoops[2].offset', 240],
    ]);
  });

  it('moves hoops that would stand over the end, and those that these would meet', () => {
    const { spec } = made(wineCask, { shorten: 70 });
    expect(spec.hoops.map(({ offset }) => offset)).toEqual([3, 46, 185]);
  });
});

describe('a tub cut shorter', () => {
  it('is the old one, cut at either end', () => {
    let built = 0;
    fc.assert(
      fc.property(arbitraryTub, between(0, 0.1), between(0, 0.1), (spec, below, above) => {
        const off = { shorten: spec.height * below, rim: spec.height * above };
        const answer = recut(spec, off);
        if ('issues' in answer) return;
        built += 1;
        const old = solved(spec);
        const raised = (off.shorten - off.rim) / 2;
        for (const part of [-0.5, 0, 0.5]) {
          const z = part * answer.spec.height;
          const was = old.profile.radius(z + raised);
          expect(Math.abs(answer.vessel.profile.radius(z) - was)).toBeLessThan(0.003);
        }
      }),
    );
    expect(built).toBeGreaterThan(25);
  });

  it('parts a hoop of both ends where they lose unlike amounts', () => {
    const hoops = [
      { name: 'pair', end: 'both', offset: 60, width: 20, thickness: 1, lap: 40 },
    ] as const;
    const { spec } = made({ ...bucket, hoops }, { shorten: 10, rim: 5 });
    expect(spec.hoops.map(({ end, offset }) => [end, offset])).toEqual([
      ['top', 55],
      ['bottom', 50],
    ]);
  });
});

describe('a shaved vessel', () => {
  it('has the old inside, and an outside that much nearer, square to it', () => {
    fc.assert(
      fc.property(fc.oneof(arbitraryCask, arbitraryTub), between(0.02, 0.1), (spec, share) => {
        const shave = share * spec.staves.thickness;
        const answer = recut(spec, { shorten: 0, shave });
        if ('issues' in answer) return;
        const [old, now] = [solved(spec), answer.vessel];
        expect(Math.abs(capacityLitres(now) / capacityLitres(old) - 1)).toBeLessThan(2e-4);
        const bilge = now.profile.radius(0);
        const { slope } = old.profile;
        if (spec.vessel === 'cask') expect(old.profile.radius(0) - bilge).toBeCloseTo(shave, 2);
        else expect(old.profile.radius(0) - bilge).toBeCloseTo(shave * Math.hypot(1, slope(0)), 2);
      }),
    );
  });

  it('is exact on an arc, and says how far a parabola is off', () => {
    expect(made(wineCask, { shorten: 0, shave: 2 }).residual.outside).toBeLessThan(0.001);
    const parabola = changed(wineCask, { outside: { profile: 'parabola', ends: 500 } });
    const { residual } = made(parabola, { shorten: 0, shave: 5 });
    expect(residual.outside).toBeGreaterThan(0.002);
    expect(residual.outside).toBeLessThan(0.1);
  });

  it('narrows the staves of a mixed set, which still close', () => {
    const widths = [92, ...new Array<number>(9).fill(71), ...new Array<number>(17).fill(80.1)];
    const mixed = changed(wineCask, { staves: { count: widths.length, widths } });
    const { vessel } = made(mixed, { shorten: 0, shave: 2 });
    expect(vessel.ring.closesAt).toBeCloseTo(solved(mixed).ring.closesAt - 4, 2);
  });
});

describe('the old groove', () => {
  const states = (shorten: number): string[] =>
    made(wineCask, { shorten, shave: shorten === 0 ? 1 : 0 }).oldGrooves.map(({ state }) => state);

  it('is in use, in the way, beside the new one, or gone', () => {
    expect(states(0)).toEqual(['same', 'same']);
    expect(states(5)).toEqual(['meets', 'meets']);
    expect(states(15)).toEqual(['beside', 'beside']);
    expect(states(70)).toEqual(['gone', 'gone']);
    expect(made(bucket, { shorten: 10 }).oldGrooves).toHaveLength(1);
  });
});

it('refuses what leaves too little wood, with the reasons', () => {
  const answer = recut(wineCask, { shorten: 15, shave: 20 });
  if (!('issues' in answer)) throw new Error('a wall of 7 mm took a groove of 5 and a howel of 2');
  expect(answer.issues.map(({ code }) => code)).toContain('groove-through-wall');
});

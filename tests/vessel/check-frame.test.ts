import { describe, expect, it } from 'vitest';
import type { CaskProfile, Spec } from '../../src/spec/spec.js';
import { codesOf, onlyIssue } from './codes.js';
import { bucket, changed, cylinder, radians, solved, wallWithLean, wineCask } from './specs.js';

const mixed = (widths: readonly number[]): Spec =>
  changed(wineCask, { staves: { widths, count: widths.length }, bung: null });
/** Wide and narrow by turns, closing at a diameter by construction: half-angles of 0.8 and 1.2 shares of pi / 28. */
const closingAt = (diameter: number): number[] =>
  Array.from(
    { length: 28 },
    (_, i) => diameter * Math.tan(((i % 2 === 0 ? 0.8 : 1.2) * Math.PI) / 28),
  );

/** A cask that leans `degrees` at its ends; no hoops, so that nothing else can be at fault. */
function leaning(degreesAtEnd: number, profile: CaskProfile = 'arc'): Spec {
  const half = 200;
  const rise = half * Math.tan(radians(degreesAtEnd) / (profile === 'arc' ? 2 : 1));
  const ends = 700 - 2 * (profile === 'parabola' ? rise / 2 : rise);
  return changed(wineCask, {
    height: 2 * half,
    outside: { kind: 'cask', bilge: 700, ends, profile },
    staves: { count: 40, thickness: 20, endThickness: 20, neutral: 0 },
    both: {
      thickness: 20,
      croze: { inset: 40, depth: 3, width: 5 },
      edge: { thickness: 4.5, fromInside: 9, innerBevel: 20 },
    },
    hoops: [],
    bung: null,
  });
}

describe('good specs', () => {
  it('raise nothing', () => {
    for (const spec of [wineCask, bucket, cylinder]) expect(codesOf(spec)).toEqual([]);
  });
});

describe('the ring', () => {
  it('that closes within 1.5 mm is taken as it is', () => {
    expect(codesOf(mixed(closingAt(679.4)))).toEqual([]);
    expect(codesOf(mixed(closingAt(676.6)))).toEqual([]);
  });

  it('that closes elsewhere is a warning with both diameters', () => {
    const issue = onlyIssue(mixed(closingAt(679.6)));
    expect(issue).toMatchObject({ code: 'staves-close-elsewhere', path: ['staves', 'widths'] });
    expect(issue.values['wanted']).toBe(678);
    expect(issue.values['closesAt']).toBeCloseTo(679.6, 8);
  });

  it('that closes 5 % away is another vessel', () => {
    expect(codesOf(mixed(closingAt(678 * 1.049)))).toEqual(['staves-close-elsewhere?']);
    expect(onlyIssue(mixed(closingAt(678 * 1.051))).code).toBe('staves-do-not-close');
    expect(onlyIssue(mixed(closingAt(678 * 0.949))).code).toBe('staves-do-not-close');
  });

  it('of two staves does not close, and says nothing else', () => {
    expect(codesOf(mixed([300, 300]))).toEqual(['staves-do-not-close']);
  });

  it('with one stave that dominates is refused for what it is, without NaN', () => {
    const widths = [1000, ...new Array<number>(27).fill(42)];
    expect(onlyIssue(mixed(widths)).code).toBe('staves-do-not-close');
    const closing = solved(mixed([200, ...new Array<number>(27).fill(71.9)]));
    expect(Math.abs(closing.ring.closesAt - 678)).toBeLessThan(1.5);
  });
});

describe('the lean', () => {
  it.each([-44, -20, 0.5, 25, 44])('of %d degrees is a tub', (lean) => {
    // a wall that closes in above the bottom this much needs a flatter chime bevel and a longer bevel on the head
    const spec = changed(bucket, {
      height: 150,
      outside: wallWithLean(150, 600, lean),
      chime: { bevel: radians(lean > 30 ? 20 : 40) },
      bottom: { edge: { innerBevel: lean > 30 ? 20 : 10 } },
      hoops: [],
    });
    expect(codesOf(spec)).toEqual([]);
  });

  it('over 45 degrees is a dish', () => {
    const spec = changed(bucket, { height: 150, outside: wallWithLean(150, 600, 46), hoops: [] });
    const issue = onlyIssue(spec);
    expect(issue).toMatchObject({ code: 'wall-too-steep', path: ['bottom'] });
    expect(issue.values['leanDegrees']).toBeCloseTo(46, 9);
    expect(onlyIssue(leaning(46))).toMatchObject({ code: 'wall-too-steep', path: ['ends'] });
  });

  it.each(['arc', 'parabola', 'ellipse'] as const)(
    'of 25 degrees at the ends of a cask, %s',
    (profile) => {
      expect(codesOf(leaning(profile === 'ellipse' ? 14 : 25, profile))).toEqual([]);
    },
  );
});

describe('the profile', () => {
  it('must reach past its ends for the far face and the trim', () => {
    const long = changed(leaning(25), { staves: { trim: 290 } });
    const issue = onlyIssue(long);
    expect(issue).toMatchObject({ code: 'profile-ends-early', path: ['ends'] });
    expect(issue.values['needed']).toBeGreaterThan(490);
    // cut staves have no trim to find room for
    expect(codesOf(changed(long, { staves: { ends: 'cut' } }))).toEqual([]);
  });

  it('of a cone must not end before its tip', () => {
    const funnel = changed(bucket, {
      height: 150,
      outside: { kind: 'tub', top: 320, bottom: 50 },
      staves: { thickness: 8, endThickness: 8, trim: 25 },
      hoops: [],
    });
    expect(codesOf(funnel)).toContain('profile-ends-early');
  });
});

describe('the thickness', () => {
  it('must leave the inner face a width', () => {
    const stout = changed(cylinder, { staves: { thickness: 140, endThickness: 140 } });
    expect(onlyIssue(stout)).toMatchObject({
      code: 'wall-too-thick',
      path: ['staves', 'thickness'],
    });
  });

  it('counts the blank, which few staves make much thicker than the finished stave', () => {
    // six staves of a straight tub: R (1 - cos 30) + t cos 30
    const thick = (t: number): Spec =>
      changed(cylinder, { staves: { count: 6, thickness: t, endThickness: t } });
    const issue = onlyIssue(thick(135));
    expect(issue.values['thickness']).toBeCloseTo(
      150 * (1 - Math.cos(Math.PI / 6)) + 135 * Math.cos(Math.PI / 6),
      8,
    );
  });

  it('does not refuse a steep pail of six staves that can be made', () => {
    const pail = changed(bucket, {
      height: 260,
      outside: { kind: 'tub', top: 400, bottom: 160 },
      staves: { count: 6, thickness: 18, endThickness: 18 },
      hoops: [],
    });
    expect(codesOf(pail)).toEqual([]);
  });

  it('must allow the bend', () => {
    const tight = changed(leaning(40), { staves: { count: 8, thickness: 80, endThickness: 80 } });
    expect(onlyIssue(tight)).toMatchObject({
      code: 'bend-too-tight',
      path: ['staves', 'thickness'],
    });
  });
});

describe('vessels at the edge of what is asked for', () => {
  it('a cask whose bilge is 0.01 mm wider in radius, nu 1', () => {
    const outside = { kind: 'cask', bilge: 678, ends: 677.98, profile: 'arc' } as const;
    for (const profile of ['arc', 'parabola', 'ellipse'] as const) {
      const spec = changed(wineCask, { outside: { ...outside, profile }, staves: { neutral: 1 } });
      expect(codesOf(spec)).toEqual([]);
    }
  });

  it('a lean of 25 degrees with nu 1, which only stretches', () => {
    expect(codesOf(changed(leaning(25), { staves: { neutral: 1 } }))).toEqual([
      'outer-face-stretches?',
    ]);
  });

  it.each([6, 80])('%d staves', (count) => {
    expect(codesOf(changed(wineCask, { staves: { count }, bung: null }))).toEqual([]);
    expect(codesOf(changed(bucket, { staves: { count } }))).toEqual([]);
  });

  it('staves cut to length, with ends thinned or thickened', () => {
    for (const endThickness of [20, 24, 30])
      expect(codesOf(changed(wineCask, { staves: { ends: 'cut', endThickness } }))).toEqual([]);
  });
});

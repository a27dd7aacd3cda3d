import { describe, expect, it } from 'vitest';
import { codesOf, onlyIssue } from './codes.js';
import { bisect } from './numeric.js';
import { bucket, changed, cylinder, wineCask } from './specs.js';

describe('stretch', () => {
  it('over 1.5 % of the outer face is a warning', () => {
    // 1.5 % of an arc of radius 2132.7 is nu t / (rho - nu t) at nu t = 31.5
    const spec = (neutral: number, thickness: number) =>
      changed(wineCask, {
        staves: { neutral, thickness, endThickness: thickness },
        both: { edge: { innerBevel: 20 } },
      });
    expect(codesOf(spec(1, 31.4))).toEqual([]);
    const issue = onlyIssue(spec(1, 31.7));
    expect(issue).toMatchObject({
      code: 'outer-face-stretches',
      severity: 'warning',
      path: ['staves', 'thickness'],
    });
    expect(issue.values['percent']).toBeCloseTo(1.509, 3);
  });
});

describe('joints of staves that are flat inside and backed outside', () => {
  const backed = (count: number, thickness = 18) =>
    changed(cylinder, { staves: { inside: 'flat', count, thickness, endThickness: thickness } });

  it('keep t - R (1 - cos alpha)', () => {
    expect(codesOf(backed(28))).toEqual([]);
    expect(codesOf(backed(16))).toEqual([]);
    const issue = onlyIssue(backed(12));
    expect(issue).toMatchObject({ code: 'joint-thin', path: ['staves', 'thickness'] });
    expect(issue.values['left']).toBeCloseTo(18 - 150 * (1 - Math.cos(Math.PI / 12)), 9);
  });

  it('may not be planed away altogether', () => {
    expect(codesOf(backed(6))).toContain('joint-vanishes');
  });

  it('are left alone by a flat outside or a hollowed inside', () => {
    expect(codesOf(changed(backed(12), { staves: { outside: 'flat' } }))).toEqual([]);
    expect(codesOf(changed(backed(12), { staves: { inside: 'hollowed' } }))).toEqual([]);
  });
});

describe('thinned ends', () => {
  it('must leave wood at the end of the vessel', () => {
    const spec = changed(cylinder, { staves: { endThickness: 0 }, chime: { flat: 0 } });
    expect(codesOf(spec)).toContain('ends-too-thin');
  });

  it('must leave wood in the trim, where the thinning goes on', () => {
    const thinned = changed(bucket, {
      height: 150,
      staves: { endThickness: 8, inside: 'flat', outside: 'flat', count: 40, trim: 30 },
      chime: { flat: 4 },
      howel: { depth: 0.5, beyondGroove: 12 },
      bottom: { croze: { depth: 3, inset: 20 } },
      hoops: [],
    });
    expect(codesOf(thinned)).toEqual(['ends-too-thin']);
    expect(codesOf(changed(thinned, { staves: { trim: 15 } }))).toEqual([]);
  });
});

describe('unlike neighbours', () => {
  // wide and narrow by turns, 60 beside 100, on a ring of their own diameter
  const widths = Array.from({ length: 28 }, (_, i) => (i % 2 === 0 ? 60 : 100));
  const turned = (d: number): number => 14 * Math.atan(60 / d) + 14 * Math.atan(100 / d);
  const diameter = bisect((d) => turned(d) - Math.PI, 600, 800);
  const mixed = (outside: 'flat' | 'rounded') =>
    changed(wineCask, {
      outside: { kind: 'cask', bilge: diameter, ends: 600, profile: 'arc' },
      staves: { widths, outside },
      hoops: [],
    });

  it('with flat outsides leave a step: 2.2 mm for 60 beside 100, 2.3 on a bilge of 678', () => {
    const issue = onlyIssue(mixed('flat'));
    expect(issue).toMatchObject({ code: 'neighbours-step', path: ['staves', 'outside'] });
    const corner = (w: number, d: number): number => Math.hypot(d / 2, w / 2);
    expect(issue.values['step']).toBeCloseTo(corner(100, diameter) - corner(60, diameter), 8);
    expect(issue.values['step']).toBeCloseTo(2.2, 1);
    expect(corner(100, 678) - corner(60, 678)).toBeCloseTo(2.3, 1);
  });

  it('are backed level when the outside is rounded', () => {
    expect(codesOf(mixed('rounded'))).toEqual([]);
  });
});

describe('the bung', () => {
  it('must leave wood beside it: three quarters of its stave is doubtful, all of it refused', () => {
    // staves 76.4 wide
    const bung = (diameter: number) => changed(wineCask, { bung: { diameter } });
    expect(codesOf(bung(57))).toEqual([]);
    expect(onlyIssue(bung(58))).toMatchObject({
      code: 'bung-leaves-little',
      severity: 'warning',
      path: ['bung', 'diameter'],
    });
    const issue = onlyIssue(bung(76.4));
    expect(issue.code).toBe('bung-wider-than-stave');
    expect(issue.values['width']).toBeCloseTo(76.39, 2);
  });

  it('goes into the widest stave of a mixed set', () => {
    const widths = Array.from(
      { length: 28 },
      (_, i) => 678 * Math.tan((i === 5 ? 1.54 : 0.98) * (Math.PI / 28)),
    );
    const spec = changed(wineCask, { staves: { widths }, bung: { diameter: 80 } });
    expect(codesOf(spec)).toEqual([]);
  });
});

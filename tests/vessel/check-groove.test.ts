import { describe, expect, it } from 'vitest';
import { codesOf, onlyIssue } from './codes.js';
import { bucket, changed, cylinder, radians, solved, wallWithLean, wineCask } from './specs.js';

describe('a groove', () => {
  it('past the middle of the vessel is refused', () => {
    const bare = { ...wineCask, hoops: [] };
    const issue = onlyIssue(changed(bare, { both: { croze: { inset: 470 } } }));
    expect(issue).toMatchObject({ code: 'groove-past-middle', path: ['heads', 'croze', 'inset'] });
    expect(issue.values['inset']).toBe(470);
    expect(codesOf(changed(wineCask, { both: { croze: { inset: 440 } } }))).toEqual([
      'no-hoop-at-groove?',
      'no-hoop-at-groove?',
    ]);
  });

  it('in the slope of the chime is refused', () => {
    // on the straight tub the bevel is (150 - 8 - 133.5) tan 40 = 7.13 deep, the groove 5 wide
    const inset = (value: number) => changed(cylinder, { bottom: { croze: { inset: value } } });
    expect(codesOf(inset(9.7))).toEqual([]);
    const issue = onlyIssue(inset(9.55));
    expect(issue).toMatchObject({ code: 'groove-in-chime', path: ['heads', 'croze', 'inset'] });
    expect(issue.values).toEqual({ inset: 9.55, bevelDepth: 9.55 });
  });

  it('that a chime bevel never reaches above is refused without NaN', () => {
    const steep = changed(wineCask, { chime: { bevel: radians(85), flat: 0 } });
    expect(onlyIssue(steep).code).toBe('groove-in-chime');
  });

  it('at the very end is refused though there is no bevel', () => {
    const whole = { chime: { flat: 18 } };
    const inset = (value: number) =>
      changed(cylinder, { ...whole, bottom: { croze: { inset: value } } });
    expect(codesOf(inset(2.4))).toEqual(['groove-in-chime']);
    expect(codesOf(inset(2.6))).toEqual([]);
  });

  it('that leaves little wood is doubtful, and one that leaves hardly any is refused', () => {
    // a wall of 18 less the howel of 1.5: 12.5 left at 4 deep, a third is 6, the least 2.7
    const depth = (value: number) => changed(cylinder, { bottom: { croze: { depth: value } } });
    const edge = { innerBevel: 20, outerBevel: 20 };
    const deep = (value: number) => changed(depth(value), { bottom: { edge } });
    expect(codesOf(deep(10.4))).toEqual([]);
    const doubtful = onlyIssue(deep(10.6));
    expect(doubtful).toMatchObject({
      code: 'groove-deep',
      severity: 'warning',
      path: ['heads', 'croze', 'depth'],
    });
    expect(doubtful.values['left']).toBeCloseTo(18 - 1.5 - 10.6, 9);
    expect(codesOf(deep(13.7))).toEqual(['groove-deep?']);
    expect(onlyIssue(deep(13.9)).code).toBe('groove-through-wall');
    expect(onlyIssue(deep(40)).values['left']).toBeLessThan(0);
  });

  it('in flat staves counts from the corners: few wide ones leave nothing', () => {
    expect(codesOf(changed(cylinder, { staves: { inside: 'flat' } }))).toEqual([]);
    const six = changed(cylinder, {
      staves: { inside: 'flat', outside: 'flat', count: 6 },
    });
    expect(codesOf(six)).toContain('groove-through-wall');
  });

  it('in a leaning wall is judged at the lip where the wood is thinnest', () => {
    const spec = changed(bucket, {
      outside: wallWithLean(300, 420, 15),
      bottom: { edge: { innerBevel: 25, outerBevel: 25 } },
    });
    const { profile, heads } = solved(spec);
    const { groove } = heads.bottom;
    const left = profile.radius(groove.middle) - groove.radius;
    const least = left - 2.5 * Math.tan(radians(15));
    const deeper = left - 6;
    const doubtful = onlyIssue(changed(spec, { bottom: { croze: { depth: 4 + deeper + 0.1 } } }));
    expect(doubtful.values['left']).toBeCloseTo(least - deeper - 0.1, 8);
  });

  it('names the end only where the heads differ', () => {
    const both = changed(wineCask, { both: { croze: { depth: 30 } } });
    expect(onlyIssue(both).path).toEqual(['heads', 'croze', 'depth']);
    const top = changed(wineCask, { top: { croze: { depth: 30 } } });
    expect(onlyIssue(top).path).toEqual(['heads', 'top', 'croze', 'depth']);
    const bottom = changed(wineCask, { bottom: { croze: { depth: 30 } } });
    expect(onlyIssue(bottom).path).toEqual(['heads', 'bottom', 'croze', 'depth']);
  });
});

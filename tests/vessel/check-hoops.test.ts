import { describe, expect, it } from 'vitest';
import type { HoopSpec } from '../../src/spec/spec.js';
import { codesOf, onlyIssue } from './codes.js';
import { bucket, cylinder, wineCask } from './specs.js';

const strap: HoopSpec = { name: 'a', end: 'top', offset: 3, width: 40, thickness: 1.5, lap: 60 };
const cask = (...hoops: Partial<HoopSpec>[]) => ({
  ...wineCask,
  hoops: hoops.map((hoop) => ({ ...strap, ...hoop })),
});
/** A pair that holds both grooves of the wine cask, so that only the others can be at fault. */
const holding: Partial<HoopSpec> = { name: 'chime', end: 'both', offset: 40 };

describe('hoops', () => {
  it('may be none at all', () => {
    expect(codesOf(cask())).toEqual([]);
  });

  it('may start at the very end and touch each other', () => {
    expect(codesOf(cask(holding, { offset: 0 }))).toEqual([]);
    const straight = {
      ...cylinder,
      hoops: [0, 40, 80, 260].map((offset, i) => ({ ...strap, name: String(i), offset })),
    };
    expect(codesOf(straight)).toEqual([]);
  });

  it('may not leave the staves', () => {
    const issue = onlyIssue(cask(holding, { name: 'out', offset: 930 }));
    expect(issue).toMatchObject({ code: 'hoop-leaves-stave', path: ['hoops'] });
    expect(issue.values).toEqual({ name: 'out', end: 'top' });
    expect(codesOf(cask(holding, { offset: 4000 }))).toEqual(['hoop-leaves-stave']);
    expect(codesOf(cask(holding, { offset: -1 }))).toEqual(['hoop-leaves-stave']);
  });

  it('may not overlap', () => {
    const issue = onlyIssue(cask(holding, { name: 'b', offset: 200 }, { name: 'c', offset: 230 }));
    expect(issue.code).toBe('hoops-overlap');
    expect(issue.values).toMatchObject({ name: 'b', other: 'c' });
    // the strap is 40 along a wall that leans about 7 degrees there
    expect(issue.values['overlap']).toBeCloseTo(9.7, 1);
  });

  it('of a pair may not meet in the middle', () => {
    expect(codesOf(cask(holding, { name: 'b', end: 'both', offset: 440 }))).toEqual([
      'hoops-overlap',
    ]);
  });

  it('from opposite ends may not overlap either', () => {
    expect(
      codesOf(cask(holding, { name: 'b', offset: 400 }, { name: 'c', end: 'bottom', offset: 520 })),
    ).toEqual(['hoops-overlap']);
  });

  it('must hold the groove within 25 mm', () => {
    // inset 60: a strap of 40 that begins 2 mm from the end comes within 20 mm
    expect(codesOf(cask({ end: 'both', offset: 2 }))).toEqual([]);
    const issue = onlyIssue(
      cask({ name: 'a', offset: 2 }, { name: 'b', end: 'bottom', offset: 90 }),
    );
    expect(issue).toMatchObject({
      code: 'no-hoop-at-groove',
      severity: 'warning',
      path: ['hoops'],
    });
    expect(issue.values).toMatchObject({ end: 'bottom', allowed: 25 });
    expect(issue.values['distance']).toBeCloseTo(30, 9);
  });

  it('of a tub need not hold its rim', () => {
    expect(codesOf({ ...bucket, hoops: bucket.hoops.slice(0, 1) })).toEqual([]);
  });
});

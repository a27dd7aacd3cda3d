import { describe, expect, it } from 'vitest';
import type { HeadSpec } from '../../src/spec/spec.js';
import { codesOf, onlyIssue } from './codes.js';
import { bucket, changed, cylinder, solved, wallWithLean, wineCask } from './specs.js';

const edge = (changes: Partial<HeadSpec['edge']>) =>
  changed(cylinder, { bottom: { edge: changes } });
const head = (changes: Partial<HeadSpec>) => changed(cylinder, { bottom: changes });

describe('the edge', () => {
  it('must have a land no thicker than the groove is wide', () => {
    expect(codesOf(edge({ thickness: 5 }))).toEqual([]);
    const issue = onlyIssue(edge({ thickness: 5.1 }));
    expect(issue).toMatchObject({
      code: 'land-thicker-than-groove',
      path: ['heads', 'edge', 'thickness'],
      values: { land: 5.1, groove: 5 },
    });
  });

  it('must have its land within the head', () => {
    const issue = onlyIssue(edge({ fromInside: 2.2 }));
    expect(issue).toMatchObject({
      code: 'land-outside-head',
      path: ['heads', 'edge', 'fromInside'],
      values: { fromInside: 2.2, least: 2.25, most: 15.75 },
    });
    expect(onlyIssue(edge({ fromInside: 15.8 })).code).toBe('land-outside-head');
    expect(codesOf(edge({ fromInside: 15.75 }))).toEqual([]);
  });

  it('must have bevels wider than the land is deep', () => {
    // land 4 + 0.5 on the straight tub
    expect(codesOf(edge({ innerBevel: 4.6 }))).toEqual([]);
    for (const key of ['innerBevel', 'outerBevel'] as const) {
      const issue = onlyIssue(edge({ [key]: 4.4 }));
      expect(issue).toMatchObject({
        code: 'bevel-narrower-than-land',
        path: ['heads', 'edge', key],
      });
      expect(issue.values['land']).toBeCloseTo(4.5, 9);
    }
  });

  it('needs no bevel where the land reaches the face', () => {
    expect(codesOf(edge({ fromInside: 2.25, innerBevel: 0 }))).toEqual([]);
    const square = changed(cylinder, {
      bottom: {
        thickness: 6,
        croze: { width: 6 },
        edge: { thickness: 6, fromInside: 3, innerBevel: 0, outerBevel: 0 },
        dowels: { diameter: 3 },
      },
    });
    expect(codesOf(square)).toEqual([]);
  });

  it('must leave half of the head level', () => {
    const issue = onlyIssue(edge({ outerBevel: 70 }));
    expect(issue).toMatchObject({
      code: 'bevel-too-wide',
      path: ['heads', 'edge', 'outerBevel'],
    });
    expect(issue.values['allowed']).toBeCloseTo(275 / 4, 9);
  });
});

describe('the play in the groove', () => {
  it('may be positive or negative', () => {
    for (const clearance of [-2, -0.5, 0, 2])
      expect(codesOf(changed(wineCask, { both: { clearance } }))).toEqual([]);
  });

  it('may not take the rim out of the groove, nor press it through', () => {
    // 4 deep: 8 in the diameter
    expect(codesOf(head({ clearance: 7.9 }))).toEqual([]);
    const loose = onlyIssue(head({ clearance: 8 }));
    expect(loose).toMatchObject({ code: 'head-misses-groove', path: ['heads', 'clearance'] });
    expect(loose.values['least']).toBe(-8);
    expect(loose.values['most']).toBeCloseTo(8, 9);
    expect(codesOf(head({ clearance: -8 }))).toEqual([]);
    expect(onlyIssue(head({ clearance: -8.1 })).code).toBe('head-misses-groove');
  });

  it('counts the allowance across the grain', () => {
    expect(codesOf(head({ crossGrain: -3 }))).toEqual([]);
    expect(codesOf(head({ crossGrain: 3 }))).toEqual([]);
    const shrunk = onlyIssue(head({ crossGrain: -9 }));
    expect(shrunk).toMatchObject({ code: 'head-misses-groove', path: ['heads', 'crossGrain'] });
    expect(onlyIssue(head({ crossGrain: 9 })).path).toEqual(['heads', 'crossGrain']);
  });

  it('goes by the shallower lip of a leaning wall', () => {
    const steep = changed(bucket, { outside: wallWithLean(150, 500, -20), height: 150, hoops: [] });
    const { groove } = solved(steep).heads.bottom;
    const shallow = groove.radius - groove.howelRadius(groove.innerLip);
    expect(shallow).toBeCloseTo(4 - 2.5 * Math.tan((20 * Math.PI) / 180), 8);
    const loose = changed(steep, { bottom: { clearance: 2 * shallow + 0.01 } });
    expect(codesOf(loose)).toContain('head-misses-groove');
  });
});

describe('the boards', () => {
  it('must cover the head', () => {
    const issue = onlyIssue(head({ widths: [90, 90, 90], boards: 3 }));
    expect(issue).toMatchObject({ code: 'boards-too-narrow', path: ['heads', 'widths'] });
    expect(issue.values['laid']).toBe(270);
    expect(issue.values['needed']).toBeCloseTo(275, 9);
  });

  it('must each have a part in it', () => {
    // 450 either way of the middle: the joints stand at -50 and 50
    expect(codesOf(head({ widths: [400, 100, 400], boards: 3 }))).toEqual([]);
    const outside = onlyIssue(head({ widths: [30, 280, 30], boards: 3 }));
    expect(outside).toMatchObject({ code: 'board-outside-head', path: ['heads', 'widths'] });
    expect(outside.values['joint']).toBeCloseTo(140, 9);
  });

  it('without room for a dowel are doubtful, a single board is not', () => {
    const issue = onlyIssue(head({ boards: 12 }));
    expect(issue).toMatchObject({ code: 'joints-without-dowels', severity: 'warning' });
    expect(issue.values['joints']).toMatch(/^1, 2/);
    expect(codesOf(head({ boards: 1 }))).toEqual([]);
    expect(codesOf(head({ boards: 2 }))).toEqual([]);
  });

  it('with dowels thicker than 0.6 of them are doubtful', () => {
    const { dowels } = cylinder.heads.bottom;
    expect(codesOf(head({ dowels: { ...dowels, diameter: 10.7 } }))).toEqual([]);
    const issue = onlyIssue(head({ dowels: { ...dowels, diameter: 11 } }));
    expect(issue).toMatchObject({ code: 'dowels-thick', path: ['heads', 'dowels', 'diameter'] });
  });
});

describe('the head in its vessel', () => {
  it('may not meet the wall', () => {
    // the bevel rises from 132.5 at the inside face to 133 at the land, 5.75 further out; the howel is 133.5: clear
    const tight = { innerBevel: 5, outerBevel: 20 };
    expect(codesOf(edge(tight))).toEqual([]);
    const short = changed(edge(tight), { howel: { beyondGroove: 2 } });
    // now the howel ends 3.5 above the inside face, and the plain inside is 132
    const issue = onlyIssue(short);
    expect(issue).toMatchObject({ code: 'head-meets-wall', path: ['heads', 'edge'] });
    expect(issue.values['overlap']).toBeCloseTo(132.5 + (0.5 * 3.5) / 5.75 - 132, 5);
  });

  it('is compared beside every step of the wall, also between the corners of its own edge', () => {
    // the howel ends 0.05 mm short of the land, where the bevel has hardly begun
    const spec = changed(edge({ innerBevel: 14 }), { howel: { beyondGroove: 1 / 3, depth: 1.5 } });
    const clear = changed(edge({ innerBevel: 14 }), { howel: { beyondGroove: 4, depth: 1.5 } });
    expect(codesOf(clear)).toEqual([]);
    const overlap = onlyIssue(spec).values['overlap'] as number;
    // at y, the bevel is 4.5 + (14 - 4.5)(5.75 - y)/5.75 below the rim of 137.5; the plain inside is 132
    const y = 8 - 2.5 - 1 / 3;
    expect(overlap).toBeCloseTo(137.5 - 4.5 - (9.5 * (5.75 - y)) / 5.75 - 132, 4);
  });

  it('sits with an oversize rim pressed home, so that a tight head does not meet the wall', () => {
    expect(codesOf(changed(cylinder, { bottom: { clearance: -3 } }))).toEqual([]);
    expect(codesOf(changed(cylinder, { bottom: { clearance: 0, crossGrain: 5 } }))).toEqual([]);
  });

  it('may stand proud of the end', () => {
    const proud = changed(cylinder, {
      bottom: { croze: { inset: 11 }, thickness: 30, edge: { fromInside: 8 } },
    });
    expect(codesOf(proud)).toEqual([]);
  });
});

describe('two heads', () => {
  it('alike are blamed once, unlike ones each by name', () => {
    const both = changed(wineCask, { both: { edge: { thickness: 7 } } });
    expect(onlyIssue(both).path).toEqual(['heads', 'edge', 'thickness']);
    const unlike = changed(both, { top: { thickness: 30 } });
    expect(codesOf(unlike)).toEqual(['land-thicker-than-groove', 'land-thicker-than-groove']);
  });
});

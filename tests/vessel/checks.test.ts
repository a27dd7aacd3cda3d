import { describe, expect, it } from 'vitest';
import { codesOf, onlyIssue } from './codes.js';
import { changed, cylinder, wineCask } from './specs.js';

describe('the heads together', () => {
  it('must leave room between them', () => {
    const short = changed(wineCask, {
      both: { croze: { inset: 440 }, thickness: 80, edge: { fromInside: 40, innerBevel: 60 } },
      hoops: [],
    });
    const issue = onlyIssue(short);
    expect(issue).toMatchObject({ code: 'heads-meet', path: ['heads', 'croze', 'inset'] });
    expect(issue.values['between']).toBeCloseTo(945 - 2 * 480, 9);
  });

  it("must leave a tub some depth above its bottom's inside face", () => {
    const filled = changed(cylinder, {
      height: 60,
      bottom: { croze: { inset: 25 }, thickness: 60, edge: { fromInside: 40, innerBevel: 30 } },
      hoops: [],
    });
    expect(codesOf(filled)).toEqual(['heads-meet']);
  });
});

describe('several faults', () => {
  it('come together, each once', () => {
    const spec = changed(wineCask, {
      bung: { diameter: 90 },
      both: { edge: { thickness: 7 } },
      hoops: [{ name: 'out', end: 'top', offset: 930, width: 40, thickness: 1.5, lap: 60 }],
    });
    expect(codesOf(spec)).toEqual([
      'land-thicker-than-groove',
      'bung-wider-than-stave',
      'hoop-leaves-stave',
      'no-hoop-at-groove?',
      'no-hoop-at-groove?',
    ]);
  });
});

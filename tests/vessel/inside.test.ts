import { describe, expect, it } from 'vitest';
import { insideAt } from '../../src/vessel/inside.js';
import { bucket, changed, solved, wineCask } from './specs.js';
import type { Spec } from '../../src/spec/spec.js';

function inside(spec: Spec, end: 'top' | 'bottom') {
  const { ring, profile, wall } = solved(spec);
  return insideAt(end, spec, ring, profile, wall);
}

describe('the inside near an end', () => {
  it('knows its end plane and the outside radius there', () => {
    expect(inside(wineCask, 'top').endPlane).toBe(472.5);
    expect(inside(wineCask, 'bottom').endPlane).toBe(-472.5);
    expect(inside(wineCask, 'top').endRadius).toBeCloseTo(286, 10);
    expect(inside(bucket, 'bottom').endRadius).toBeCloseTo(135, 10);
  });

  it('of hollowed staves is round already', () => {
    const { radius, roundRadius } = inside(wineCask, 'top');
    expect(radius(400)).toBe(roundRadius(400));
  });

  it('of flat staves must be worked round to the corners, which stand back by 1 / cos(alpha)', () => {
    const flat = inside(changed(wineCask, { staves: { inside: 'flat' } }), 'top');
    expect(flat.roundRadius(400) / flat.radius(400)).toBeCloseTo(1 / Math.cos(Math.PI / 28), 12);
  });

  it('of flat staves of a mixed set goes by the widest', () => {
    const widths = Array.from({ length: 28 }, (_, i) => (i % 2 === 0 ? 60 : 92.5));
    const spec = changed(wineCask, { staves: { inside: 'flat', widths } });
    const { radius, roundRadius } = inside(spec, 'top');
    const { closesAt } = solved(spec).ring;
    const stand = Math.hypot(1, 92.5 / closesAt);
    expect(roundRadius(400) / radius(400)).toBeCloseTo(stand, 12);
  });
});

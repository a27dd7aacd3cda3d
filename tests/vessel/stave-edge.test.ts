import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { staveEdge } from '../../src/vessel/stave-edge.js';
import { arbitraryVessel, between, bucket, solved, wineCask } from './specs.js';

describe('edge of the flat blank', () => {
  it('on a cone is straight on both faces', () => {
    const vessel = solved(bucket);
    const stave = vessel.staves[0]!;
    for (const depth of [() => 0, stave.blankThicknessAt]) {
      const edge = staveEdge(vessel, stave, depth);
      const [a, b] = [edge.at(-150), edge.at(150)];
      const middle = edge.at(0);
      expect(middle.y).toBeCloseTo((a.y + b.y) / 2, 10);
      const { x, y } = edge.tangent(70);
      expect(y / x).toBeCloseTo((b.y - a.y) / (b.x - a.x), 10);
    }
  });

  it('lies at the half-width over the station', () => {
    const vessel = solved(wineCask);
    const stave = vessel.staves[0]!;
    const inner = staveEdge(vessel, stave, stave.blankThicknessAt).at(300);
    expect(inner.x).toBe(vessel.bend.station(300));
    expect(inner.y).toBe(stave.halfWidth(300, stave.blankThickness));
  });

  it('has the direction of its own differences', () => {
    const share = between(-0.5, 0.5);
    fc.assert(
      fc.property(arbitraryVessel, share, fc.boolean(), (spec, place, isInner) => {
        const vessel = solved(spec);
        const stave = vessel.staves.at(-1)!;
        const edge = staveEdge(vessel, stave, isInner ? stave.blankThicknessAt : () => 0);
        const z = place * spec.height;
        const h = 1e-4 * spec.height;
        const [a, b] = [edge.at(z - h), edge.at(z + h)];
        const { x, y } = edge.tangent(z);
        expect(Math.abs((b.y - a.y) / (b.x - a.x) - y / x)).toBeLessThan(2e-7);
      }),
    );
  });
});

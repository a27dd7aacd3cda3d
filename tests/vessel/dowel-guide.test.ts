import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dowelGuide, leastWeb } from '../../src/vessel/dowel-guide.js';
import { arbitraryVessel, changed, solved, wineCask } from '../vessel/specs.js';

const head = (both: Parameters<typeof changed>[1]['both'] = {}) =>
  solved(changed(wineCask, { both })).heads.bottom;

describe('the drilling guide', () => {
  it('has one hole for joints that are drilled at the same place', () => {
    const [row, ...more] = dowelGuide(head());
    expect(more).toEqual([]);
    expect(row!.holes.map(({ x, joints }) => [x, joints])).toEqual([
      [-150, [2, 3, 4]],
      [-75, [1, 5]],
      [0, [2, 3, 4]],
      [75, [1, 5]],
      [150, [2, 3, 4]],
    ]);
  });

  it('has another row where holes of two joints would run into each other', () => {
    const dowels = [
      { joint: 1, x: 40, y: -50 },
      { joint: 2, x: 44, y: 0 },
      { joint: 3, x: 40, y: 50 },
    ];
    const rows = dowelGuide({ dowels, spec: head().spec });
    expect(rows.map(({ joints }) => joints)).toEqual([[1, 3], [2]]);
    expect(rows[0]!.holes).toEqual([{ x: 40, joints: [1, 3] }]);
  });

  it('is none for one board', () => {
    expect(dowelGuide(head({ boards: 1 }))).toEqual([]);
  });

  it('serves every dowel of any head once, with wood between its holes', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const { bottom } = solved(spec).heads;
        const rows = dowelGuide(bottom);
        const served = rows.flatMap(({ holes }) =>
          holes.flatMap(({ x, joints }) => joints.map((joint) => `${joint} ${x.toFixed(3)}`)),
        );
        const wanted = bottom.dowels.map(({ joint, x }) => `${joint} ${x.toFixed(3)}`);
        expect(served.sort()).toEqual(wanted.sort());
        for (const { holes } of rows)
          holes.slice(1).forEach(({ x }, i) => {
            const web = x - holes[i]!.x - bottom.spec.dowels.diameter;
            expect(web).toBeGreaterThan(leastWeb - 1e-9);
          });
      }),
    );
  });
});

/** Taking the vessel apart: nothing passes through anything else, and all of it stays in the picture. */
import { describe, expect, it } from 'vitest';
import { halfLength, shiftOf } from '../../../src/page/view3d/apart.js';
import { partsOf } from '../../../src/page/view3d/parts.js';
import { template, templateNames } from './meshes.js';

describe.each(templateNames)('%s', (name) => {
  const vessel = template(name);
  const parts = partsOf(vessel);
  const heights = parts.map(({ id, mesh }) => {
    const all = mesh.positions.filter((_, i) => i % 3 === 2);
    const [low, high] = [Math.min(...all), Math.max(...all)];
    return { id, low, high };
  });

  it('leaves everything in its place at first', () => {
    for (const { id } of parts) expect(shiftOf(vessel, id, 0) || 0).toBe(0);
  });

  it('clears the staves and keeps bodies in the order in which they come off', () => {
    const moved = heights
      .filter(({ id }) => id.kind !== 'stave')
      .map(({ id, low, high }) => {
        const by = shiftOf(vessel, id, 1);
        return { id, low: low + by, high: high + by };
      });
    for (const { low, high } of moved)
      expect(low > vessel.spec.height / 2 || high < -vessel.spec.height / 2).toBe(true);
    const above = moved.filter(({ low }) => low > 0).sort((a, b) => a.low - b.low);
    above.slice(1).forEach((body, i) => {
      // boards of one head lie at one height
      if (body.id.kind === 'board' && above[i]!.id.kind === 'board') return;
      expect(body.low).toBeGreaterThan(above[i]!.high);
    });
  });

  it('takes no hoop past another: what was further out at first is so at last', () => {
    const hoops = heights.filter(({ id }) => id.kind === 'hoop');
    const order = (share: number): string[] =>
      hoops
        .map(({ id, low }) => ({ key: JSON.stringify(id), at: low + shiftOf(vessel, id, share) }))
        .sort((a, b) => a.at - b.at)
        .map(({ key }) => key);
    for (const share of [0.3, 1]) expect(order(share)).toEqual(order(0));
  });

  it('stays within the length that the picture is made for', () => {
    for (const share of [0, 0.4, 1])
      for (const { id, low, high } of heights) {
        const by = shiftOf(vessel, id, share);
        expect(Math.max(high + by, -(low + by))).toBeLessThanOrEqual(
          halfLength(vessel, share) + 1e-6,
        );
      }
  });
});

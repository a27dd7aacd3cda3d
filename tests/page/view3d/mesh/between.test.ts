/** Triangles between a frame and a hole: together as large as the gap, and none turned over. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Point } from '../../../../src/index.js';
import { between } from '../../../../src/page/view3d/mesh/between.js';

const round = (count: number, radius: number): Point[] =>
  Array.from({ length: count }, (_, i) => {
    const turn = (i / count) * 2 * Math.PI;
    return { x: radius * Math.cos(turn), y: radius * Math.sin(turn) };
  });
/** By the shoelace formula. */
const area = (line: readonly Point[]): number =>
  line.reduce((sum, { x, y }, i) => {
    const next = line[(i + 1) % line.length]!;
    return sum + (x * next.y - y * next.x) / 2;
  }, 0);

const share = fc.double({ min: 0, max: 1, noNaN: true });

it('fills any box round a circle, however near its sides come', () => {
  fc.assert(
    fc.property(
      share,
      share,
      share,
      share,
      fc.integer({ min: 8, max: 60 }),
      (a, b, c, d, count) => {
        const far = (part: number): number => 1.04 + 3 * part * part;
        const [left, right, low, high] = [-far(a), far(b), -far(c), far(d)];
        const box: Point[] = [
          { x: left, y: low },
          { x: (left + right) / 2, y: low },
          { x: right, y: low },
          { x: right, y: (low + high) / 2 },
          { x: right, y: high },
          { x: left, y: high },
        ];
        const circle = round(count, 1);
        const all = [...box, ...circle];
        const made = between(
          box.map((_, i) => i),
          circle.map((_, i) => box.length + i),
          (k) => all[k]!,
        );
        const areas = made.map((corners) => area(corners.map((k) => all[k]!)));
        expect(made).toHaveLength(box.length + count);
        expect(Math.min(...areas)).toBeGreaterThan(0);
        expect(areas.reduce((sum, each) => sum + each)).toBeCloseTo(area(box) - area(circle), 9);
      },
    ),
  );
});

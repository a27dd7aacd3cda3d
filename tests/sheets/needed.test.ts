import fc from 'fast-check';
import { expect, it } from 'vitest';
import { label, merge, strokes } from '../../src/drawing/build.js';
import type { Curve } from '../../src/geometry/curve.js';
import { gridOver, overlap, strip, type Grid } from '../../src/sheets/grid.js';
import { lay } from '../../src/sheets/lay.js';
import { neededPlaces } from '../../src/sheets/needed.js';
import { turnedBounds } from '../../src/sheets/rectangle.js';
import { tracesOf, turnedTraces, visitPoints, type Traces } from '../../src/sheets/traces.js';

/** Every point that counts is looked at, none passed over. */
function placesByTrial(traces: Traces, { columns, rows, window, corner }: Grid): string[] {
  const seen = new Set<string>();
  const index = (length: number, step: number, count: number) =>
    Math.min(count - 1, Math.max(0, Math.floor(length / step)));
  for (let i = 0; i < traces.traced.length; i++) {
    visitPoints(traces, i, (x, y) => {
      const column = index(x - corner.x - strip, window.width - overlap, columns);
      const row = index(y - corner.y + strip, -(window.height - overlap), rows);
      seen.add(`${column} ${row}`);
      return 0;
    });
  }
  return [...seen].sort();
}

const coordinate = fc.double({ min: -900, max: 900, noNaN: true });
const vertex = fc.record({
  x: coordinate,
  y: fc.oneof(coordinate, fc.constant(0)),
  bulge: fc.oneof(fc.constant(0), fc.double({ min: -2.5, max: 2.5, noNaN: true })),
});
const curves: fc.Arbitrary<Curve> = fc.record({
  closed: fc.boolean(),
  vertices: fc.array(vertex, { minLength: 2, maxLength: 6 }),
});

it('the tiles that are needed are those of every single point, turned or not, counted up to as many as asked for', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const asked = fc.record({
    lines: fc.array(curves, { minLength: 1, maxLength: 4 }),
    width: fc.constantFrom(90, 190, 400, 2500),
    height: fc.constantFrom(80, 266, 2500),
    left: share,
    above: share,
    quarter: fc.constantFrom(0, 1, -1),
  });
  fc.assert(
    fc.property(asked, ({ lines, width, height, left, above, quarter }) => {
      const laid = lay(merge(strokes('outline', ...lines), label('words', { x: 300, y: -200 })));
      const standing = tracesOf(laid);
      const traces = quarter === 0 ? standing : turnedTraces(standing, quarter as 1 | -1);
      const bounds = quarter === 0 ? laid.bounds : turnedBounds(laid.bounds, quarter as 1 | -1);
      const grid = gridOver(bounds, { width, height }, left, above);
      const due = placesByTrial(traces, grid);
      const places = neededPlaces(traces, grid, due.length)!;
      expect(places.map(({ column, row }) => `${column} ${row}`).sort()).toEqual(due);
      expect(neededPlaces(traces, grid, due.length - 1)).toBeNull();
    }),
    { seed: 1, numRuns: 400 },
  );
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { holds } from '../../src/sheets/rectangle.js';
import { shiftedBox, shiftsNear } from '../../src/sheets/shifts.js';

const areas = [
  { minX: 0, minY: 0, maxX: 100, maxY: 80 },
  { minX: 110, minY: 0, maxX: 210, maxY: 80 },
];
const boxAt = (x: number, y: number) => ({ minX: x, minY: y, maxX: x + 30, maxY: y + 4 });

test('every move leads into its area, the least first, none twice', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -40, max: 220, noNaN: true }),
      fc.double({ min: -20, max: 90, noNaN: true }),
      fc.constantFrom(0, Math.PI / 2, 0.4),
      (x, y, angle) => {
        const box = boxAt(x, y);
        const shifts = [...shiftsNear(box, angle, areas)].flat();
        expect(shifts.length).toBeGreaterThan(10);
        expect(shifts.length).toBeLessThanOrEqual(400);
        const costs = shifts.map(({ cost }) => cost);
        expect(costs).toEqual([...costs].sort((a, b) => a - b));
        for (const { region, shift } of shifts) {
          expect(holds(areas[region]!, shiftedBox(box, shift))).toBe(true);
        }
        const places = shifts.map(({ region, shift }) => `${region} ${shift.x} ${shift.y}`);
        expect(new Set(places).size).toBe(places.length);
      },
    ),
  );
});

test('what stands across the join is moved by no more than it must', () => {
  const [first] = [...shiftsNear(boxAt(80, 40), 0, areas)].flat();
  expect(first!.cost).toBeCloseTo(10, 5);
  expect(first!.shift).toEqual({ x: expect.closeTo(-10, 5) as number, y: 0 });
});

test('what no area can hold has no moves', () => {
  const long = { minX: 0, minY: 0, maxX: 101, maxY: 4 };
  expect([...shiftsNear(long, 0, areas)]).toEqual([]);
});

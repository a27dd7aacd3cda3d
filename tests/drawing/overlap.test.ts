import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/drawing/build.js';
import { label, leaderLabel, merge, strokes } from '../../src/drawing/build.js';
import { letteringBox } from '../../src/drawing/lettering.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { arc, circle, line, polygon } from '../../src/geometry/curve.js';
import { distanceTo } from '../../src/geometry/nearest.js';

const at = (x: number, y: number) => ({ x, y });
const count = (...parts: Part[]) => overlaps(merge(...parts)).length;

describe('overlaps', () => {
  it('are found between two letterings, and reported once', () => {
    const found = overlaps(merge(label('76.4', at(0, 0)), label('64.4', at(5, 1))));
    expect(found).toHaveLength(1);
    expect([found[0]!.lettering.text, (found[0]!.other as { text: string }).text]).toEqual([
      '76.4',
      '64.4',
    ]);
  });

  it('are not found between letterings side by side', () => {
    expect(count(label('76.4', at(0, 0)), label('64.4', at(20, 0)))).toBe(0);
  });

  it('count upright rectangles that meet while the turned boxes in them do not', () => {
    const turned = { angle: Math.PI / 4 };
    expect(count(label('a long text', at(0, 0), turned), label('another', at(9, 0), turned))).toBe(
      0,
    );
    expect(count(label('a long text', at(0, 0), turned), label('another', at(3, 0), turned))).toBe(
      1,
    );
  });

  it('are found where a line crosses text, touches its corner, or stands inside its box', () => {
    const text = label('Stave', at(0, 0));
    expect(count(text, strokes('outline', line(at(5, -20), at(5, 20))))).toBe(1);
    expect(count(text, strokes('outline', line(at(-1, -1), at(1, -1.5))))).toBe(1);
    expect(count(text, strokes('outline', line(at(3, 1), at(4, 2))))).toBe(1);
    expect(count(text, strokes('outline', line(at(-5, -20), at(-5, 20))))).toBe(0);
  });

  it('take a line with its width', () => {
    const [corner] = letteringBox(label('Stave', at(0, 0)).letterings[0]!);
    const below = (gap: number) => line(at(-9, corner.y - gap), at(30, corner.y - gap));
    expect(count(label('Stave', at(0, 0)), strokes('outline', below(0.24)))).toBe(1);
    expect(count(label('Stave', at(0, 0)), strokes('outline', below(0.26)))).toBe(0);
    expect(count(label('Stave', at(0, 0)), strokes('dimension', below(0.24)))).toBe(0);
  });

  it('do not count text inside a closed outline, but count its edge', () => {
    const frame = polygon([at(-10, -10), at(40, -10), at(40, 20), at(-10, 20)]);
    expect(count(label('inside', at(0, 0)), strokes('outline', frame))).toBe(0);
    expect(count(label('across', at(36, 0)), strokes('outline', frame))).toBe(1);
    expect(count(label('o', at(-1, -1)), strokes('outline', circle(at(0, 0), 40)))).toBe(0);
  });

  it('follow arcs, not their chords', () => {
    const bow = strokes('outline', arc(at(0, 0), 30, 0, Math.PI));
    expect(count(label('on the chord', at(0, 0), { align: 'centre' }), bow)).toBe(0);
    expect(count(label('on the crown', at(0, 29), { align: 'centre' }), bow)).toBe(1);
  });

  it('leave out a text’s own leader, and count the leader of another', () => {
    const first = leaderLabel('first', at(0, 0), at(-40, 0));
    expect(count(first)).toBe(0);
    const found = overlaps(merge(first, label('in the way', at(-30, -1))));
    expect(found.map(({ lettering }) => lettering.text)).toEqual(['in the way']);
    expect(found[0]!.other).toMatchObject({ layer: 'dimension' });
  });

  it('leave out text that draws nothing', () => {
    expect(count(label('', at(0, 0)), label('\u200b', at(1, 1)), label('here', at(0, 0)))).toBe(0);
  });

  it('agree with the distance of points in the box from the curve', () => {
    const any = fc.record({
      angle: fc.double({ min: -4, max: 4, noNaN: true }),
      x: fc.double({ min: -60, max: 60, noNaN: true }),
      y: fc.double({ min: -60, max: 60, noNaN: true }),
      radius: fc.double({ min: 5, max: 60, noNaN: true }),
      sweep: fc.double({ min: -6, max: 6, noNaN: true }).filter((a) => Math.abs(a) > 0.1),
    });
    fc.assert(
      fc.property(any, ({ angle, x, y, radius, sweep }) => {
        const text = label('76.4 mm', at(x, y), { angle });
        const curve = arc(at(0, 0), radius, angle / 2, angle / 2 + sweep);
        const [a, b, , d] = letteringBox(text.letterings[0]!);
        let nearest = Infinity;
        for (let i = 0; i <= 20; i++) {
          for (let j = 0; j <= 8; j++) {
            const px = a.x + ((b.x - a.x) * i) / 20 + ((d.x - a.x) * j) / 8;
            const py = a.y + ((b.y - a.y) * i) / 20 + ((d.y - a.y) * j) / 8;
            nearest = Math.min(nearest, distanceTo(curve, at(px, py)));
          }
        }
        const half = 0.25;
        const grid = 0.75; // half the diagonal of a cell of that grid of points, rounded up
        const meets = count(text, strokes('outline', curve)) === 1;
        if (nearest < half - 0.01) expect(meets).toBe(true);
        if (nearest > half * Math.SQRT2 + grid) expect(meets).toBe(false);
      }),
    );
  });
});

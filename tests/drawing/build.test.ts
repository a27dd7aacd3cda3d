import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, drawingOf, label, leaderLabel, merge, strokes } from '../../src/drawing/build.js';
import { heights, nominalHeights } from '../../src/drawing/heights.js';
import { letteringBox } from '../../src/drawing/lettering.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { line } from '../../src/geometry/curve.js';

const at = (x: number, y: number) => ({ x, y });

describe('parts', () => {
  it('merge in order', () => {
    const one = strokes('outline', line(at(0, 0), at(1, 0)));
    const two = merge(label('b', at(0, 0)), cross(at(0, 0), 4));
    const all = merge(one, two);
    expect(all.strokes.map((stroke) => stroke.layer)).toEqual(['outline', 'centre', 'centre']);
    expect(all.letterings.map((lettering) => lettering.text)).toEqual(['b']);
    expect(merge()).toEqual({ strokes: [], letterings: [] });
  });

  it('become a drawing, with an empty legend unless one is given', () => {
    const drawing = drawingOf('end-gauge', 'End gauge', label('x', at(1, 2)));
    expect(drawing).toMatchObject({ name: 'end-gauge', title: 'End gauge', strokes: [] });
    expect(drawing.legend).toEqual({ notes: [], tables: [] });
  });
});

describe('a label', () => {
  it('is level, 3.5 mm high and starts at its anchor', () => {
    expect(label('42', at(1, 2)).letterings).toEqual([
      { text: '42', at: at(1, 2), height: 3.5, align: 'left', angle: 0 },
    ]);
  });

  it('takes every height from the ISO 3098 series', () => {
    for (const height of Object.values(heights)) expect(nominalHeights).toContain(height);
  });
});

describe('the series of heights', () => {
  it('grows by the square root of 2', () => {
    // ISO 3098-1: 1.8 2.5 3.5 5 7 10 14 20, each rounded
    nominalHeights.forEach((height, i) => {
      expect(Math.abs(height / (1.8 * Math.SQRT2 ** i) - 1)).toBeLessThan(0.03);
    });
    expect(nominalHeights.at(-1)).toBe(20);
  });
});

describe('a cross', () => {
  it('is two centre lines of the full size through its middle', () => {
    const curves = cross(at(10, 20), 6).strokes.map((stroke) => stroke.curve.vertices);
    expect(curves[0]).toMatchObject([at(7, 20), at(13, 20)]);
    expect(curves[1]).toMatchObject([at(10, 17), at(10, 23)]);
  });
});

describe('a label with a leader', () => {
  const anywhere = fc.record({
    x: fc.double({ min: -80, max: 80, noNaN: true }),
    y: fc.double({ min: -80, max: 80, noNaN: true }),
    angle: fc.constantFrom(0, Math.PI / 2, 0.5, -1.2),
    align: fc.constantFrom('left' as const, 'centre' as const, 'right' as const),
  });

  it('ends on its target, in an arrowhead', () => {
    fc.assert(
      fc.property(anywhere, ({ x, y, ...options }) => {
        const { letterings, strokes: arrows } = leaderLabel(
          'bilge hoop',
          at(0, 0),
          at(x, y),
          options,
        );
        const end = letterings[0]!.leader!.vertices.at(-1)!;
        expect(Math.hypot(end.x - x, end.y - y)).toBeLessThan(1e-9);
        expect(arrows).toHaveLength(1);
        expect(arrows[0]!.curve.vertices[1]).toMatchObject(at(x, y));
      }),
    );
  });

  it('never runs through its own text when the target is clear of it', () => {
    fc.assert(
      fc.property(anywhere, ({ x, y, ...options }) => {
        const part = leaderLabel('bilge hoop', at(0, 0), at(x, y), options);
        const [words] = part.letterings;
        const box = letteringBox(words!);
        const reach = Math.max(...box.map((corner) => Math.hypot(corner.x, corner.y)));
        fc.pre(Math.hypot(x, y) > reach + 5);
        // the leader as an ordinary line, so that it isn't left out
        const asLine = strokes('dimension', words!.leader!);
        expect(overlaps(merge(label('bilge hoop', at(0, 0), options), asLine))).toEqual([]);
        expect(overlaps(part)).toEqual([]);
      }),
    );
  });

  it('leaves the text level with the middle of its capitals', () => {
    const { vertices } = leaderLabel('A', at(0, 0), at(-40, 30)).letterings[0]!.leader!;
    expect(vertices).toHaveLength(3);
    expect(vertices[0]!.y).toBeCloseTo(1.75, 9);
    expect(vertices[1]!.y).toBeCloseTo(1.75, 9);
    expect(vertices[0]!.x).toBeCloseTo(-1, 9);
  });
});

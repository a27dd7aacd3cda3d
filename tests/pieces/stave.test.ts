/** The stave's drawing against the model's own numbers taken another way, and against physics. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { boundsOf, signedArea } from '../../src/geometry/measure.js';
import { distanceTo } from '../../src/geometry/nearest.js';
import { mixedStaves, stave } from '../../src/pieces/stave.js';
import { en } from '../../src/pieces/words/en.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

const only = (drawing: Drawing, layer: string) => {
  const found = drawing.strokes.filter((stroke) => stroke.layer === layer);
  expect(found).toHaveLength(1);
  return found[0]!.curve;
};

/** The exact outer edge of an arc cask: station and half-width in closed form. */
function arcEdge(z: number, tangentOfAlpha: number): { x: number; y: number } {
  const rho = (472.5 ** 2 + 53 ** 2) / 106;
  return {
    x: (rho - 13.5) * Math.asin(z / rho),
    y: (339 - rho + Math.sqrt(rho * rho - z * z)) * tangentOfAlpha,
  };
}

describe('the outline of a stave', () => {
  const drawing = stave(vesselOf(wineCask), en);
  const outline = only(drawing, 'outline');

  it('is one closed curve within 0.01 mm of the exact edge', () => {
    for (let z = -475; z <= 475; z += 2.5) {
      const point = arcEdge(z, Math.tan(Math.PI / 28));
      expect(distanceTo(outline, point)).toBeLessThan(0.01);
      expect(distanceTo(outline, { x: point.x, y: -point.y })).toBeLessThan(0.01);
    }
  });

  it('takes no more than six arcs an edge', () => {
    expect(outline.vertices.length).toBeLessThanOrEqual(2 * 7);
  });

  it('runs counter-clockwise, alike on both sides of both centre lines', () => {
    expect(signedArea(outline)).toBeGreaterThan(0);
    const { minX, maxX, minY, maxY } = boundsOf(outline)!;
    expect(minX).toBeCloseTo(-maxX, 6);
    expect(minY).toBeCloseTo(-maxY, 6);
    for (const { x, y } of outline.vertices) {
      expect(distanceTo(outline, { x: -x, y })).toBeLessThan(0.006);
    }
  });

  it('is as long as its far face when the ends are overlong, and shorter when they are cut', () => {
    const length = (curve: typeof outline): number => boundsOf(curve)!.maxX - boundsOf(curve)!.minX;
    expect(length(only(drawing, 'hidden'))).toBeCloseTo(length(outline), 6);
    const cut = stave(vesselOf(`${wineCask}  ends: cut\n`), en);
    // 946.9 and 960.1: the brief's worked example of this cask
    expect(length(only(cut, 'outline'))).toBeCloseTo(946.9, 1);
    expect(length(only(cut, 'hidden'))).toBeCloseTo(960.1, 1);
  });

  it('has straight edges on a tub, whose taper is the compound angle atan(tan A sin theta)', () => {
    const vertices = only(stave(vesselOf(wideTub), en), 'outline').vertices;
    expect(vertices).toHaveLength(4);
    const upper = [...vertices].filter(({ y }) => y > 0).sort((p, q) => p.x - q.x);
    const [a, b] = [upper[0]!, upper[1]!];
    const lean = Math.atan(50 / 300);
    const expected = Math.atan(Math.tan(Math.PI / 24) * Math.sin(lean));
    expect(Math.atan((b.y - a.y) / (b.x - a.x))).toBeCloseTo(expected, 9);
  });
});

describe('the lines across a stave', () => {
  const drawing = stave(vesselOf(wineCask), en);

  it('place the groove by the inside: six millimetres nearer the end than the outside would', () => {
    const leaders = drawing.letterings
      .filter(({ text }) => text === en.stave.groove)
      .map(({ leader }) => leader!.vertices[0]!.x);
    const outermost = Math.max(...leaders);
    const rho = (472.5 ** 2 + 53 ** 2) / 106;
    // the fibre at depth t turns with its section about the arc's centre: its height is (rho - t) sin theta
    const theta = Math.asin((412.5 + 3) / (rho - 27));
    expect(outermost).toBeCloseTo((rho - 13.5) * theta, 6);
  });

  it('stay inside the outline', () => {
    const outline = only(drawing, 'outline');
    const { minX, maxX } = boundsOf(outline)!;
    for (const { curve } of drawing.strokes.filter(({ layer }) => layer === 'station')) {
      for (const { x, y } of curve.vertices) {
        expect(x).toBeGreaterThan(minX - 1e-9);
        expect(x).toBeLessThan(maxX + 1e-9);
        expect(Math.abs(y)).toBeLessThan(38.3);
      }
    }
  });
});

describe('a mixed set', () => {
  it('draws each stave with its own width, in ring order', () => {
    const widths = [92, ...new Array<number>(9).fill(71), ...new Array<number>(17).fill(80.1)];
    const vessel = vesselOf(wineCask.replace('  count: 28', `  widths: [${widths.join(', ')}]`));
    const drawings = mixedStaves(vessel, en);
    expect(drawings.map(({ name }) => name)).toEqual(
      widths.map((_, i) => `stave-${String(i + 1).padStart(2, '0')}`),
    );
    drawings.forEach((drawing, i) => {
      const { minY, maxY } = boundsOf(only(drawing, 'outline'))!;
      // each edge within the fit's 0.005 mm
      expect(Math.abs(maxY - minY - widths[i]!)).toBeLessThan(0.01);
    });
  });

  it('draws none for equal staves', () => {
    expect(mixedStaves(vesselOf(wineCask), en)).toEqual([]);
  });
});

describe('scale', () => {
  it('doubles every coordinate of the outline with every length of the spec', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 60 }),
        fc.integer({ min: 20, max: 120 }),
        (count, rise) => {
          const text = (by: number): string =>
            `vessel: cask\ntitle: t\nunits: mm\nheight: ${800 * by}\nbilge: ${600 * by}\nends: ${(600 - rise) * by}\n` +
            `hoops: []\nbung: null\nstaves: { count: ${count}, thickness: ${24 * by}, endThickness: ${24 * by}, trim: ${10 * by} }\n`;
          const bounds = (by: number) => boundsOf(only(stave(vesselOf(text(by)), en), 'outline'))!;
          const [one, two] = [bounds(1), bounds(2)];
          expect(two.maxX).toBeCloseTo(2 * one.maxX, 6);
          expect(Math.abs(two.maxY - 2 * one.maxY)).toBeLessThan(0.015); // the fit's 0.005 mm does not double
        },
      ),
      { seed: 20, numRuns: 30 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.js';
import { jointGauge } from '../../src/pieces/joint-gauge.js';
import { en } from '../../src/pieces/words/en.js';
import { arcsOf, curvesOn, textsOf } from './read-drawing.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

const rho = (472.5 ** 2 + 53 ** 2) / 106;
const endLean = Math.asin(472.5 / rho);
const drawn = (text: string) => jointGauge(vesselOf(text), en);

/** Plates have an arc, cards are rectangles. */
const platesOf = (text: string): Curve[] =>
  curvesOn(drawn(text), 'outline').filter((curve) => arcsOf(curve).length > 0);

/** The notch's corner, and the arm below it. */
function cornerOf(plate: Curve): Point {
  return arcsOf(plate).at(-1)!.to;
}

describe('the plates of a wine cask', () => {
  const plates = platesOf(wineCask);
  const radii = [339, 286 / Math.cos(endLean)];

  it('are two: with the round of the backed face at the bilge and at the ends', () => {
    expect(plates).toHaveLength(2);
    plates.forEach((plate, i) => expect(arcsOf(plate)[0]!.radius).toBeCloseTo(radii[i]!, 6));
  });

  it('have an arm that stands square to the round and points at its centre', () => {
    for (const plate of plates) {
      const [round] = arcsOf(plate);
      const corner = cornerOf(plate);
      expect(round!.centre.x).toBeCloseTo(corner.x, 6);
      const below = plate.vertices.find(
        ({ x, y }) => Math.abs(x - corner.x) < 1e-9 && y < corner.y - 50,
      );
      expect(below).toBeDefined();
    }
  });

  it('find the bevel of every width: a chord from the corner to the tick leans by it from square to the arm', () => {
    const ticks = curvesOn(drawn(wineCask), 'station').filter(
      ({ vertices: [from, to] }) => Math.hypot(to!.x - from!.x, to!.y - from!.y) < 8,
    );
    expect(ticks).toHaveLength(22);
    plates.forEach((plate, i) => {
      const corner = cornerOf(plate);
      const cosine = [1, Math.cos(endLean)][i]!;
      ticks.slice(11 * i, 11 * (i + 1)).forEach((tick, k) => {
        const at = tick.vertices[0]!;
        const bevel = Math.atan(((60 + 5 * k) / 678) * cosine);
        expect(Math.atan2(corner.y - at.y, corner.x - at.x)).toBeCloseTo(bevel, 9);
      });
    });
  });
});

describe('the cards', () => {
  it('have a line for each width that leans by its bevel, all towards one point of the lower edge', () => {
    const drawing = drawn(wineCask);
    const lines = curvesOn(drawing, 'station').filter(
      ({ vertices: [from, to] }) => Math.hypot(to!.x - from!.x, to!.y - from!.y) > 60,
    );
    expect(lines).toHaveLength(22);
    const cards = curvesOn(drawing, 'outline').filter((curve) => arcsOf(curve).length === 0);
    const lower = Math.min(...cards[0]!.vertices.map(({ y }) => y));
    const feet = lines.map(({ vertices: [low, high] }, i) => {
      const cosine = i < 11 ? 1 : Math.cos(endLean);
      const bevel = Math.atan(((60 + 5 * (i % 11)) / 678) * cosine);
      expect(Math.atan2(low!.x - high!.x, high!.y - low!.y)).toBeCloseTo(bevel, 9);
      return low!.x + ((low!.y - lower) * (low!.x - high!.x)) / (high!.y - low!.y);
    });
    for (const foot of feet.slice(0, 11)) expect(foot).toBeCloseTo(feet[0]!, 6);
    for (const foot of feet.slice(11)) expect(foot).toBeCloseTo(feet[11]!, 6);
  });

  it('of a tub are one: its bevel is the same along the stave', () => {
    const cards = curvesOn(drawn(wideTub), 'outline').filter((curve) => arcsOf(curve).length === 0);
    expect(cards).toHaveLength(1);
    expect(platesOf(wideTub)).toHaveLength(2);
    expect(platesOf(wideTub.replace('top: 620', 'top: 520'))).toHaveLength(1);
  });
});

describe('on a flat outside', () => {
  it('the plate rests on the corners of the mean stave: exact for its width', () => {
    const text = wineCask.replace('  count: 28', '  count: 28\n  outside: flat');
    const [plate] = platesOf(text);
    const { radius } = arcsOf(plate!)[0]!;
    // a chord as long as the stave is wide turns by the bevel
    const width = 678 * Math.tan(Math.PI / 28);
    expect(Math.asin(width / 2 / radius)).toBeCloseTo(Math.PI / 28, 9);
  });
});

it('takes a range of widths, and the vessel’s own where the usual range would miss it', () => {
  const some = jointGauge(vesselOf(wineCask), en, { from: 70, to: 81 });
  expect(some.legend.tables[0]!.rows.map(([width]) => width)).toEqual(['70.0', '75.0', '80.0']);
  expect(textsOf(some).filter((text) => text.startsWith('75 ·'))).toHaveLength(2);
});

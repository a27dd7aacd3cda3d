/** Gauges for chime, howel and groove, measured back from the drawing. */
import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { crossLine } from '../../src/geometry/intersect.js';
import { chimeGauges } from '../../src/pieces/chime-gauge.js';
import { crozeGauges } from '../../src/pieces/croze-gauge.js';
import { en } from '../../src/pieces/words/en.js';
import { curvesOn } from './read-drawing.js';
import { everyVessel, vesselOf, wideTub, wineCask } from './vessels.js';

const outlineOf = (drawing: Parameters<typeof curvesOn>[0]): Curve =>
  curvesOn(drawing, 'outline')[0]!;

/** Where a level line leaves the plate towards the stave. */
function edgeAt(plate: Curve, y: number): number {
  return Math.max(...crossLine(plate, { x: -500, y }, { x: 500, y }).map(({ x }) => x));
}

const corners = (plate: Curve, y: number): Point[] =>
  plate.vertices.filter((vertex) => Math.abs(vertex.y - y) < 1e-9);

describe('the croze gauge of a wine cask', () => {
  const plate = outlineOf(crozeGauges(vesselOf(wineCask), en)[0]!);

  it('has a tongue as wide as the groove, its middle 60 mm below the hook', () => {
    const tongue = plate.vertices.filter(({ x }) => Math.abs(x) < 1e-9).map(({ y }) => y);
    expect(tongue.sort((a, b) => a - b).map((y) => Number(y.toFixed(9)))).toEqual([-63, -57]);
  });

  it('has a tongue as long as the groove is deep, from the howel at the groove’s middle', () => {
    const [above, below] = [edgeAt(plate, -57 + 1e-4), edgeAt(plate, -63 - 1e-4)];
    expect((above + below) / 2).toBeCloseTo(-5, 2);
  });

  it('follows the howel, which leans with the inside, down to where it ends', () => {
    // the inside is the parallel of the profile, 27 mm in: its slope where the groove is
    const rho = (472.5 ** 2 + 53 ** 2) / 106 - 27;
    const slope = Math.tan(Math.asin(412.5 / rho));
    const run = edgeAt(plate, -63 - 1e-4) - edgeAt(plate, -57 + 1e-4);
    expect(run / 6).toBeCloseTo(slope, 2);
    expect(boundsOf(plate)!.minY).toBeCloseTo(-63 - 20, 6);
  });

  it('has a hook on the end, flush with the outside, past the chime without touching it', () => {
    const { heads } = vesselOf(wineCask);
    const hook = corners(plate, 0).map(({ x }) => x);
    expect(Math.max(...hook)).toBeCloseTo(286 - heads.bottom.groove.radius, 6);
    const chime = heads.bottom.groove.chime!;
    for (const share of [0.1, 0.5, 0.9]) {
      const wood =
        chime.footRadius +
        share * (chime.endRadius - chime.footRadius) -
        heads.bottom.groove.radius;
      const y = -(1 - share) * (472.5 - Math.abs(chime.footHeight));
      expect(edgeAt(plate, y)).toBeLessThan(wood - 0.2);
    }
  });
});

describe('the chime gauge of a wine cask', () => {
  const plate = outlineOf(chimeGauges(vesselOf(wineCask), en)[0]!);
  const [inner, outer] = corners(plate, 0).sort((a, b) => a.x - b.x) as [Point, Point];

  it('leaves 10 mm of the end flat', () => {
    expect(outer.x - inner.x).toBeCloseTo(10, 6);
  });

  it('slopes 40 degrees from the end down to the howel', () => {
    const start = plate.vertices.findIndex(({ x, y }) => x === inner.x && y === inner.y);
    const foot = plate.vertices[start - 1]!;
    expect(Math.atan2(inner.y - foot.y, inner.x - foot.x)).toBeCloseTo((40 * Math.PI) / 180, 6);
    expect(foot.x).toBeCloseTo(edgeAt(plate, foot.y - 1e-6), 4);
  });

  it('agrees with the croze gauge along the howel', () => {
    const croze = outlineOf(crozeGauges(vesselOf(wineCask), en)[0]!);
    const { minY } = boundsOf(plate)!;
    for (const y of [minY + 1, minY + 10])
      expect(edgeAt(plate, y)).toBeCloseTo(edgeAt(croze, y), 2);
  });
});

describe('which gauges there are', () => {
  it('one where both ends are worked alike, even when their boards differ; else one for each', () => {
    const names = (text: string): string[] =>
      [...crozeGauges(vesselOf(text), en), ...chimeGauges(vesselOf(text), en)].map(
        ({ name }) => name,
      );
    expect(names(wineCask)).toEqual(['croze-gauge', 'chime-gauge']);
    expect(names(`${wineCask}heads: { top: { boards: 5 }, bottom: { boards: 7 } }\n`)).toEqual([
      'croze-gauge',
      'chime-gauge',
    ]);
    expect(names(`${wineCask}heads: { top: { croze: { inset: 55 } } }\n`)).toEqual([
      'croze-gauge-top',
      'croze-gauge-bottom',
      'chime-gauge-top',
      'chime-gauge-bottom',
    ]);
  });

  it('no chime gauge where the flat takes the whole end', () => {
    const square = `${wideTub}chime: { flat: 25 }\n`;
    expect(chimeGauges(vesselOf(square), en)).toEqual([]);
    const plate = outlineOf(crozeGauges(vesselOf(square), en)[0]!);
    const { groove } = vesselOf(square).heads.bottom;
    expect(edgeAt(plate, -1e-4)).toBeCloseTo(groove.howelRadius(-150) - groove.radius, 2);
  });

  it.each(everyVessel)('%s: the end is up, the stave on the right', (_name, text) => {
    const vessel = vesselOf(text);
    for (const drawing of [...crozeGauges(vessel, en), ...chimeGauges(vessel, en)]) {
      const plate = outlineOf(drawing);
      const { maxY, minY } = boundsOf(plate)!;
      expect(maxY).toBeGreaterThan(20);
      expect(minY).toBeLessThan(-2);
      expect(corners(plate, 0).length).toBeGreaterThanOrEqual(2);
    }
  });
});

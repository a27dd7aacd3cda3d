import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/measure.js';
import { listingJig } from '../../src/pieces/listing-jig.js';
import { en } from '../../src/pieces/words/en.js';
import { curvesOn } from './read-drawing.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

/** The two fences run from end to end of the bed; the others on `station` are marks. */
function fencesOf(text: string) {
  const [drawing] = listingJig(vesselOf(text), en);
  const bed = boundsOf(curvesOn(drawing!, 'outline')[0]!)!;
  const fences = curvesOn(drawing!, 'station').filter(
    ({ vertices: [from, to] }) => to!.x - from!.x > (bed.maxX - bed.minX) / 2,
  );
  const angles = fences.map(({ vertices: [from, to] }) =>
    Math.atan2(to!.y - from!.y, to!.x - from!.x),
  );
  return { drawing: drawing!, bed, fences, angles };
}

describe('the listing jig', () => {
  // each edge of a stave leans off its middle line by atan(tan(pi/n) sin(lean))
  const lean = Math.atan(50 / 300);
  const taper = Math.atan(Math.tan(Math.PI / 24) * Math.sin(lean));

  it('sets the first fence at the taper, the second at twice that, the other way', () => {
    const { angles } = fencesOf(wideTub);
    expect(angles).toHaveLength(2);
    expect(angles[0]).toBeCloseTo(taper, 9);
    expect(angles[1]).toBeCloseTo(-2 * taper, 9);
    const upwards = fencesOf(wideTub.replace('top: 620', 'top: 420')).angles;
    expect(upwards[0]).toBeCloseTo(-taper, 9);
    expect(upwards[1]).toBeCloseTo(2 * taper, 9);
  });

  it('has its blade on the lower edge, and fences that clear it by the stave’s width', () => {
    const { bed, fences } = fencesOf(wideTub);
    expect(bed.minY).toBe(0);
    const middleWidth = 570 * Math.tan(Math.PI / 24);
    const [from, to] = fences[1]!.vertices;
    const atMiddle = (from!.y + to!.y) / 2;
    expect(atMiddle).toBeCloseTo((middleWidth * Math.cos(taper)) / Math.cos(2 * taper), 6);
  });

  it('of a cylinder has both fences parallel to the blade', () => {
    const { angles } = fencesOf(wideTub.replace('top: 620', 'top: 520'));
    for (const angle of angles) expect(angle).toBeCloseTo(0, 12);
  });

  it('has a row of settings for every width, with the tilt of the blade', () => {
    const { drawing } = fencesOf(wideTub);
    const { rows } = drawing.legend.tables[0]!;
    const row = rows.find(([width]) => width === '80.0')!;
    const alpha = Math.atan(80 / 620);
    const degrees = (radians: number): string => `${((radians * 180) / Math.PI).toFixed(2)}°`;
    expect(row[1]).toBe(degrees(Math.atan(Math.tan(alpha) * Math.sin(lean))));
    expect(row[2]).toBe(degrees(Math.asin(Math.sin(alpha) * Math.cos(lean))));
  });

  it('is not drawn for a cask', () => {
    expect(listingJig(vesselOf(wineCask), en)).toEqual([]);
  });
});

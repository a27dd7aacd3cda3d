import { describe, expect, it } from 'vitest';
import { paperView } from '../../src/drawing/for-paper.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { signedArea } from '../../src/geometry/measure.js';
import { distance } from '../../src/geometry/vector.js';
import { hoopSheets } from '../../src/pieces/hoop-sheet.js';
import { en } from '../../src/pieces/words/en.js';
import { arcsOf, curvesOn, holesOf } from './read-drawing.js';
import { everyVessel, vesselOf, wideTub, wineCask } from './vessels.js';

describe('the ring sectors of a wide tub', () => {
  const vessel = vesselOf(wideTub);
  const psi = Math.atan(50 / 300);
  const hoop = vessel.hoops[0]!;
  const [drawing] = hoopSheets(vessel, en);
  const outline = curvesOn(drawing!, 'outline')[0]!;
  const { thickness, lap, width } = hoop.spec;
  const radii = [hoop.nearRadius, hoop.farRadius]
    .map((r) => (r + (thickness * Math.cos(psi)) / 2) / Math.sin(psi))
    .sort((a, b) => a - b);

  it('have two edges about one point, with the radii of the unrolled cone', () => {
    const arcs = arcsOf(outline).sort((a, b) => a.radius - b.radius);
    expect(arcs[0]!.radius).toBeCloseTo(radii[0]!, 6);
    expect(arcs.at(-1)!.radius).toBeCloseTo(radii[1]!, 6);
    for (const { centre } of arcs) {
      expect(centre.x).toBeCloseTo(0, 5);
      expect(centre.y).toBeCloseTo(-radii[0]!, 5);
    }
    expect(arcs.at(-1)!.radius - arcs[0]!.radius).toBeCloseTo(width, 6);
  });

  it('sweep once round the cone and the lap: the area says so', () => {
    const sweep = 2 * Math.PI * Math.sin(psi) + lap / ((radii[0]! + radii[1]!) / 2);
    const area = (sweep / 2) * (radii[1]! ** 2 - radii[0]! ** 2);
    expect(Math.abs(signedArea(outline))).toBeCloseTo(area, 2);
  });

  it('have rivet holes that meet when the sector is rolled up', () => {
    const centre = { x: 0, y: -radii[0]! };
    const angles = holesOf(drawing!).map((hole) => {
      expect(distance(hole, centre)).toBeCloseTo((radii[0]! + radii[1]!) / 2, 6);
      return Math.atan2(hole.x - centre.x, hole.y - centre.y);
    });
    const [a, b, c, d] = angles as [number, number, number, number];
    const turn = 2 * Math.PI * Math.sin(psi) - hoop.driving / radii[0]!;
    expect(c - a).toBeCloseTo(turn, 9);
    expect(d - b).toBeCloseTo(turn, 9);
  });
});

describe('ring sectors', () => {
  it('are named by number, never by the user’s word for the hoop', () => {
    const text = `${wineCask}hoops: [{ name: Ünten .x, end: top, offset: 30, width: 40, thickness: 2 }]\n`;
    expect(hoopSheets(vesselOf(text), en).map(({ name }) => name)).toEqual(['hoop-sheet-1']);
  });

  it('are none where no hoop slopes', () => {
    expect(hoopSheets(vesselOf(wideTub.replace('top: 620', 'top: 520')), en)).toEqual([]);
  });

  it.each(everyVessel)(
    '%s: paper shows both ends side by side, without overlaps',
    (_name, text) => {
      for (const drawing of hoopSheets(vesselOf(text), en)) {
        const paper = paperView(drawing);
        expect(overlaps(paper)).toEqual([]);
        expect(holesOf(paper)).toHaveLength(holesOf(drawing).length);
        const radii = (view: typeof paper): string[] => [
          ...new Set(
            curvesOn(view, 'outline')
              .flatMap(arcsOf)
              .map(({ radius }) => radius.toFixed(3)),
          ),
        ];
        expect(radii(paper).sort()).toEqual(radii(drawing).sort());
      }
    },
  );
});

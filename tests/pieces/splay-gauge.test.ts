import { describe, expect, it } from 'vitest';
import { splayGauge } from '../../src/pieces/splay-gauge.js';
import { en } from '../../src/pieces/words/en.js';
import { arcsOf, curvesOn } from './read-drawing.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

describe('the splay gauge', () => {
  const vessel = vesselOf(wideTub);
  const [drawing] = splayGauge(vessel, en);
  const plates = curvesOn(drawing!, 'outline');

  it('has a plate for each strap', () => {
    expect(plates).toHaveLength(vessel.hoops.length);
    expect(curvesOn(splayGauge(vesselOf(wineCask), en)[0]!, 'outline')).toHaveLength(3);
  });

  it('has a round edge that fits the short edge of the strap splayed flat', () => {
    // splayed flat, the strap is a ring: edges in the proportion of their lengths, a width apart
    plates.forEach((plate, i) => {
      const hoop = vessel.hoops[i]!;
      const { width, thickness } = hoop.spec;
      const bent = Math.PI * thickness * Math.cos(hoop.slope);
      const [short, long] = [hoop.nearGirth + bent, hoop.farGirth + bent].sort((a, b) => a - b);
      const radius = (width * short!) / (long! - short!);
      const [round] = arcsOf(plate);
      expect(round!.radius).toBeCloseTo(radius, 5);
      // convex: the plate lies on the side of the centre
      expect(round!.centre.y).toBeLessThan(Math.min(round!.from.y, round!.to.y));
    });
  });

  it('has an end that leans over its foot by the hoop’s slope, which is the wall’s on a tub', () => {
    for (const { vertices } of plates) {
      const foot = vertices[0]!;
      const head = vertices.at(-1)!;
      expect(Math.atan2(foot.x - head.x, head.y - foot.y)).toBeCloseTo(Math.atan(50 / 300), 9);
      expect(vertices[1]!.y).toBe(foot.y);
    }
  });

  it('is not drawn where no hoop slopes', () => {
    expect(splayGauge(vesselOf(wideTub.replace('top: 620', 'top: 520')), en)).toEqual([]);
  });
});

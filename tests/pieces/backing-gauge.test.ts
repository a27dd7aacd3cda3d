/** Templates for backing and hollowing, measured back from the drawing. */
import { describe, expect, it } from 'vitest';
import { backingGauge } from '../../src/pieces/backing-gauge.js';
import { hollowingGauge } from '../../src/pieces/hollowing-gauge.js';
import { en } from '../../src/pieces/words/en.js';
import { arcsOf, curvesOn, type FoundArc } from './read-drawing.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

const rho = (472.5 ** 2 + 53 ** 2) / 106;
const atEnd = 286 / Math.sqrt(1 - (472.5 / rho) ** 2);

type Gauge = typeof backingGauge;
const roundsOf = (gauge: Gauge, text: string): FoundArc[] =>
  gauge(vesselOf(text), en).flatMap((drawing) =>
    curvesOn(drawing, 'outline').map((plate) => arcsOf(plate)[0]!),
  );
const radiiOf = (gauge: Gauge, text: string): number[] =>
  roundsOf(gauge, text).map(({ radius }) => radius);

describe('backing gauges', () => {
  it('have the radius of the bilge, and of the ends by the cosine of their lean', () => {
    const [bilge, ends] = radiiOf(backingGauge, wineCask);
    expect(bilge).toBeCloseTo(339, 6);
    expect(ends).toBeCloseTo(atEnd, 6);
  });

  it('are hollow: their lower edge fits over a round face', () => {
    for (const { centre, from } of roundsOf(backingGauge, wineCask))
      expect(centre.y).toBeLessThan(from.y);
  });

  it('of a tub are made for both ends, by the lean of its wall; of a cylinder for all of it', () => {
    const slant = Math.hypot(300, 50) / 300;
    const [top, bottom] = radiiOf(backingGauge, wideTub);
    expect(top).toBeCloseTo(310 * slant, 6);
    expect(bottom).toBeCloseTo(260 * slant, 6);
    expect(radiiOf(backingGauge, wideTub.replace('top: 620', 'top: 520'))).toHaveLength(1);
  });

  it('are not drawn for a flat outside', () => {
    const flat = wineCask.replace('  count: 28', '  count: 28\n  outside: flat');
    expect(backingGauge(vesselOf(flat), en)).toEqual([]);
  });
});

describe('hollowing gauges', () => {
  it('have the backing radius less the thickness at that place', () => {
    const thinned = `${wineCask}  thickness: 27\n  endThickness: 23\n`;
    const [bilge, ends] = radiiOf(hollowingGauge, thinned);
    expect(bilge).toBeCloseTo(339 - 27, 6);
    expect(ends).toBeCloseTo(atEnd - 23, 6);
  });

  it('are round: their lower edge lies in a hollow', () => {
    for (const { centre, from } of roundsOf(hollowingGauge, wineCask))
      expect(centre.y).toBeGreaterThan(from.y);
  });

  it('are not drawn for a flat inside', () => {
    expect(hollowingGauge(vesselOf(wideTub), en)).toEqual([]);
  });
});

it('every plate spans at least a stave', () => {
  const width = 678 * Math.tan(Math.PI / 28);
  for (const { from, to } of roundsOf(backingGauge, wineCask))
    expect(Math.abs(to.x - from.x)).toBeGreaterThan(width);
});

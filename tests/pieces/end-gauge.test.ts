/** The gauge's notch must hold exactly the corner between the outer face and the joint, or the end. */
import { describe, expect, it } from 'vitest';
import type { Curve } from '../../src/geometry/curve.js';
import { endGauge } from '../../src/pieces/end-gauge.js';
import { en } from '../../src/pieces/words/en.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

/** Angle of the arm from square: the notch's corner is the second vertex, the arm's foot the third. */
function inwardDegrees({ vertices }: Curve): number {
  const [corner, end] = [vertices[1]!, vertices[2]!];
  return (Math.atan2(corner.x - end.x, corner.y - end.y) * 180) / Math.PI;
}

const gauges = (text: string): number[] =>
  endGauge(vesselOf(text), en).strokes.map(({ curve }) => inwardDegrees(curve));

describe('the corner gauges', () => {
  it('of a wine cask lean inwards for the joints and outwards for the end cut', () => {
    const [bilge, ends, cut] = gauges(wineCask);
    expect(bilge).toBeCloseTo(180 / 28, 9);
    const rho = (472.5 ** 2 + 53 ** 2) / 106;
    const lean = Math.asin(472.5 / rho);
    expect(ends).toBeCloseTo(
      (Math.atan(Math.tan(Math.PI / 28) * Math.cos(lean)) * 180) / Math.PI,
      9,
    );
    expect(cut).toBeCloseTo(-12.9, 1);
  });

  it('of a tub have one joint bevel, and end cuts that lean opposite ways by the wall’s lean', () => {
    const [joint, top, bottom] = gauges(wideTub);
    const lean = Math.atan(50 / 300);
    expect(joint).toBeCloseTo(
      (Math.atan(Math.tan(Math.PI / 24) * Math.cos(lean)) * 180) / Math.PI,
      9,
    );
    expect(top).toBeCloseTo((lean * 180) / Math.PI, 9);
    expect(bottom).toBeCloseTo((-lean * 180) / Math.PI, 9);
  });
});

import { describe, expect, it } from 'vitest';
import { distanceTo } from '../../src/geometry/nearest.js';
import { bilgeSweep } from '../../src/pieces/bilge-sweep.js';
import { en } from '../../src/pieces/words/en.js';
import { arcsOf, curvesOn, textsOf, uprightsOn } from './read-drawing.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

const rho = (472.5 ** 2 + 53 ** 2) / 106;
const platesOf = (text: string) => curvesOn(bilgeSweep(vesselOf(text), en), 'outline');

describe('the sweeps of a wine cask', () => {
  const [outside, inside] = platesOf(wineCask);

  it('have the profile’s circle outside, and one thickness less inside, about one centre', () => {
    const [outer] = arcsOf(outside!);
    const [inner] = arcsOf(inside!);
    expect(outer!.radius).toBeCloseTo(rho, 4);
    // the default thickness of this cask is 27
    expect(inner!.radius).toBeCloseTo(rho - 27, 1);
    expect(outer!.centre.y).toBeCloseTo(-rho, 4);
    expect(inner!.centre.y).toBeCloseTo(-rho, 1);
  });

  it('are as long as the cask is high: their ends are the end planes', () => {
    for (const { vertices } of [outside!, inside!]) {
      const xs = vertices.map(({ x }) => x);
      expect(Math.max(...xs)).toBe(472.5);
      expect(Math.min(...xs)).toBe(-472.5);
    }
  });

  it('leave the stave’s own thickness between them, square to its face', () => {
    for (const z of [-400, -100, 0, 250, 430]) {
      const y = -rho + Math.sqrt(rho ** 2 - z ** 2);
      expect(distanceTo(outside!, { x: z, y })).toBeLessThan(0.005);
      expect(distanceTo(inside!, { x: z, y })).toBeCloseTo(27, 1);
    }
  });

  it('mark hoop edges outside, chime, groove and howel inside, by their heights', () => {
    const drawing = bilgeSweep(vesselOf(wineCask), en);
    const { hoops, heads } = vesselOf(wineCask);
    const marks = uprightsOn(drawing, 'station');
    const groove = heads.bottom.groove;
    const expected = [
      ...hoops.flatMap(({ nearHeight, farHeight }) => [nearHeight, farHeight]),
      ...[-1, 1].flatMap((side) => [
        (side * (472.5 - 60 - 3)) as number,
        side * (472.5 - 60 + 3),
        side * Math.abs(groove.howelTo),
        side * Math.abs(groove.chime!.footHeight),
      ]),
    ].sort((a, b) => a - b);
    expect(marks).toHaveLength(expected.length);
    marks.forEach((x, i) => expect(x).toBeCloseTo(expected[i]!, 6));
    expect(textsOf(drawing).filter((text) => text === 'groove lip, 57.0')).toHaveLength(2);
  });
});

describe('the sweeps of other vessels', () => {
  it('follow a parabola and a thinned wall within the tolerance of drawing', () => {
    const text = wineCask.replace('profile: arc', 'profile: parabola') + '  endThickness: 22\n';
    const [outside] = platesOf(text);
    for (const z of [-450, -200, 33, 380]) {
      const y = -53 * (z / 472.5) ** 2;
      expect(distanceTo(outside!, { x: z, y })).toBeLessThan(0.005);
    }
  });

  it('of a tub are straight, and lean with the wall', () => {
    for (const { vertices } of platesOf(wideTub)) {
      expect(vertices).toHaveLength(4);
      const [bottom, top] = vertices;
      expect((top!.y - bottom!.y) / (top!.x - bottom!.x)).toBeCloseTo(50 / 300, 9);
    }
  });

  it('say nothing twice where a hoop ends with the stave', () => {
    const text = `${wideTub}hoops: [{ name: rim, end: top, offset: 0, width: 30 }]\n`;
    const marks = uprightsOn(bilgeSweep(vesselOf(text), en), 'station');
    expect(marks.every((x) => Math.abs(x) < 149.9)).toBe(true);
  });
});

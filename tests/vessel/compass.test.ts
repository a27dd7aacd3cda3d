import { describe, expect, it } from 'vitest';
import { radiusFromMiss, sixStepOverrun } from '../../src/vessel/compass.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

describe('six steps of a compass', () => {
  it('end where they began when it is opened to the radius: the hexagon', () => {
    expect(sixStepOverrun(280, 280)).toBeCloseTo(0, 12);
  });

  it('overrun by 3.98 degrees when it is 1 % too wide', () => {
    // derived: six chords of 1.01 R, laid round the circle point by point
    let angle = 0;
    for (let i = 0; i < 6; i++) angle += Math.acos(1 - 1.01 ** 2 / 2);
    expect(degrees(sixStepOverrun(1.01, 1))).toBeCloseTo(degrees(angle) - 360, 9);
    expect(degrees(sixStepOverrun(1.01, 1))).toBeCloseTo(3.98, 2);
  });

  it('end short when it is too narrow, and reach nowhere when it is wider than the circle', () => {
    expect(sixStepOverrun(0.99, 1)).toBeLessThan(0);
    expect(sixStepOverrun(2.01, 1)).toBeNaN();
  });

  it('tell the circle’s radius by the miss', () => {
    expect(radiusFromMiss(280, 0)).toBeCloseTo(280, 9);
    for (const radius of [270, 279, 281, 290]) {
      const miss = radius * sixStepOverrun(280, radius);
      expect(radiusFromMiss(280, miss)).toBeCloseTo(radius, 9);
      expect(Math.sign(miss)).toBe(Math.sign(280 - radius));
    }
  });
});

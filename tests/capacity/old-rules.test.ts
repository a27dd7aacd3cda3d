import { describe, expect, it } from 'vitest';
import { volumeBelow } from '../../src/capacity/lying.js';
import { lyingRule, standingRule } from '../../src/capacity/old-rules.js';
import { roundSection } from '../../src/capacity/section.js';

// "Rules and tables for gauging", The Builder-Mechanic (19th century): both examples on a cask of 118.80 wine gallons,
// 40 in long, 32 at the bung, 24 at the heads. They test our rendering of the rules, not the integral.
describe('the old rules', () => {
  it('lying: 15 of 32 in wet make 54.759375 gallons', () => {
    expect(118.8 * lyingRule(15 / 32)).toBeCloseTo(54.759375, 9);
  });

  it('standing: 21 of 40 in wet make 62.667 gallons', () => {
    expect(118.8 * standingRule(21 / 40)).toBeCloseTo(62.667, 9);
  });

  it('agree at half full, and treat wet and dry alike', () => {
    expect(lyingRule(0.5)).toBe(0.5);
    expect(standingRule(0.5)).toBe(0.5);
    for (const share of [0.1, 0.4]) {
      expect(lyingRule(share) + lyingRule(1 - share)).toBeCloseTo(1, 14);
      expect(standingRule(share) + standingRule(1 - share)).toBeCloseTo(1, 14);
    }
  });

  it('beside a true spheroid lying are near at 15 in, 46.09 % for 45.71, and useless at 4 in', () => {
    const radius = (z: number): number => 16 * Math.sqrt(1 - (1 - (12 / 16) ** 2) * (z / 20) ** 2);
    const inside = { radius, from: -20, to: 20, widest: 0 };
    const share = (wet: number): number =>
      volumeBelow(inside, roundSection, wet - 16) / volumeBelow(inside, roundSection, 16);
    expect(100 * share(15)).toBeCloseTo(45.71, 2);
    expect(100 * lyingRule(15 / 32)).toBeCloseTo(46.09, 2);
    expect(lyingRule(4 / 32) / share(4) - 1).toBeCloseTo(-0.38, 2);
  });
});

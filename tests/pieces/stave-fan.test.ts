/** The fan: every line is the outer edge of a stave of its width, all on one pattern. */
import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/measure.js';
import { distanceTo } from '../../src/geometry/nearest.js';
import { staveFan } from '../../src/pieces/stave-fan.js';
import { en } from '../../src/pieces/words/en.js';
import { vesselOf, wineCask } from './vessels.js';

describe('the stave fan', () => {
  const vessel = vesselOf(wineCask);
  const fan = staveFan(vessel, en);

  it('has a pair of lines for every 5 mm from 60 to 110', () => {
    expect(fan.letterings.filter(({ leader }) => leader)).toHaveLength(11);
    const outline = fan.strokes.find(({ layer }) => layer === 'outline')!.curve;
    expect(boundsOf(outline)!.maxY * 2).toBeCloseTo(110, 2);
  });

  it('scales all widths together: a 70 mm line is 70/110 of the outermost, everywhere', () => {
    const curves = fan.strokes
      .filter(({ layer, curve }) => layer === 'station' && curve.vertices[0]!.x < -1)
      .map(({ curve }) => curve);
    const outline = fan.strokes.find(({ layer }) => layer === 'outline')!.curve;
    const seventy = curves.find((curve) => Math.abs(boundsOf(curve)!.maxY * 2 - 70) < 0.02)!;
    for (const { x, y } of seventy.vertices) {
      expect(distanceTo(outline, { x, y: (y * 110) / 70 })).toBeLessThan(0.02);
    }
  });

  it('takes another range, and a quarter of an inch in inches', () => {
    const some = staveFan(vessel, en, { from: 80, to: 92 });
    expect(some.letterings.filter(({ leader }) => leader)).toHaveLength(3);
    const keg = vesselOf(
      'vessel: cask\ntitle: k\nunits: in\nheight: 30\nbilge: 22\nends: 19\nstaves: { count: 22 }\n',
    );
    const texts = staveFan(keg, en)
      .letterings.filter(({ leader }) => leader)
      .map(({ text }) => text);
    expect(texts[0]).toContain('2.500');
    expect(texts[1]).toContain('2.750');
  });
});

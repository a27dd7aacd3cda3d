import { describe, expect, it } from 'vitest';
import { paperView } from '../../src/drawing/for-paper.js';
import { withLegend } from '../../src/drawing/legend.js';
import { overlaps } from '../../src/drawing/overlap.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { hoops } from '../../src/pieces/hoops.js';
import { en } from '../../src/pieces/words/en.js';
import { curvesOn, holesOf, textsOf, uprightsOn } from './read-drawing.js';
import { everyVessel, vesselOf, wideTub, wineCask } from './vessels.js';

const drawn = (text: string): Drawing => hoops(vesselOf(text), en)[0]!;

const withHoops = (list: string): string => `${wineCask}hoops: [${list}]\n`;
const one = withHoops('{ name: one, end: top, offset: 30, width: 40, thickness: 1.8, lap: 70 }');

/** Cut length of that hoop by its own road: circle through bilge and ends, chord of 40 mm down from 30 mm off the end. */
function cutLengthByHand(): number {
  const rho = (472.5 ** 2 + 53 ** 2) / 106;
  const near = Math.asin(442.5 / rho);
  const far = near - 2 * Math.asin(20 / rho);
  const radius = (phi: number): number => 339 - rho * (1 - Math.cos(phi));
  const slope = Math.asin((radius(far) - radius(near)) / 40);
  const girth = 2 * Math.PI * radius(near);
  return girth + Math.PI * 1.8 * Math.cos(slope) + 70 - 0.002 * girth;
}

describe('a strap', () => {
  const drawing = drawn(one);
  const [strip] = curvesOn(drawing, 'outline');

  it('is a strip of its true length and width', () => {
    const { minX, maxX, minY, maxY } = boundsOf(strip!)!;
    expect(minX).toBe(0);
    expect(maxX).toBeCloseTo(cutLengthByHand(), 6);
    expect(maxY - minY).toBeCloseTo(40, 9);
  });

  it('has its lap at both ends, and holes that meet when the lap is closed', () => {
    const length = cutLengthByHand();
    const laps = uprightsOn(drawing, 'station');
    expect(laps).toHaveLength(2);
    expect(laps[0]).toBeCloseTo(70, 9);
    expect(laps[1]).toBeCloseTo(length - 70, 6);
    const holes = holesOf(drawing);
    expect(holes).toHaveLength(4);
    const [a, b, c, d] = holes.map(({ x }) => x);
    expect(c! - a!).toBeCloseTo(length - 70, 6);
    expect(d! - b!).toBeCloseTo(length - 70, 6);
    for (const { y, diameter } of holes) {
      expect(y).toBeCloseTo(-20, 9);
      expect(diameter).toBeCloseTo(5.2, 9);
    }
  });

  it('says which edge is hammered, by how much, and what driving takes up', () => {
    const texts = textsOf(drawing).join('\n');
    expect(texts).toMatch(/1 · one hoop, top: 1 strap 40\.0 × 1\.8/);
    expect(texts).toMatch(/upper edge: the long one, \d+\.\d longer \(\d\.\d\d per 100\)/);
    expect(texts).toMatch(/made 3\.\d small/);
    expect(texts).toContain(`cut square to ${cutLengthByHand().toFixed(1)}`);
  });
});

describe('all straps', () => {
  it('lie one below the other, a pair once, clear of each other', () => {
    const boxes = curvesOn(drawn(wineCask), 'outline').map((curve) => boundsOf(curve)!);
    expect(boxes).toHaveLength(3);
    boxes.slice(1).forEach((box, i) => expect(box.maxY).toBeLessThan(boxes[i]!.minY - 30));
  });

  it('list girths, cuts, steel to buy and the hoops to work with', () => {
    const { tables } = drawn(wineCask).legend;
    expect(tables.map(({ rows }) => rows.length)).toEqual([6, 3, 3, 3]);
    const [, straps, steel] = tables;
    expect(straps!.rows[0]!.slice(0, 2)).toEqual(['1', '2']);
    expect(steel!.rows[0]![0]).toBe('40.0 × 1.8');
  });

  it('on a cylinder are plain, and without hoops there is no drawing', () => {
    const cylinder = drawn(wideTub.replace('top: 620', 'top: 520'));
    expect(textsOf(cylinder).filter((text) => text.startsWith('no slope'))).not.toHaveLength(0);
    expect(textsOf(cylinder).join()).not.toContain('small, to be driven');
    expect(hoops(vesselOf(`${wineCask}hoops: []\n`), en)).toEqual([]);
  });

  it('over the bilge have no slope', () => {
    const text = textsOf(
      drawn(withHoops('{ name: belly, end: top, offset: 460, width: 40, thickness: 1.8 }')),
    );
    expect(text).toContain('no slope: both edges alike');
  });

  it('without room for rivets have no holes and are welded', () => {
    const welded = drawn(
      withHoops('{ name: w, end: top, offset: 30, width: 40, thickness: 1.8, lap: 0 }'),
    );
    expect(holesOf(welded)).toEqual([]);
    expect(welded.legend.tables[1]!.rows[0]).toContain('none: weld');
    expect(overlaps(welded)).toEqual([]);
  });

  it('in inches give lengths in inches and masses in pounds', () => {
    const [, keg] = everyVessel.find(([name]) => name === 'keg-10-inches.yaml')!;
    const { tables } = drawn(keg).legend;
    expect(tables[1]!.headings).toContain('mass each lb');
    expect(tables[1]!.rows[0]![2]).toMatch(/^\d+\.\d{3} \(\d+ \d+\/\d+\)$/);
  });
});

describe('on paper', () => {
  it.each(everyVessel)(
    '%s: the ends are true, the middle is broken out, nothing overlaps',
    (_n, text) => {
      const vessel = vesselOf(text);
      for (const drawing of hoops(vessel, en)) {
        const paper = paperView(drawing);
        expect(paper.forPaper).toBeUndefined();
        expect(overlaps(paper)).toEqual([]);
        expect(overlaps(withLegend(paper))).toEqual([]);
        const box = boundsOf(...curvesOn(paper, 'outline'))!;
        expect(box.maxX - box.minX).toBeLessThan(260);
        const [whole, broken] = [drawing, paper].map((view) => holesOf(view).length);
        expect(broken).toBe(whole);
        // the same figures stand on both
        expect(textsOf(paper)).toEqual(textsOf(drawing));
      }
    },
  );

  it('holes lie as far from their own end as in the whole strap', () => {
    const [whole, paper] = [drawn(one), paperView(drawn(one))];
    const fromEnds = (drawing: Pick<Drawing, 'strokes'>): number[] => {
      const right = boundsOf(...curvesOn(drawing, 'outline'))!.maxX;
      const [a, b, c, d] = holesOf(drawing).map(({ x }) => x);
      return [a!, b!, right - c!, right - d!];
    };
    fromEnds(paper).forEach((place, i) => expect(place).toBeCloseTo(fromEnds(whole)[i]!, 6));
    expect(paper.legend.notes[0]).toContain('Broken view');
    expect(whole.legend.notes.join()).not.toContain('Broken view');
  });

  it('a strap too short to break stays whole', () => {
    const [, small] = everyVessel.find(([name]) => name === 'small, in inches')!;
    const long = `${small}hoops: [{ name: l, end: top, offset: 1, width: 1, thickness: 1/16, lap: 32 }]\n`;
    const [whole, paper] = [drawn(long), paperView(drawn(long))];
    expect(curvesOn(paper, 'outline')).toEqual(curvesOn(whole, 'outline'));
  });
});

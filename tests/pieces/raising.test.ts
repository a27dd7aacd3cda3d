import { describe, expect, it } from 'vitest';
import { reductions } from '../../src/drawing/scale.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { raising } from '../../src/pieces/raising.js';
import { en } from '../../src/pieces/words/en.js';
import { toSheets } from '../../src/sheets/sheets.js';
import { raisingOf } from '../../src/vessel/raising.js';
import { everyVessel, vesselOf, wideTub, wineCask } from './vessels.js';

describe.each(everyVessel)('raising of %s', (_name, text) => {
  const vessel = vesselOf(text);
  const ring = raisingOf(vessel);
  const drawing = raising(vessel, en);
  const scale = drawing.scale!;
  const seen = drawing.strokes.filter(({ layer }) => layer === 'joint').map(({ curve }) => curve);
  const staves = seen.filter(({ closed }) => !closed);
  const levelAt = (height: number) =>
    staves.filter(({ vertices }) => vertices.every(({ y }) => Math.abs(y - height * scale) < 1e-6));

  it('stands as high as its staves do, at a scale of ISO 5455', () => {
    expect(reductions).toContain(scale);
    const { minY, maxY } = boundsOf(...staves)!;
    expect(minY).toBeCloseTo(0, 6);
    expect(maxY / scale).toBeCloseTo(ring.height, 6);
  });

  it('shows the ends of half the staves, as wide as they are when seen square', () => {
    for (const [height, station] of [
      [0, ring.freeStation],
      [ring.height, ring.raisedStation],
    ] as const) {
      const ends = levelAt(height);
      const near = Math.abs(ends.length - vessel.staves.length / 2);
      expect(near).toBeLessThanOrEqual(vessel.spec.staves.widths ? 2 : 1);
      const middle = ends.find(
        ({ vertices: [a, b] }) => Math.abs(a!.x + b!.x) < 1e-6, // the first stave faces the viewer
      )!;
      const [left, right] = middle.vertices;
      const z = vessel.bend.sectionAtStation(station);
      const width = 2 * vessel.staves[0]!.halfWidth(z, 0);
      expect(Math.abs(right!.x - left!.x) / scale).toBeCloseTo(width, 6);
    }
  });

  it('shows the gap beside that stave as it is', () => {
    if (vessel.spec.staves.widths) return;
    const ends = levelAt(0).map((curve) => boundsOf(curve)!);
    ends.sort((a, b) => a.minX - b.minX);
    const i = ends.findIndex(({ minX, maxX }) => minX < 0 && maxX > 0);
    const open = (ends[i + 1]!.minX - ends[i]!.maxX) / scale;
    const { gap } = ring.place(ring.freeStation);
    // it lies square to the joint plane, which stands half a stave round from the viewer
    expect(open).toBeCloseTo(gap * Math.cos(vessel.meanStave.alpha), 5);
  });

  it('fits one sheet of the paper of its units', () => {
    const { spec } = vessel;
    const titleBlock = { ...spec.sheet, title: '', subtitle: '' };
    const paper = spec.units === 'in' ? 'letter' : 'a4';
    const sheets = toSheets(drawing, { paper, units: spec.units, titleBlock });
    expect(sheets.filter(({ content }) => content.length > 0)).toHaveLength(1);
    expect(sheets[0]!.content).toHaveLength(1);
  });
});

describe('the table of girths', () => {
  const rowsOf = (text: string) => raising(vesselOf(text), en).legend.tables[0]!.rows;

  it('says that a cask is closed in its hoop only, and widest at the free end', () => {
    const [raised, hoop, bilge, free] = rowsOf(wineCask).map((row) => row.slice(1).map(Number));
    expect(hoop![4]).toBe(0);
    expect(hoop![2]).toBe(hoop![3]);
    const gaps = [raised, bilge, free].map((row) => row![4]!);
    expect(gaps[0]).toBeGreaterThan(0);
    expect(gaps[0]).toBeLessThan(gaps[1]!);
    expect(gaps[1]).toBeLessThan(gaps[2]!);
    // widths of the staves at the bilge, laid side by side: a polygon round the bilge circle
    expect(bilge![3]).toBeCloseTo(678 * 28 * Math.tan(Math.PI / 28), 1);
  });

  it('says that a tub is closed everywhere', () => {
    for (const row of rowsOf(wideTub)) expect(Number(row[5])).toBe(0);
  });
});

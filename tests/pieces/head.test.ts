/** The head and its boards: rim, areas, bores, joints. */
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { boundsOf, signedArea } from '../../src/geometry/measure.js';
import { contains, distanceTo } from '../../src/geometry/nearest.js';
import { headBoards } from '../../src/pieces/head-boards.js';
import { heads } from '../../src/pieces/head.js';
import { en } from '../../src/pieces/words/en.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

const on = (drawing: Drawing, layer: string) =>
  drawing.strokes.filter((stroke) => stroke.layer === layer).map(({ curve }) => curve);
const outlineOf = (drawing: Drawing) => on(drawing, 'outline')[0]!;

const withHeads = (yaml: string) => vesselOf(`${wineCask}heads: ${yaml}\n`);

describe('the rim', () => {
  it('is a circle of the head’s diameter about the origin', () => {
    const vessel = vesselOf(wineCask);
    const rim = outlineOf(heads(vessel, en)[0]!);
    const radius = vessel.heads.bottom.diameter / 2;
    expect(signedArea(rim)).toBeCloseTo(Math.PI * radius * radius, 4);
    for (const { x, y } of rim.vertices) expect(Math.hypot(x, y)).toBeCloseTo(radius, 9);
  });

  it('is larger across the boards by the cross-grain allowance, and an ellipse in area', () => {
    const vessel = withHeads('{ crossGrain: 3 }');
    const rim = outlineOf(heads(vessel, en)[0]!);
    const { minX, maxX, minY, maxY } = boundsOf(rim)!;
    expect(maxX - minX).toBeCloseTo(vessel.heads.bottom.diameter, 6);
    expect(maxY - minY).toBeCloseTo(vessel.heads.bottom.diameter + 3, 6);
    const [a, b] = [(maxX - minX) / 2, (maxY - minY) / 2];
    // the fit lies within 0.005 mm, so the area within 0.005 times the girth
    expect(Math.abs(signedArea(rim) - Math.PI * a * b)).toBeLessThan(0.005 * 2 * Math.PI * b);
  });
});

describe.each([
  ['even', '{ boards: 6 }'],
  ['odd', '{ boards: 5 }'],
  ['one', '{ boards: 1 }'],
  ['two', '{ boards: 2 }'],
  ['of given widths', '{ widths: [110, 95, 160, 80, 140] }'],
  ['with cross-grain', '{ boards: 6, crossGrain: -2 }'],
])('boards: %s', (_name, yaml) => {
  const vessel = withHeads(yaml);
  const head = heads(vessel, en)[0]!;
  const boards = headBoards(vessel, en);

  it('together have the head’s area', () => {
    const sum = boards.reduce((total, board) => total + signedArea(outlineOf(board)), 0);
    expect(Math.abs(sum - signedArea(outlineOf(head)))).toBeLessThan(15);
  });

  it('carry both halves of every dowel, inside their own outlines', () => {
    const halves = boards.flatMap((board) => {
      for (const bore of on(board, 'bore')) {
        for (const { x, y } of bore.vertices) {
          const outline = outlineOf(board);
          expect(contains(outline, { x, y }) || distanceTo(outline, { x, y }) < 1e-6).toBe(true);
        }
      }
      return on(board, 'bore');
    });
    expect(halves).toHaveLength(2 * on(head, 'bore').length);
  });

  it('have joints that end on the rim', () => {
    for (const joint of on(head, 'joint')) {
      for (const end of joint.vertices)
        expect(distanceTo(outlineOf(head), end)).toBeLessThan(0.006);
    }
    expect(on(head, 'joint')).toHaveLength(boards.length - 1);
  });
});

describe('which heads are drawn', () => {
  it('is one pattern where both ends are alike', () => {
    expect(heads(vesselOf(wineCask), en).map(({ name }) => name)).toEqual(['head']);
  });

  it('is two where they differ, each with its boards', () => {
    const vessel = withHeads('{ top: { boards: 5 } }');
    expect(heads(vessel, en).map(({ name }) => name)).toEqual(['head-top', 'head-bottom']);
    const boards = headBoards(vessel, en).map(({ name }) => name);
    expect(boards).toHaveLength(11);
    expect(boards[0]).toBe('head-top-board-1');
  });

  it('is the bottom of a tub', () => {
    const [bottom, ...rest] = heads(vesselOf(wideTub), en);
    expect(bottom!.title).toBe(en.head.title.bottom);
    expect(rest).toEqual([]);
  });
});

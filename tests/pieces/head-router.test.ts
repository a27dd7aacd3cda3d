import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { paperView } from '../../src/drawing/for-paper.js';
import { boundsOf, signedArea } from '../../src/geometry/measure.js';
import { headRouters, type RouterOptions } from '../../src/pieces/head-router.js';
import { en } from '../../src/pieces/words/en.js';
import type { Head } from '../../src/vessel/head.js';
import { everyVessel, vesselOf, wineCask } from './vessels.js';

const curvesOn = (drawing: Drawing, layer: string) =>
  drawing.strokes.filter((stroke) => stroke.layer === layer).map(({ curve }) => curve);
const routers = (text: string, options?: RouterOptions) => headRouters(vesselOf(text), en, options);
const areas = (drawings: readonly Drawing[], layer: string): number[] =>
  drawings.flatMap((each) => curvesOn(each, layer).map((curve) => Math.abs(signedArea(curve))));
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

describe.each(everyVessel)('nested boards of %s', (_name, text) => {
  const { heads } = vesselOf(text);
  const drawings = routers(text);
  const own = (head: Head): Drawing[] =>
    drawings.filter(({ name }) => !/(top|bottom)/.test(name) || name.includes(head.groove.end));
  const present = [heads.top, heads.bottom].filter((head) => head !== null);

  it('are all there, and together as large as the head', () => {
    for (const head of present) {
      const boards = areas(own(head), 'outline');
      expect(boards).toHaveLength(head.boards.length);
      const round = Math.PI * head.rim.along * head.rim.across;
      // arcs within 0.005 mm all round
      expect(Math.abs(sum(boards) - round)).toBeLessThan(2 * Math.PI * head.rim.across * 0.005);
    }
  });

  it('carry both halves of every dowel', () => {
    for (const head of present) {
      const bores = areas(own(head), 'bore');
      const { diameter, length } = head.spec.dowels;
      expect(bores).toHaveLength(2 * head.dowels.length);
      expect(sum(bores)).toBeCloseTo(head.dowels.length * diameter * length, 4);
    }
  });

  it('lie inside their sheet and 12 mm apart, level', () => {
    for (const drawing of drawings) {
      const [edge] = curvesOn(drawing, 'station').map((curve) => boundsOf(curve)!);
      const boxes = curvesOn(drawing, 'outline').map((curve) => boundsOf(curve)!);
      expect(edge).toMatchObject({ minX: 0, minY: 0 });
      for (const [i, a] of boxes.entries()) {
        const inside = [a.minX, a.minY, edge!.maxX - a.maxX, edge!.maxY - a.maxY];
        expect(Math.min(...inside)).toBeGreaterThan(12 - 1e-4);
        for (const b of boxes.slice(i + 1)) {
          const apart = [b.minX - a.maxX, a.minX - b.maxX, b.minY - a.maxY, a.minY - b.maxY];
          expect(Math.max(...apart)).toBeGreaterThan(12 - 1e-4);
        }
      }
    }
  });

  it('are numbered, each once', () => {
    for (const head of present) {
      const numbers = own(head)
        .flatMap(({ legend }) => legend.tables[0]!.rows.map(([number]) => Number(number)))
        .sort((a, b) => a - b);
      expect(numbers).toEqual(head.boards.map((_, i) => i + 1));
    }
  });
});

describe('a sheet of a given size', () => {
  it('is one of several when not all fit', () => {
    const drawings = routers(wineCask, { sheet: { width: 620, height: 240 }, gap: 10 });
    expect(drawings.map(({ name }) => name)).toEqual([
      'head-router-1',
      'head-router-2',
      'head-router-3',
    ]);
    expect(drawings.every((each) => curvesOn(each, 'outline').length === 2)).toBe(true);
    expect(drawings[1]!.title).toContain('sheet 2 of 3');
  });

  it('says which boards are too large for it, and what would hold them', () => {
    const vessel = vesselOf(wineCask);
    const [drawing, ...rest] = routers(wineCask, { sheet: { width: 480, height: 700 }, gap: 10 });
    expect(rest).toEqual([]);
    const fitting = vessel.heads.bottom.boards.filter(({ chord }) => chord <= 460).length;
    expect(fitting).toBe(2);
    expect(curvesOn(drawing!, 'outline')).toHaveLength(fitting);
    const note = drawing!.legend.notes.find((text) => text.startsWith('Not drawn'))!;
    for (const number of [2, 3, 4, 5]) expect(note).toContain(`board ${number} `);
    for (const number of [1, 6]) expect(note).not.toContain(`board ${number} `);
    const needed = Number(/A sheet of ([\d.]+)/.exec(note)![1]);
    const longest = Math.max(...vessel.heads.bottom.boards.map(({ chord }) => chord));
    expect(needed).toBeGreaterThanOrEqual(longest + 20);
    expect(needed).toBeLessThan(longest + 21.1);
  });

  it('is drawn empty when it holds no board at all', () => {
    const [drawing] = routers(wineCask, { sheet: { width: 200, height: 100 } });
    expect(curvesOn(drawing!, 'outline')).toEqual([]);
    expect(drawing!.legend.notes.some((text) => text.startsWith('Not drawn'))).toBe(true);
  });
});

const reachOf = (drawing: Drawing): number =>
  Math.max(...curvesOn(drawing, 'outline').map((curve) => boundsOf(curve)!.maxX));
const lengthOf = (drawing: Drawing): number => boundsOf(curvesOn(drawing, 'station')[0]!)!.maxX;

describe('planks that are not given', () => {
  // two planks of 2 m would do as well
  const large =
    'vessel: tub\nunits: mm\nheight: 400\ntop: 760\nbottom: 700\nstaves: { count: 24 }\n';

  it('are no longer than what lies on them needs', () => {
    const drawings = routers(large);
    expect(drawings.length).toBeGreaterThan(1);
    for (const drawing of drawings) {
      const enough = [500, 1000, 1500, 2000].find((length) => length >= reachOf(drawing) + 12)!;
      expect(lengthOf(drawing)).toBe(enough);
      expect(drawing.legend.notes[0]).toContain(`${enough}`);
    }
    expect(lengthOf(drawings.at(-1)!)).toBeLessThan(lengthOf(drawings[0]!));
  });

  it('keep the length that is given', () => {
    const sheet = { width: 2000, height: 250 };
    expect(routers(large, { sheet }).map(lengthOf)).toEqual([2000, 2000]);
  });
});

describe('on paper', () => {
  const sheet = { width: 3000, height: 250 };
  const [drawing] = routers(wineCask, { sheet });
  const paper = paperView(drawing!);

  it('a sheet is broken off past its last board, and says so', () => {
    expect(curvesOn(paper, 'outline')).toEqual(curvesOn(drawing!, 'outline'));
    expect(curvesOn(paper, 'bore')).toEqual(curvesOn(drawing!, 'bore'));
    expect(lengthOf(drawing!)).toBe(3000);
    expect(lengthOf(paper)).toBeCloseTo(reachOf(paper) + 12 + 8, 6);
    const [edge] = curvesOn(paper, 'station');
    expect(edge).toMatchObject({ closed: false });
    expect(paper.legend.notes).toEqual([en.router.notes.broken, ...drawing!.legend.notes]);
    expect(paper.legend.tables).toEqual(drawing!.legend.tables);
  });

  it('one that is hardly longer than its boards stays whole, and so does an empty one', () => {
    const short = { width: reachOf(drawing!) + 12 + 8 + 59, height: 250 };
    expect(routers(wineCask, { sheet: short })[0]!.forPaper).toBeUndefined();
    const longer = { ...short, width: short.width + 2 };
    expect(routers(wineCask, { sheet: longer })[0]!.forPaper).toBeDefined();
    const narrow = { width: 3000, height: 50 };
    expect(routers(wineCask, { sheet: narrow })[0]!.forPaper).toBeUndefined();
  });
});

/** Drawings made up for the tests of sheets: sizes and habits of real pieces, and nothing overlaps in them. */
import type { Part } from '../../src/drawing/build.js';
import { drawingOf, label, leaderLabel, merge, strokes } from '../../src/drawing/build.js';
import type { Drawing, Legend } from '../../src/drawing/drawing.js';
import { circle, line, polygon } from '../../src/geometry/curve.js';

const noLegend: Legend = { notes: [], tables: [] };

const shortLegend: Legend = {
  notes: ['Invented for a test.', 'It has two notes, and this one is long enough to be wrapped.'],
  tables: [{ title: 'Sizes', headings: ['place', 'width mm'], rows: [['left', '76.4']] }],
};

export const longLegend: Legend = {
  notes: Array.from(
    { length: 40 },
    (_, i) => `Note ${i + 1} of a legend that fills more than a page.`,
  ),
  tables: [1, 2].map((table) => ({
    title: `Table ${table}`,
    headings: ['station', 'width', 'bevel'],
    rows: Array.from({ length: 30 }, (_, i) => [`row ${i + 1}`, (70 + i / 10).toFixed(1), '6.4°']),
  })),
};

function box(width: number, height: number): Part {
  const [x, y] = [width / 2, height / 2];
  const corners = [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
  return strokes('outline', polygon(corners));
}

/** As long and thin as a stave: lines across it with upright lettering, and a long line of text along it. */
export function longAndThin(): Drawing {
  const stations = Array.from({ length: 19 }, (_, i) => -450 + 50 * i);
  const part = merge(
    box(980, 80),
    strokes('centre', line({ x: -500, y: 0 }, { x: 500, y: 0 })),
    ...stations.map((x) =>
      merge(
        strokes('station', line({ x, y: -40 }, { x, y: 40 })),
        label(`${x}: 76.4 wide`, { x: x + 1.5, y: 46 }, { angle: Math.PI / 2, height: 2.5 }),
        leaderLabel('edge of a hoop', { x: x + 8, y: -60 }, { x, y: -40 }, { height: 2.5 }),
      ),
    ),
    label('Stave of an invented cask, drawn for a test', { x: -480, y: 90 }, { height: 5 }),
  );
  return drawingOf('long', 'Long and thin', part, shortLegend);
}

/** As round as a head: nothing in the corners of its square. */
export function round(): Drawing {
  const joints = [-170, -85, 0, 85, 170];
  const part = merge(
    strokes('outline', circle({ x: 0, y: 0 }, 280)),
    strokes('bevel', circle({ x: 0, y: 0 }, 245)),
    ...joints.map((y) => {
      const x = Math.sqrt(280 ** 2 - y ** 2);
      return merge(
        strokes('joint', line({ x: -x, y }, { x, y })),
        label(`board from ${y}`, { x: -40, y: y + 20 }, { height: 3.5 }),
        label('dowels', { x: 90, y: y + 30 }, { height: 2.5 }),
      );
    }),
  );
  return drawingOf('round', 'Round', part, shortLegend);
}

export function tiny(): Drawing {
  const part = merge(box(60, 40), label('gauge', { x: 0, y: 0 }, { align: 'centre' }));
  return drawingOf('tiny', 'Tiny', part, shortLegend);
}

/** Large and nearly empty, with turned and slanting lettering all over. */
export function big(): Drawing {
  const places = Array.from({ length: 60 }, (_, i) => ({
    x: -1150 + 185 * (i % 12),
    y: -600 + 240 * Math.floor(i / 12),
  }));
  const part = merge(
    box(2400, 1300),
    strokes('outline', circle({ x: 0, y: 0 }, 30)),
    ...places.map((at, i) => label(`place ${i + 1}, lettered`, at, { angle: (i % 4) * 0.35 })),
  );
  return drawingOf('big', 'Big', part, longLegend);
}

/** One line of text longer than any small sheet is wide. */
export function wordy(): Drawing {
  const text =
    'a line of lettering that goes on and on, past the edge of every small sheet of paper, '.repeat(
      4,
    );
  return drawingOf(
    'wordy',
    'Wordy',
    merge(box(700, 30), label(text, { x: -340, y: -2 })),
    noLegend,
  );
}

export const drawings: Record<string, () => Drawing> = { longAndThin, round, tiny, big };

/** Each board of a head as a piece of its own, its blank about the origin. */
import type { Curve } from '../geometry/curve.js';
import { line } from '../geometry/curve.js';
import { closedFrom, joinCurves } from '../geometry/join.js';
import { translate } from '../geometry/transform.js';
import { drawingOf, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import type { Drawing, Stroke } from '../drawing/drawing.js';
import { shortLengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';
import type { Board } from '../vessel/boards.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { bores } from './head-bores.js';
import { boardLegend } from './head-legend.js';
import { namedHeads } from './head-names.js';
import { overlap, sideInside } from './rim.js';
import type { Words } from './words/index.js';

export function headBoards(vessel: Vessel, words: Words): Drawing[] {
  return namedHeads(vessel, words).flatMap(({ head, name, title }) =>
    head.boards.map((board, i) => {
      const heading = words.head.boardTitle(title, i + 1, head.boards.length);
      const part = boardPart(head, board, i, vessel.spec.units);
      return drawingOf(
        `${name}-board-${i + 1}`,
        heading,
        part,
        boardLegend(head, i, vessel.spec.units, words),
      );
    }),
  );
}

function boardPart(head: Head, board: Board, index: number, units: Units): Part {
  const middle = (board.from + board.to) / 2;
  const own = head.dowels.filter(({ joint }) => joint === index || joint === index + 1);
  const { outline, bevels } = boardLines(head, board);
  const inHead = merge(
    strokes('outline', outline),
    strokes('bevel', ...bevels),
    bores(own, head.spec, board.from, board.to),
    strokes('centre', line({ x: 0, y: board.from - 6 }, { x: 0, y: board.to + 6 })),
  );
  const half = (board.to - board.from) / 2;
  return merge(
    { strokes: inHead.strokes.map((stroke) => lowered(stroke, middle)), letterings: [] },
    blankDimensions(board, half, units, index === head.boards.length - 1, index === 0),
  );
}

function lowered({ layer, curve }: Stroke, by: number): Stroke {
  return { layer, curve: translate(curve, 0, -by) };
}

/** A board's lines in the head. */
interface BoardLines {
  readonly outline: Curve;
  readonly bevels: readonly Curve[];
}

/** Each board is drawn by itself and once more among those for a router; its lines are fitted once. */
const known = new WeakMap<Head, Map<Board, BoardLines>>();

export function boardLines(head: Head, board: Board): BoardLines {
  let ofHead = known.get(head);
  if (!ofHead) known.set(head, (ofHead = new Map()));
  let lines = ofHead.get(board);
  if (!lines) {
    lines = { outline: boardOutline(head, board), bevels: bevelLines(head, board) };
    ofHead.set(board, lines);
  }
  return lines;
}

/** The strip between two joints, cut off by the rim: right side up, left side down. */
function boardOutline({ rim }: Head, { from, to }: Board): Curve {
  return closedFrom([sideInside(rim, 0, 1, from, to), sideInside(rim, 0, -1, to, from)]);
}

/** Where the bevels meet the faces, within this board. A cant's line runs round; other boards have one on each side. */
function bevelLines(head: Head, { from, to }: Board): Curve[] {
  const { outerBevel, innerBevel } = head.spec.edge;
  return [outerBevel, innerBevel].flatMap((by): Curve[] => {
    const part = overlap(head.rim, by, from, to);
    if (!part) return [];
    const right = sideInside(head.rim, by, 1, part.from, part.to);
    const left = sideInside(head.rim, by, -1, part.to, part.from);
    const roundsTop = part.to < to;
    const roundsBottom = part.from > from;
    if (roundsTop && roundsBottom) return [closedFrom([right, left])];
    if (roundsTop) return [joinCurves([right, left])];
    if (roundsBottom) return [joinCurves([left, right])];
    return [right, left].map((vertices) => ({ closed: false, vertices }));
  });
}

/** The blank to saw first: what its outline adds to the board's own, on `station`; length below, width on the left. */
function blankDimensions(
  board: Board,
  half: number,
  units: Units,
  isTopCant: boolean,
  isBottomCant: boolean,
): Part {
  const end = board.length / 2;
  const [left, right] = [-end, end];
  const text = (mm: number): string => shortLengthText(mm, units);
  const level = (y: number): Curve => line({ x: left, y }, { x: right, y });
  return merge(
    strokes(
      'station',
      line({ x: left, y: -half }, { x: left, y: half }),
      line({ x: right, y: -half }, { x: right, y: half }),
      ...(isTopCant ? [level(half)] : []),
      ...(isBottomCant ? [level(-half)] : []),
    ),
    dimensionLine(
      text(board.length),
      { x: left, y: -half },
      { x: right, y: -half },
      { x: 0, y: -half - 18 },
    ),
    dimensionLine(
      text(2 * half),
      { x: left, y: -half },
      { x: left, y: half },
      { x: left - 10, y: 0 },
    ),
  );
}

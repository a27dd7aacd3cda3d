/** The boards of a head and their dowels. Boards run along `x`; board 1 is the lowest, joint 1 lies above it. */
import type { HeadSpec } from '../spec/spec.js';

/** Added to each board's longest chord, so that both ends can be sawn round (common practice, no source). */
export const boardLengthAllowance = 20;

export interface Board {
  /** lower and upper edge in the finished head */
  readonly from: number;
  readonly to: number;
  /** the blank: the board's width, and its longest chord plus the allowance */
  readonly width: number;
  readonly length: number;
  readonly chord: number;
}

export interface Dowel {
  /** number of the joint, 1 for the lowest */
  readonly joint: number;
  readonly x: number;
  readonly y: number;
}

/** The head's outline: half its diameter along the boards and across them. */
export interface Rim {
  readonly along: number;
  readonly across: number;
}

/** Half the chord of the rim at a distance `y` from its middle; 0 outside. */
export function halfChord(rim: Rim, y: number): number {
  return rim.along * Math.sqrt(Math.max(0, 1 - (y / rim.across) ** 2));
}

/** Heights of the board joints: the boards' widths laid edge to edge, centred, what stands over cut off the cants. */
export function jointsOf(head: HeadSpec, rim: Rim): number[] {
  const widths = head.widths ?? new Array<number>(head.boards).fill((2 * rim.across) / head.boards);
  const laid = widths.reduce((sum, width) => sum + width, 0);
  let y = -laid / 2;
  return widths.slice(0, -1).map((width) => (y += width));
}

export function boardsOf(head: HeadSpec, rim: Rim, joints: readonly number[]): Board[] {
  const edges = [-rim.across, ...joints, rim.across];
  return edges.slice(1).map((to, i) => {
    const from = edges[i]!;
    const nearest = from <= 0 && to >= 0 ? 0 : Math.min(Math.abs(from), Math.abs(to));
    const chord = 2 * halfChord(rim, nearest);
    return {
      from,
      to,
      width: head.widths?.[i] ?? to - from,
      chord,
      length: chord + boardLengthAllowance,
    };
  });
}

/**
 * Dowels of every joint, evenly spaced about the middle. A dowel's place keeps the wider bevel plus the margin from the
 * rim, and the whole of its bore stays inside the bevels, so that no drilling breaks out of an edge.
 */
export function dowelsOf(
  head: HeadSpec,
  rim: Rim,
  joints: readonly number[],
  boards: readonly Board[],
): Dowel[] {
  const bevel = Math.max(head.edge.outerBevel, head.edge.innerBevel);
  return joints.flatMap((y, i) => {
    if (!boreFits(head, boards[i]!, boards[i + 1]!, i, joints.length)) return [];
    const half = reachAlongJoint(head, rim, y, bevel);
    return placesAlong(half, head).map((x) => ({ joint: i + 1, x, y }));
  });
}

/** Whether the bores of a joint end inside both boards, and clear of the bores from each board's other joint. */
function boreFits(
  head: HeadSpec,
  below: Board,
  above: Board,
  joint: number,
  joints: number,
): boolean {
  const { length, diameter } = head.dowels;
  const need = (board: Board, isCant: boolean): boolean =>
    board.to - board.from >= (isCant ? length / 2 : length) + diameter / 2;
  return need(below, joint === 0) && need(above, joint === joints - 1);
}

/** How far from the middle of the joint at `y` a dowel's axis may stand; negative when nowhere. */
function reachAlongJoint(head: HeadSpec, rim: Rim, y: number, bevel: number): number {
  const { diameter, length, margin } = head.dowels;
  const inset = (by: number): Rim => ({ along: rim.along - by, across: rim.across - by });
  const place =
    Math.abs(y) < rim.across - bevel - margin ? halfChord(inset(bevel + margin), y) : -1;
  const boreEnd = Math.abs(y) + length / 2;
  const bore = boreEnd < rim.across - bevel ? halfChord(inset(bevel), boreEnd) - diameter / 2 : -1;
  return Math.min(place, bore);
}

/** Two dowels at least where two fit (one lets the boards turn about it), no wider apart than the spacing. */
function placesAlong(half: number, head: HeadSpec): number[] {
  const { diameter, spacing } = head.dowels;
  if (half < 0) return [];
  if (half < 2 * diameter) return [0];
  const gaps = Math.max(1, Math.floor((2 * half) / spacing));
  const step = Math.min(spacing, (2 * half) / gaps);
  return Array.from({ length: gaps + 1 }, (_, i) => (i - gaps / 2) * step);
}

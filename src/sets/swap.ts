/** One broken stave of a ring that stands: which spares of the rack take its place, or how wide a new one is cut. */
import { closesAt, halfAngle, widthAt, type Measured } from '../rack/closing.js';
import { PLANE_STEP } from '../rack/planing.js';
import type { MatchRequest } from '../rack/request.js';
import type { StockStave } from '../rack/stock.js';

export interface RingStave {
  readonly mark: string;
  /** measured as the request says */
  readonly width: number;
}

export interface SwapQuestion {
  /** all staves of the ring, the broken one among them */
  readonly ring: readonly RingStave[];
  /** its place in `ring`, from 0 */
  readonly broken: number;
  readonly spares: readonly StockStave[];
  readonly request: MatchRequest;
  /** whether it takes the bung; unless given, the widest does if it is wide enough */
  readonly isBungStave?: boolean;
}

export interface Replacement {
  readonly mark: string;
  readonly width: number;
  /** off its width, so that the ring closes where it did or, where so much may not be planed off, within the tolerance of it */
  readonly planeOff: number;
  /** outside diameter of the ring with it, after planing */
  readonly closesAt: number;
}

export interface Swap {
  readonly broken: RingStave;
  /** from 1 */
  readonly place: number;
  /** outside diameter at which the ring closes with the broken stave: heads and hoops fit it */
  readonly diameter: number;
  /** a new stave: the width that closes the ring there, and the widths that do within the tolerance */
  readonly cut: { readonly width: number; readonly from: number; readonly to: number };
  /** whether it must take the bung */
  readonly isBungStave: boolean;
  /** those that need no planing first, the nearest first; then by how little is planed off */
  readonly replacements: readonly Replacement[];
}

/** More than these are no choice but a list. */
const mostShown = 8;
/** Planing is told in whole steps; numbers of steps divided by this are round in decimals. */
const stepsPerMillimetre = Math.round(1 / PLANE_STEP);

/** Null when the ring doesn't close at all. */
export function swapStave(question: SwapQuestion): Swap | null {
  const { ring, broken, spares, request } = question;
  const { measured, tolerance } = request;
  const widths = ring.map(({ width }) => width);
  const diameter = closesAt(widths, measured);
  if (diameter === null) return null;
  const others = widths.filter((_, i) => i !== broken);
  const widthFor = (at: number): number => widthThatCloses(others, at, measured);
  const stave = ring[broken]!;
  const widest = request.bung !== null && stave.width >= Math.max(request.bung, ...others);
  const isBungStave = question.isBungStave ?? widest;
  const exact = widthFor(diameter);
  const replacements = spares
    .filter((spare) => fits(spare, request, isBungStave))
    .flatMap((spare) => replacement(spare, others, { exact, diameter, request }) ?? [])
    .sort((a, b) => a.planeOff - b.planeOff || off(a, diameter) - off(b, diameter));
  return {
    broken: stave,
    place: broken + 1,
    diameter,
    cut: { width: exact, from: widthFor(diameter - tolerance), to: widthFor(diameter + tolerance) },
    isBungStave,
    replacements: replacements.slice(0, mostShown),
  };
}

const off = ({ closesAt: at }: Replacement, diameter: number): number => Math.abs(at - diameter);

/** What is left of the half turn takes up this width. */
function widthThatCloses(others: readonly number[], diameter: number, measured: Measured): number {
  const taken = others.reduce((sum, width) => sum + halfAngle(width, diameter, measured), 0);
  return Math.max(0, widthAt(Math.PI - taken, diameter, measured));
}

function fits(spare: StockStave, request: MatchRequest, isBungStave: boolean): boolean {
  const { length, thicknessFor, bung } = request;
  if (length !== undefined && spare.length !== null && spare.length < length) return false;
  if (thicknessFor && spare.thickness !== null && spare.thickness < thicknessFor(spare.width))
    return false;
  return !isBungStave || (spare.bung !== false && spare.width >= (bung ?? 0));
}

interface Aim {
  readonly exact: number;
  readonly diameter: number;
  readonly request: MatchRequest;
}

/** As it is, within the tolerance; else, if it is too wide, planed to the width that is wanted, or as near to it as may be. */
function replacement(
  { mark, width }: StockStave,
  others: readonly number[],
  { exact, diameter, request }: Aim,
): Replacement | null {
  const { measured, tolerance, plane } = request;
  const asItIs = closesAt([...others, width], measured);
  if (asItIs !== null && Math.abs(asItIs - diameter) <= tolerance)
    return { mark, width, planeOff: 0, closesAt: asItIs };
  const wanted = Math.round((width - exact) * stepsPerMillimetre) / stepsPerMillimetre;
  const planeOff = Math.min(wanted, plane);
  if (planeOff <= 0) return null;
  const planed = closesAt([...others, width - planeOff], measured);
  if (planed === null || Math.abs(planed - diameter) > tolerance) return null;
  return { mark, width, planeOff, closesAt: planed };
}

/** Widths across the flat face, as a spec has them, as they are measured after backing. */
export function measuredWidths(
  widths: readonly number[],
  diameter: number,
  measured: Measured,
): number[] {
  if (measured === 'blank') return [...widths];
  return widths.map((width) => widthAt(halfAngle(width, diameter, 'blank'), diameter, measured));
}

/** What a cooper asks of a rack for one spec, with what is usual where nothing is said, as a request to the search. */
import { capacityLitres } from '../capacity/volume.js';
import { widthAt, halfAngle, type Measured } from '../rack/closing.js';
import type { MatchRequest } from '../rack/request.js';
import { greatestDiameter } from '../vessel/profile.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { headJoints } from './head-joints.js';

/** Lengths in mm. What is left out is settled by `usual...` below. */
export interface Wishes {
  readonly vessels?: number | 'max';
  readonly count?: { readonly min: number; readonly max: number };
  readonly tolerance?: number;
  readonly plane?: number;
  /** least width of the bung stave; null: none is needed */
  readonly bung?: number | null;
  readonly measured?: Measured;
  readonly standing?: readonly string[];
  readonly seed?: number;
}

/** Millimetres, or the nearest sixteenth of an inch (common practice, no source). */
const usualTolerance = { mm: 1.5, in: 25.4 / 16 } as const;
const usualPlane = { mm: 2, in: 25.4 / 16 } as const;

export function requestFor(vessel: Vessel, wishes: Wishes): MatchRequest {
  const { units } = vessel.spec;
  const diameter = greatestDiameter(vessel.spec);
  const measured = wishes.measured ?? 'blank';
  return {
    diameter,
    measured,
    vessels: wishes.vessels ?? 1,
    count: wishes.count ?? usualCount(vessel),
    tolerance: wishes.tolerance ?? usualTolerance[units],
    plane: wishes.plane ?? usualPlane[units],
    bung: wishes.bung === undefined ? usualBung(vessel) : wishes.bung,
    length: staveLength(vessel),
    thicknessFor: blankThickness(vessel, diameter, measured),
    headJoints: headJoints(vessel),
    ...(wishes.standing && { standing: wishes.standing }),
    ...(wishes.seed !== undefined && { seed: wishes.seed }),
  };
}

/** Wine casks of about 225 litres are made of 25 to 30 staves (common practice, no source). */
const wineCask = { litres: { least: 200, most: 250 }, count: { min: 25, max: 30 } };
/** How far any other vessel may be from the spec's count. */
const within = 2;
const fewest = 3;

function usualCount(vessel: Vessel): { min: number; max: number } {
  const { count } = vessel.spec.staves;
  const { litres, count: ofWine } = wineCask;
  if (vessel.spec.vessel === 'cask' && count >= ofWine.min && count <= ofWine.max) {
    const holds = capacityLitres(vessel);
    if (holds >= litres.least && holds <= litres.most) return ofWine;
  }
  return { min: Math.max(fewest, count - within), max: count + within };
}

/** On either side of the bung hole stays wood as wide as 0.4 of the hole: 90 mm for one of 50 (common practice, no source). */
const bungStaveOverHole = 1.8;

function usualBung({ spec }: Vessel): number | null {
  return spec.bung ? spec.bung.diameter * bungStaveOverHole : null;
}

/** From end to end of the blank, trim included: the shortest stave that the pattern can be laid on. */
function staveLength({ meanStave: { blankEnds } }: Vessel): number {
  const { top, bottom } = blankEnds;
  return Math.max(top.outer, top.inner) - Math.min(bottom.outer, bottom.inner);
}

function blankThickness(vessel: Vessel, diameter: number, measured: Measured) {
  const known = new Map<number, number>();
  const end = vessel.spec.height / 2;
  const thickest = (stave: Stave): number =>
    Math.max(...[0, end, -end].map((z) => stave.blankThicknessAt(z)));
  return (width: number): number => {
    const flat = flatWidth(width, diameter, measured);
    const thickness = known.get(width) ?? thickest(vessel.staveOfWidth(flat));
    known.set(width, thickness);
    return thickness;
  };
}

/** The width across the unbacked flat outer face of a stave that was measured so, in a ring of this diameter. */
export function flatWidth(width: number, diameter: number, measured: Measured): number {
  if (measured === 'blank') return width;
  return widthAt(halfAngle(width, diameter, measured), diameter, 'blank');
}

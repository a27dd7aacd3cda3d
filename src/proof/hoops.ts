/** Holds the hoops against the surface of the bent staves: where they are drawn on the stave, and how their straps close. */
import type { Curve } from '../geometry/curve.js';
import { boundsOf, type Bounds } from '../geometry/measure.js';
import { strapsOf, type Strap } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { widestHeight } from '../vessel/profile.js';
import type { Bending } from './bending.js';
import { towards } from './due.js';
import { judged, type Finding, type Place } from './finding.js';
import { counted } from './head.js';
import { hoopPlaces } from './hoop-place.js';
import type { Pattern } from './patterns.js';
import { hoopEdge, type StaveLines } from './stave-lines.js';
import { tolerance } from './tolerance.js';

/** A hoop on the surface of the bent staves. Lengths in mm. */
export interface Seat {
  readonly shortGirth: number;
  readonly longGirth: number;
  /** by how much its edges differ in radius */
  readonly rise: number;
  /** from edge to edge along the strap */
  readonly cover: number;
  /** height of the edge towards the end that its offset counts from */
  readonly near: number;
  /** whether a stave shows both edges; otherwise they are taken to be where they are due */
  readonly isDrawn: boolean;
}

/** In the order of the vessel's hoops, by the lines of a stave if there is one. */
export function hoopSeats(vessel: Vessel, lines: StaveLines | null, bending: Bending): Seat[] {
  const girth = (radius: number): number => 2 * radius * girthFactor(vessel);
  const widest = bending.sectionAt(widestHeight(vessel.spec)).r;
  return hoopPlaces(vessel).map((due, i) => {
    const drawn = (['near', 'far'] as const).map((edge) => {
      const station = lines?.drawnAt('hoop-line', hoopEdge(vessel, i, edge)) ?? null;
      return station === null ? null : bending.sectionAtStation(station);
    });
    const near = drawn[0] ?? bending.sectionAt(due.near);
    const far = drawn[1] ?? bending.sectionAt(due.far);
    const radii = due.straddles ? [widest, widest] : [near.r, far.r];
    const height = Math.abs(near.z - far.z);
    return {
      shortGirth: girth(Math.min(...radii)),
      longGirth: girth(Math.max(...radii)),
      rise: Math.max(...radii) - Math.min(...radii),
      cover: due.straddles ? height : Math.hypot(height, near.r - far.r),
      near: near.z,
      isDrawn: drawn.every((section) => section !== null),
    };
  });
}

/** Round the outside, as a share of its diameter: of a circle, or of the polygon of flat outer faces. */
function girthFactor({ spec, ring }: Vessel): number {
  if (spec.staves.outside === 'rounded') return Math.PI;
  return ring.alphas.reduce((sum, alpha) => sum + Math.tan(alpha), 0);
}

export function checkSeats(vessel: Vessel, seats: readonly Seat[], file: string): Finding[] {
  return seats.flatMap(({ near, cover, isDrawn }, i) => {
    if (!isDrawn) return [];
    const { spec, end } = vessel.hoops[i]!;
    const place = { number: i + 1, hoop: spec.name, end };
    return [
      judged('hoop-height', file, place, {
        measured: vessel.spec.height / 2 - towards(end) * near,
        expected: spec.offset,
        tolerance: tolerance.place,
      }),
      judged('hoop-cover', file, place, {
        measured: cover,
        expected: spec.width,
        tolerance: 2 * tolerance.place,
      }),
    ];
  });
}

/** What a strap must be to close on its seat. */
export interface DueStrap {
  readonly short: number;
  readonly long: number;
  readonly length: number;
  readonly driving: number;
}

/** Girths at the middle of the strap's thickness: half a thickness further out, square to the strap. */
export function dueStrap({ hoop, spec }: Strap, seat: Seat): DueStrap {
  const { shortGirth, longGirth, rise, cover } = seat;
  const cosine = Math.sqrt(1 - (rise / cover) ** 2);
  const outwards = Math.PI * spec.thickness * cosine;
  const short = shortGirth + outwards;
  return {
    short,
    long: longGirth + outwards,
    driving: hoop.driving,
    length: short + spec.lap - hoop.driving,
  };
}

export function checkStraps(vessel: Vessel, seats: readonly Seat[], pattern: Pattern): Finding[] {
  const straps = strapsOf(vessel.hoops);
  const strips = pattern
    .curves('outline')
    .flatMap((curve) => boundsOf(curve) ?? [])
    .sort((a, b) => b.maxY - a.maxY);
  const count = counted('strap-count', pattern.file, {}, strips.length, straps.length);
  if (!count.passed) return [count];
  const each = straps.flatMap((strap, i) =>
    strap.hoops.flatMap((hoop) => {
      const seat = seats[vessel.hoops.indexOf(hoop)]!;
      const place = { number: strap.number, hoop: strap.spec.name, end: hoop.end };
      return checkStrip(strap, seat, strips[i]!, pattern, place);
    }),
  );
  return [count, ...each];
}

function checkStrip(
  strap: Strap,
  seat: Seat,
  strip: Bounds,
  pattern: Pattern,
  place: Place,
): Finding[] {
  const { file } = pattern;
  const due = dueStrap(strap, seat);
  const { width, lap } = strap.spec;
  const length = strip.maxX - strip.minX;
  const judge = (
    check: 'strap-width' | 'strap-length' | 'strap-lap',
    measured: number,
    expected: number,
  ): Finding => judged(check, file, place, { measured, expected, tolerance: tolerance.strap });
  const inside = (curve: Curve): boolean =>
    curve.vertices.every(({ y }) => y < strip.maxY + 0.001 && y > strip.minY - 0.001);
  const laps = pattern
    .curves('station')
    .filter(inside)
    .map(({ vertices }) => vertices[0]!.x);
  const holes = pattern
    .curves('bore')
    .filter(inside)
    .map(middleX)
    .sort((a, b) => a - b);
  return [
    judge('strap-width', strip.maxY - strip.minY, width),
    judge('strap-length', length, due.length),
    ...(lap > 0 ? [judge('strap-lap', Math.min(...laps) - strip.minX, lap)] : []),
    ...girthOfHoles(holes).map((measured) =>
      judged('strap-girth', file, place, {
        measured,
        expected: due.short - due.driving,
        tolerance: tolerance.strap,
      }),
    ),
  ];
}

function middleX(curve: Curve): number {
  const { minX, maxX } = boundsOf(curve)!;
  return (minX + maxX) / 2;
}

/** Each hole is riveted to its own at the other end: the first of one end to the first of the other. */
function girthOfHoles(holes: readonly number[]): number[] {
  if (holes.length === 0) return [];
  const half = holes.length / 2;
  if (!Number.isInteger(half)) return [NaN];
  const girths = holes.slice(0, half).map((hole, i) => holes[half + i]! - hole);
  const spread = Math.max(...girths) - Math.min(...girths);
  return [spread > tolerance.strap ? NaN : girths.reduce((a, b) => a + b, 0) / half];
}

/**
 * Lettering on a set of tiles: each is whole on one of them and clear of the joins and marks. What a join would cut is
 * moved, if possible along its baseline and as little as can be, to where it meets no line and no other lettering; where
 * there is no such place it is made smaller, and if even that doesn't help it goes where it meets the fewest.
 */
import type { Lettering } from '../drawing/drawing.js';
import { nominalHeights } from '../drawing/heights.js';
import { letteringBox } from '../drawing/lettering.js';
import type { TurnedBox } from '../drawing/turned-box.js';
import { turnedBox } from '../drawing/turned-box.js';
import type { Curve, Point } from '../geometry/curve.js';
import { polyline } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOfPoints } from '../geometry/measure.js';
import { add, distance } from '../geometry/vector.js';
import { fitText } from './fit-text.js';
import type { Laid, LaidLettering } from './lay.js';
import { faultsAt, linesNear, type Obstacles } from './obstacles.js';
import { heightOf, holds, meet, widthOf } from './rectangle.js';
import { shiftedBox, shiftedCorners, shiftsNear } from './shifts.js';

/** Where lettering may stand on one tile, and what stands there already. */
export interface Region {
  readonly area: Bounds;
  readonly marks: readonly Bounds[];
}

export interface Settled {
  /** index of its region */
  readonly region: number;
  readonly lettering: Lettering;
}

export function settle(laid: Laid, regions: readonly Region[]): Settled[] {
  const places = laid.letterings.map((each) => unmoved(each, regions));
  if (!places.includes(null)) return places.filter((place) => place !== null);
  const taken = laid.letterings.map(({ lettering, corners }) =>
    turnedBox(corners, lettering.angle),
  );
  laid.letterings.forEach(({ lettering }, i) => {
    if (places[i]) return;
    const others = taken.filter((_, j) => j !== i);
    const place = bestPlace({ lettering, laid, regions, others });
    places[i] = place;
    taken[i] = turnedBoxOf(place.lettering);
  });
  return places.filter((place) => place !== null);
}

function unmoved({ lettering, box }: LaidLettering, regions: readonly Region[]): Settled | null {
  for (let region = 0; region < regions.length; region++) {
    const { area, marks } = regions[region]!;
    if (!holds(area, box)) continue;
    if (!marks.some((mark) => meet(mark, box))) return { region, lettering };
  }
  return null;
}

function turnedBoxOf(lettering: Lettering): TurnedBox {
  return turnedBox(letteringBox(lettering), lettering.angle);
}

interface Search {
  readonly lettering: Lettering;
  readonly laid: Laid;
  readonly regions: readonly Region[];
  /** boxes of all other lettering */
  readonly others: readonly TurnedBox[];
}

/** The first clear place at its own height, then at each smaller one; the least bad of all when none is clear. */
function bestPlace(search: Search): Settled {
  const { lettering, regions } = search;
  return (
    leastBad(heightsFor(lettering), search) ??
    leastBad(shortened(lettering, regions), search) ?? { region: 0, lettering }
  );
}

/** Null when no region holds any of the variants. */
function leastBad(variants: readonly Lettering[], search: Search): Settled | null {
  let least: { place: Settled; faults: number } | null = null;
  for (const variant of variants) {
    for (const { region, shift, box, obstacles } of placesFor(variant, search)) {
      const leader = movedLeader(variant, shift);
      const faults = faultsAt(box, leader, obstacles, least?.faults);
      if (!least || faults < least.faults)
        least = { place: { region, lettering: moved(variant, shift) }, faults };
      if (faults === 0) return least.place;
    }
  }
  return least?.place ?? null;
}

interface Candidate {
  readonly region: number;
  readonly shift: Point;
  readonly box: TurnedBox;
  readonly obstacles: Obstacles;
}

/** Places for one variant, the least move first, each with what could be in its way. */
function* placesFor(
  variant: Lettering,
  { lettering, laid, regions, others }: Search,
): Generator<Candidate> {
  const corners = letteringBox(variant);
  const box = boundsOfPoints(corners)!;
  const areas = regions.map(({ area }) => area);
  for (const shifts of shiftsNear(box, variant.angle, areas)) {
    const reached = boundsOfAll(
      shifts.map(({ shift }) => shiftedBox(box, shift)),
      variant.leader,
    )!;
    const near = {
      others: others.filter(({ bounds }) => meet(bounds, reached)),
      lines: linesNear(laid, lettering, reached),
    };
    for (const { region, shift } of shifts) {
      yield {
        region,
        shift,
        box: turnedBox(shiftedCorners(corners, shift), variant.angle),
        obstacles: { ...near, marks: regions[region]!.marks },
      };
    }
  }
}

/** Of a leader the end that stays is all that counts here: the rest moves along. */
function boundsOfAll(boxes: readonly Bounds[], leader: Curve | undefined): Bounds | null {
  const corners = boxes.flatMap(({ minX, minY, maxX, maxY }) => [
    { x: minX, y: minY },
    { x: maxX, y: maxY },
  ]);
  return boundsOfPoints(corners.length > 0 && leader ? [...corners, ...leader.vertices] : corners);
}

function heightsFor(lettering: Lettering): Lettering[] {
  const smaller = nominalHeights.filter((height) => height < lettering.height).reverse();
  return [lettering, ...smaller.map((height) => ({ ...lettering, height }))];
}

/** Text too long for any region even at the smallest height: cut shorter and shorter. */
function shortened(lettering: Lettering, regions: readonly Region[]): Lettering[] {
  const isUpright = Math.abs(Math.sin(lettering.angle)) > Math.abs(Math.cos(lettering.angle));
  const lengths = regions.map(({ area }) => (isUpright ? heightOf(area) : widthOf(area)));
  const longest = Math.max(...lengths);
  return [0.95, 0.8, 0.65, 0.5, 0.35, 0.2].map((part) => ({
    ...lettering,
    ...fitText(lettering.text, part * longest, lettering.height),
  }));
}

/** The lettering elsewhere; its leader still ends where it ended. */
function moved(lettering: Lettering, shift: Point): Lettering {
  const at = add(lettering.at, shift);
  const leader = movedLeader(lettering, shift);
  return leader ? { ...lettering, at, leader } : { ...lettering, at };
}

function movedLeader({ leader, at }: Lettering, shift: Point): Curve | undefined {
  if (!leader) return undefined;
  const { vertices } = leader;
  const [first, last] = [vertices[0]!, vertices.at(-1)!];
  const target = distance(first, at) <= distance(last, at) ? vertices.length - 1 : 0;
  return polyline(vertices.map((vertex, i) => (i === target ? vertex : add(vertex, shift))));
}

/**
 * Lettering on a set of tiles: each is whole on one of them and clear of the joins and marks. What a join would cut is
 * moved, if possible along its baseline and as little as can be, to where it meets no line and no other lettering; where
 * there is no such place it is made smaller, and if even that doesn't help it goes where it meets the fewest.
 */
import type { Lettering } from '../drawing/drawing.js';
import { flatten } from '../drawing/flatten.js';
import { nominalHeights } from '../drawing/heights.js';
import { letteringBox } from '../drawing/lettering.js';
import type { TurnedBox } from '../drawing/turned-box.js';
import { boxesMeet, chainMeets, turnedBox } from '../drawing/turned-box.js';
import type { Curve, Point } from '../geometry/curve.js';
import { polyline } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOfPoints } from '../geometry/measure.js';
import { add, distance } from '../geometry/vector.js';
import { fitText } from './fit-text.js';
import type { Laid, LaidLettering } from './lay.js';
import { grown, heightOf, holds, meet, widthOf } from './rectangle.js';

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

/** Lines are followed within this, mm. */
const flatness = 0.05;
/** Kept between moved lettering and what it must not meet, mm. */
const air = 0.3;
const step = { along: 2, across: 3 };
const reach = { along: 60, across: 12 };
/** Nearer places are tried first, and no more than these. */
const mostTries = 400;
const mostRegions = 4;
/** Lines farther away than this are out of reach of any move, mm. */
const farthest = 250;

interface Obstacles {
  readonly others: readonly TurnedBox[];
  readonly chords: readonly Chord[];
}

/** A straight piece of a line. */
interface Chord {
  readonly points: readonly [Point, Point];
  readonly bounds: Bounds;
  readonly margin: number;
  /** whose leader it is */
  readonly owner: Lettering | null;
}

export function settle(laid: Laid, regions: readonly Region[]): Settled[] {
  const places = laid.letterings.map((each) => unmoved(each, regions));
  if (!places.includes(null)) return places.filter((place) => place !== null);
  const chords = chordsOf(laid);
  const taken = laid.letterings.map(({ lettering }) => turnedBoxOf(lettering));
  laid.letterings.forEach(({ lettering, box }, i) => {
    if (places[i]) return;
    const others = taken.filter((_, j) => j !== i);
    const place = bestPlace(lettering, regions, {
      others,
      chords: chordsNear(box, lettering, chords),
    });
    places[i] = place;
    taken[i] = turnedBoxOf(place.lettering);
  });
  return places.filter((place) => place !== null);
}

function unmoved({ lettering, box }: LaidLettering, regions: readonly Region[]): Settled | null {
  const region = regions.findIndex(
    ({ area, marks }) => holds(area, box) && !marks.some((mark) => meet(mark, box)),
  );
  return region < 0 ? null : { region, lettering };
}

function chordsOf({ strokes, letterings }: Laid): Chord[] {
  const chords = (curve: Curve, width: number, owner: Lettering | null): Chord[] => {
    const chain = flatten(curve, flatness);
    return chain.slice(1).map((to, i): Chord => {
      const points = [chain[i]!, to] as const;
      return { points, bounds: boundsOfPoints(points)!, margin: width / 2 + air, owner };
    });
  };
  return [
    ...strokes.flatMap(({ curve, width }) => chords(curve, width, null)),
    ...letterings.flatMap(({ lettering }) =>
      lettering.leader ? chords(lettering.leader, 0.13, lettering) : [],
    ),
  ];
}

/** Those that the lettering could meet wherever it is tried; its own leader aside. */
function chordsNear(box: Bounds, lettering: Lettering, chords: readonly Chord[]): Chord[] {
  const area = grown(box, farthest);
  return chords.filter(({ bounds, owner }) => owner !== lettering && meet(bounds, area));
}

function turnedBoxOf(lettering: Lettering): TurnedBox {
  return turnedBox(letteringBox(lettering), lettering.angle);
}

/** The first clear place at its own height, then at each smaller one; the least bad of all when none is clear. */
function bestPlace(
  lettering: Lettering,
  regions: readonly Region[],
  obstacles: Obstacles,
): Settled {
  return (
    leastBad(heightsFor(lettering), regions, obstacles) ??
    leastBad(shortened(lettering, regions), regions, obstacles) ?? { region: 0, lettering }
  );
}

/** Null when no region holds any of the variants. */
function leastBad(
  variants: readonly Lettering[],
  regions: readonly Region[],
  obstacles: Obstacles,
): Settled | null {
  let least: { place: Settled; faults: number } | null = null;
  for (const variant of variants) {
    const corners = letteringBox(variant);
    for (const { region, shift } of shiftsNear(variant, boundsOfPoints(corners)!, regions)) {
      const box = turnedBox(shiftedCorners(corners, shift), variant.angle);
      const place = { region, lettering: moved(variant, shift) };
      const faults = faultsAt(place, box, regions, obstacles);
      if (faults === 0) return place;
      if (!least || faults < least.faults) least = { place, faults };
    }
  }
  return least?.place ?? null;
}

function heightsFor(lettering: Lettering): Lettering[] {
  const smaller = nominalHeights.filter((height) => height < lettering.height).reverse();
  return [lettering, ...smaller.map((height) => ({ ...lettering, height }))];
}

interface Shift {
  readonly region: number;
  readonly shift: Point;
  readonly cost: number;
}

/** Moves that bring the box into the nearest regions that hold it, the least first. */
function shiftsNear({ angle }: Lettering, box: Bounds, regions: readonly Region[]): Shift[] {
  const direction = { x: Math.cos(angle), y: Math.sin(angle) };
  const nearest = regions.flatMap(({ area }, region): Shift[] => {
    const shift = shiftInto(area, box);
    return shift ? [{ region, shift, cost: costOf(shift, direction) }] : [];
  });
  const byCost = (a: Shift, b: Shift) => a.cost - b.cost;
  return nearest
    .sort(byCost)
    .slice(0, mostRegions)
    .flatMap(({ region, shift: first }) =>
      slides(direction)
        .map((slide) => ({ x: first.x + slide.x, y: first.y + slide.y }))
        .filter((shift) => holds(regions[region]!.area, shiftedBox(box, shift)))
        .map((shift) => ({ region, shift, cost: costOf(shift, direction) })),
    )
    .sort(byCost)
    .slice(0, mostTries);
}

/** Moving across the baseline counts double. */
function costOf(shift: Point, direction: Point): number {
  const along = shift.x * direction.x + shift.y * direction.y;
  const across = shift.y * direction.x - shift.x * direction.y;
  return Math.hypot(along, 2 * across);
}

/** The least shift that brings a box into an area, or null when it is too large; a hair inside, against rounding. */
function shiftInto(area: Bounds, box: Bounds): Point | null {
  const inner = grown(area, -1e-6);
  if (widthOf(box) > widthOf(inner) || heightOf(box) > heightOf(inner)) return null;
  const into = (low: number, high: number, from: number, to: number) =>
    low < from ? from - low : high > to ? to - high : 0;
  return {
    x: into(box.minX, box.maxX, inner.minX, inner.maxX),
    y: into(box.minY, box.maxY, inner.minY, inner.maxY),
  };
}

function slides(direction: Point): Point[] {
  const all: Point[] = [];
  for (let along = -reach.along; along <= reach.along; along += step.along) {
    for (let across = -reach.across; across <= reach.across; across += step.across) {
      all.push({
        x: along * direction.x - across * direction.y,
        y: along * direction.y + across * direction.x,
      });
    }
  }
  return all;
}

type Corners = ReturnType<typeof letteringBox>;

function shiftedCorners([a, b, c, d]: Corners, shift: Point): Corners {
  return [add(a, shift), add(b, shift), add(c, shift), add(d, shift)];
}

function shiftedBox(box: Bounds, { x, y }: Point): Bounds {
  return { minX: box.minX + x, maxX: box.maxX + x, minY: box.minY + y, maxY: box.maxY + y };
}

/** The lettering elsewhere; its leader still ends where it ended. */
function moved(lettering: Lettering, shift: Point): Lettering {
  const move = (point: Point) => add(point, shift);
  const { leader } = lettering;
  const at = move(lettering.at);
  if (!leader) return { ...lettering, at };
  const vertices = leader.vertices;
  const [first, last] = [vertices[0]!, vertices.at(-1)!];
  const startsAtText = distance(first, lettering.at) <= distance(last, lettering.at);
  const target = startsAtText ? vertices.length - 1 : 0;
  const points = vertices.map((vertex, i) => (i === target ? vertex : move(vertex)));
  return { ...lettering, at, leader: polyline(points) };
}

/** How many marks, letterings and lines the box meets, and how many letterings its leader crosses, itself too. */
function faultsAt(
  { region, lettering }: Settled,
  box: TurnedBox,
  regions: readonly Region[],
  { others, chords }: Obstacles,
): number {
  const leader = lettering.leader ? flatten(lettering.leader, flatness) : [];
  const extent = boundsOfPoints(leader);
  return (
    count(regions[region]!.marks, (mark) => meet(mark, box.bounds)) +
    count(others, (other) => boxesMeet(box, other)) +
    count(chords, ({ points, bounds, margin }) => chainMeets(points, bounds, box, margin)) +
    (extent ? count([box, ...others], (other) => chainMeets(leader, extent, other, air)) : 0)
  );
}

function count<T>(items: readonly T[], test: (item: T) => boolean): number {
  return items.reduce((sum, item) => sum + (test(item) ? 1 : 0), 0);
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

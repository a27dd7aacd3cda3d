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
import { distance } from '../geometry/vector.js';
import { fitText } from './fit-text.js';
import type { Laid } from './lay.js';
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
const step = 1.5;
const reach = { along: 60, across: 12 };
/** Nearer places are tried first, and no more than these. */
const mostTries = 400;
const mostRegions = 4;

interface Chain {
  readonly points: readonly Point[];
  readonly bounds: Bounds;
  readonly margin: number;
  /** whose leader it is */
  readonly owner: Lettering | null;
}

export function settle(laid: Laid, regions: readonly Region[]): Settled[] {
  const chains = chainsOf(laid);
  const places = laid.letterings.map((lettering) => unmoved(lettering, regions));
  const taken = laid.letterings.map(boxOf);
  laid.letterings.forEach((lettering, i) => {
    if (places[i]) return;
    const others = taken.filter((_, j) => j !== i);
    const around = chains.filter(({ owner }) => owner !== lettering);
    const place = bestPlace(lettering, regions, others, around);
    places[i] = place;
    taken[i] = boxOf(place.lettering);
  });
  return places.filter((place) => place !== null);
}

function unmoved(lettering: Lettering, regions: readonly Region[]): Settled | null {
  const box = boundsOfPoints(letteringBox(lettering))!;
  const region = regions.findIndex(
    ({ area, marks }) => holds(area, box) && !marks.some((mark) => meet(mark, box)),
  );
  return region < 0 ? null : { region, lettering };
}

function chainsOf({ strokes, letterings }: Laid): Chain[] {
  const chain = (curve: Curve, width: number, owner: Lettering | null): Chain[] => {
    const points = flatten(curve, flatness);
    const bounds = boundsOfPoints(points);
    return bounds ? [{ points, bounds, margin: width / 2 + air, owner }] : [];
  };
  return [
    ...strokes.flatMap(({ curve, width }) => chain(curve, width, null)),
    ...letterings.flatMap((owner) => (owner.leader ? chain(owner.leader, 0.13, owner) : [])),
  ];
}

function boxOf(lettering: Lettering): TurnedBox {
  return turnedBox(letteringBox(lettering), lettering.angle);
}

/** The first clear place at its own height, then at each smaller one; the least bad of all when none is clear. */
function bestPlace(
  lettering: Lettering,
  regions: readonly Region[],
  others: readonly TurnedBox[],
  chains: readonly Chain[],
): Settled {
  let least: { place: Settled; faults: number } | null = null;
  for (const smaller of heightsFor(lettering)) {
    for (const place of placesNear(smaller, regions)) {
      const faults = faultsAt(place, regions, others, chains);
      if (faults === 0) return place;
      if (!least || faults < least.faults) least = { place, faults };
    }
  }
  return least?.place ?? squeezed(lettering, regions);
}

function heightsFor(lettering: Lettering): Lettering[] {
  const smaller = nominalHeights.filter((height) => height < lettering.height).reverse();
  return [lettering, ...smaller.map((height) => ({ ...lettering, height }))];
}

/** Places in the regions that hold it, those that need the least moving first. */
function placesNear(lettering: Lettering, regions: readonly Region[]): Settled[] {
  const box = boundsOfPoints(letteringBox(lettering))!;
  const direction = { x: Math.cos(lettering.angle), y: Math.sin(lettering.angle) };
  const nearest = regions
    .flatMap(({ area }, region) => {
      const first = shiftInto(area, box);
      return first ? [{ area, region, first, cost: costOf(first, direction) }] : [];
    })
    .sort((a, b) => a.cost - b.cost)
    .slice(0, mostRegions);
  const found = nearest.flatMap(({ area, region, first }) =>
    slides(direction)
      .map((slide) => ({ x: first.x + slide.x, y: first.y + slide.y }))
      .filter((shift) => holds(area, shifted(box, shift)))
      .map((shift) => ({ region, shift, cost: costOf(shift, direction) })),
  );
  found.sort((a, b) => a.cost - b.cost);
  return found
    .slice(0, mostTries)
    .map(({ region, shift }) => ({ region, lettering: moved(lettering, shift) }));
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
  for (let along = -reach.along; along <= reach.along; along += step) {
    for (let across = -reach.across; across <= reach.across; across += step) {
      all.push({
        x: along * direction.x - across * direction.y,
        y: along * direction.y + across * direction.x,
      });
    }
  }
  return all;
}

function shifted(box: Bounds, { x, y }: Point): Bounds {
  return { minX: box.minX + x, maxX: box.maxX + x, minY: box.minY + y, maxY: box.maxY + y };
}

/** The lettering elsewhere; its leader still ends where it ended. */
function moved(lettering: Lettering, shift: Point): Lettering {
  const move = ({ x, y }: Point) => ({ x: x + shift.x, y: y + shift.y });
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

/** How many marks, letterings and lines it meets there, and how many letterings its leader crosses. */
function faultsAt(
  { region, lettering }: Settled,
  regions: readonly Region[],
  others: readonly TurnedBox[],
  chains: readonly Chain[],
): number {
  const box = boxOf(lettering);
  const leader = lettering.leader ? flatten(lettering.leader, flatness) : [];
  const extent = boundsOfPoints(leader);
  return (
    count(regions[region]!.marks, (mark) => meet(mark, box.bounds)) +
    count(others, (other) => boxesMeet(box, other)) +
    count(chains, ({ points, bounds, margin }) => chainMeets(points, bounds, box, margin)) +
    (extent ? count(others, (other) => chainMeets(leader, extent, other, air)) : 0)
  );
}

function count<T>(items: readonly T[], test: (item: T) => boolean): number {
  return items.reduce((sum, item) => sum + (test(item) ? 1 : 0), 0);
}

/** Text too long for any region even at the smallest height: cut short for the longest one. */
function squeezed(lettering: Lettering, regions: readonly Region[]): Settled {
  const upright = Math.abs(Math.sin(lettering.angle)) > Math.abs(Math.cos(lettering.angle));
  const lengthOf = ({ area }: Region) => (upright ? heightOf(area) : widthOf(area));
  const region = regions.reduce(
    (best, each, i) => (lengthOf(each) > lengthOf(regions[best]!) ? i : best),
    0,
  );
  const fitted = fitText(lettering.text, 0.9 * lengthOf(regions[region]!), lettering.height);
  const short = { ...lettering, ...fitted };
  const box = boundsOfPoints(letteringBox(short))!;
  const shift = shiftInto(regions[region]!.area, box) ?? { x: 0, y: 0 };
  return { region, lettering: moved(short, shift) };
}

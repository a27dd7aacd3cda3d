/**
 * Bends a flat blank by numbers. The standing stave is cut into thin slices; each slice, laid flat, is as long as its
 * unstretched fibre, and slice by slice they give every section its station. Nothing here asks how the pattern was made:
 * it needs the outside radius and slope at a height, the thickness, and the depth of the unstretched fibre.
 */
import type { Vessel } from '../vessel/vessel.js';

/** A section square to the outer face, as it stands once the stave is bent. Lengths in mm. */
export interface Section {
  /** height and radius of the middle of its outer face */
  readonly z: number;
  readonly r: number;
  /** of the lean, positive where the vessel narrows upwards */
  readonly cos: number;
  readonly sin: number;
  /** finished thickness */
  readonly thickness: number;
}

export interface Bending {
  readonly sectionAt: (z: number) => Section;
  /** place on the flat blank of the section whose outer face stands at a height; NaN beyond the profile */
  readonly stationOf: (z: number) => number;
  /** null where the profile has ended */
  readonly sectionAtStation: (station: number) => Section | null;
  /** the section whose point at a depth below the outer face stands at a height */
  readonly sectionThrough: (height: number, depth: (section: Section) => number) => Section;
}

export const radiusAt = ({ r, cos }: Section, depth: number): number => r - depth * cos;
export const heightAt = ({ z, sin }: Section, depth: number): number => z - depth * sin;

/** Slices of a wine cask's stave are then half a millimetre long: stations come out to a few nanometres. */
const slicesPerHalf = 1536;

export function bendingOf(vessel: Pick<Vessel, 'spec' | 'profile'>): Bending {
  const { spec, profile } = vessel;
  const { thickness, endThickness, trim, neutral } = spec.staves;
  const sectionAt = (z: number): Section => {
    const lean = -Math.atan(profile.slope(z));
    const share = ((2 * z) / spec.height) ** 2;
    return {
      z,
      r: profile.radius(z),
      cos: Math.cos(lean),
      sin: Math.sin(lean),
      thickness: thickness + (endThickness - thickness) * share,
    };
  };
  // room for what an end cut adds and for the trim
  const reach = Math.min(profile.reach, 0.75 * spec.height + 2 * thickness + trim);
  const slices = slicesOf(sectionAt, reach, neutral);
  const stationOf = (z: number): number => between(slices.heights, slices.stations, z);
  const heightOf = (station: number): number => between(slices.stations, slices.heights, station);
  return {
    sectionAt,
    stationOf,
    sectionAtStation: (station) => {
      const z = heightOf(station);
      return Number.isNaN(z) ? null : sectionAt(z);
    },
    sectionThrough: (height, depth) => sectionThrough(sectionAt, height, depth),
  };
}

interface Slices {
  /** ascending, as the stations that belong to them */
  readonly heights: readonly number[];
  readonly stations: readonly number[];
}

function slicesOf(sectionAt: (z: number) => Section, reach: number, neutral: number): Slices {
  const step = reach / slicesPerHalf;
  const lay = (sign: 1 | -1): { heights: number[]; stations: number[] } => {
    const heights: number[] = [];
    const stations: number[] = [];
    let before = sectionAt(0);
    let station = 0;
    for (let i = 1; i <= slicesPerHalf; i++) {
      const section = sectionAt(sign * i * step);
      station += fibreBetween(before, section, neutral);
      heights.push(section.z);
      stations.push(station);
      before = section;
    }
    return { heights, stations };
  };
  const [up, down] = [lay(1), lay(-1)];
  return {
    heights: [...down.heights.reverse(), 0, ...up.heights],
    stations: [...down.stations.reverse(), 0, ...up.stations],
  };
}

/**
 * How much of the unstretched fibre lies between two neighbouring sections, along their mean direction and as the arc over
 * its chord; what a thinned wall adds square to it does not count.
 */
function fibreBetween(one: Section, other: Section, neutral: number): number {
  const [from, to] = [one, other].map((section) => ({
    radius: radiusAt(section, neutral * section.thickness),
    height: heightAt(section, neutral * section.thickness),
  })) as [{ radius: number; height: number }, { radius: number; height: number }];
  const half = Math.asin(other.sin * one.cos - other.cos * one.sin) / 2;
  const size = Math.hypot(one.sin + other.sin, one.cos + other.cos);
  const along =
    ((to.height - from.height) * (one.cos + other.cos) -
      (to.radius - from.radius) * (one.sin + other.sin)) /
    size;
  return Math.abs(half) < 1e-6 ? along : (along * half) / Math.sin(half);
}

/** Along a table of two ascending rows; NaN outside it. */
function between(from: readonly number[], to: readonly number[], x: number): number {
  let [low, high] = [0, from.length - 1];
  if (!(x >= from[low]! && x <= from[high]!)) return NaN;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (from[middle]! <= x) low = middle;
    else high = middle;
  }
  const share = (x - from[low]!) / (from[high]! - from[low]!);
  return to[low]! + share * (to[high]! - to[low]!);
}

/** The lean hardly changes over the step from the height to the section: putting the depth's share back in settles at once. */
function sectionThrough(
  sectionAt: (z: number) => Section,
  height: number,
  depth: (section: Section) => number,
): Section {
  let section = sectionAt(height);
  for (let i = 0; i < 100; i++) {
    const next = sectionAt(height + depth(section) * section.sin);
    const done = !(Math.abs(next.z - section.z) > 1e-10);
    section = next;
    if (done) break;
  }
  return section;
}

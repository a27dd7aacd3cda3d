/** Published vessels are given by their insides; a spec asks for outsides. These find the outside that has that inside. */
import type { BenchSpec } from '../bench-test/bench-spec.js';
import { bendOf } from '../bench-test/bend.js';
import { insideRadius } from '../bench-test/exact.js';

export interface InsideCask {
  profile: 'arc' | 'parabola' | 'ellipse';
  /** inside diameters at the bilge and at the heads' inside faces, and the length between those, mm */
  bilge: number;
  head: number;
  between: number;
  thickness: number;
  /** from the end plane to the head's inside face, mm */
  endToHead: number;
}

/** A cask of many hollowed staves whose inside has these measures; its end diameter is found by bisection. */
export function caskWithInside(inside: InsideCask): BenchSpec {
  const height = inside.between + 2 * inside.endToHead;
  const bilge = inside.bilge + 2 * inside.thickness;
  const withEnds = (ends: number): BenchSpec => ({
    ...plain(inside.thickness, inside.endToHead),
    vessel: 'cask',
    profile: inside.profile,
    height,
    bilge,
    ends,
  });
  let [low, high] = [bilge / 3, bilge - 1e-6];
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    const found = 2 * insideRadius(bendOf(withEnds(middle)), inside.between / 2);
    // a profile so steep that it ends before the head has no radius there: go wider
    if (found > inside.head) high = middle;
    else low = middle;
  }
  return withEnds((low + high) / 2);
}

export interface InsideTub {
  /** inside diameters at the rim and at the bottom's inside face, and the depth between them, mm */
  top: number;
  bottom: number;
  depth: number;
  thickness: number;
  endToHead: number;
}

/** A tub of straight staves: the outside lies `thickness / cos(lean)` outside the inside, everywhere. */
export function tubWithInside(inside: InsideTub): BenchSpec {
  const perHeight = (inside.top - inside.bottom) / inside.depth;
  const wall = 2 * inside.thickness * Math.hypot(1, perHeight / 2);
  return {
    ...plain(inside.thickness, inside.endToHead),
    vessel: 'tub',
    height: inside.depth + inside.endToHead,
    top: inside.top + wall,
    bottom: inside.bottom + wall - perHeight * inside.endToHead,
  };
}

/** Staves and heads that leave the inside alone: grooves and howels don't count towards capacity. */
function plain(thickness: number, endToHead: number): BenchSpec {
  const share = (of: number): number => of * thickness;
  const fromInside = Math.min(share(0.44), endToHead / 4);
  return {
    name: 'published inside',
    units: 'mm',
    vessel: 'cask',
    height: 0,
    bilge: 0,
    ends: 0,
    profile: 'arc',
    top: 0,
    bottom: 0,
    staves: {
      count: 40,
      widths: [],
      thickness,
      endThickness: thickness,
      inside: 'hollowed',
      outside: 'rounded',
      neutral: 0.5,
      ends: 'cut',
      trim: 10,
    },
    chime: { bevelDegrees: 40, flat: share(0.3) },
    howel: { depth: share(0.06), beyondGroove: share(0.7) },
    heads: {
      thickness: share(0.9),
      boards: 6,
      clearance: 0,
      crossGrain: 0,
      croze: { inset: endToHead - fromInside, depth: share(0.18), width: share(0.22) },
      edge: {
        thickness: share(0.2),
        fromInside,
        outerBevel: share(1.3),
        innerBevel: share(0.5),
      },
    },
  };
}

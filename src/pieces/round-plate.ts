/** Plates with one round edge, stacked: for backing and for hollowing. The round edge is the lower one. */
import type { Curve } from '../geometry/curve.js';
import { arc } from '../geometry/curve.js';
import { closedFrom } from '../geometry/join.js';
import { translate } from '../geometry/transform.js';
import { merge, strokes, type Part } from '../drawing/build.js';
import { plateWords } from './plate-words.js';

export interface RoundPlate {
  readonly radius: number;
  /** length of the round edge, straight across */
  readonly chord: number;
  /** hollow: fits a round face; otherwise it fits a hollow one */
  readonly hollow: boolean;
  readonly title: string;
  /** what the round edge is held against */
  readonly edge: string;
}

/** Least height of a plate, and the gap between two. */
const leastHeight = 40;
const gap = 14;
/** A plate spans this many staves, and at least and at most this much: mm, and radii. */
const staves = 1.5;
const shortest = 96;
const perRadius = 1.2;

/** A good length for the round edge where a stave is `width` wide. */
export function plateChord(width: number, radius: number): number {
  return Math.min(Math.max(staves * width, shortest), perRadius * radius);
}

/** The first plate has the lower end of its round edge at `y` 0; the others follow below. */
export function stackedPlates(plates: readonly RoundPlate[]): Part {
  let base = 0;
  const parts = plates.map((plate, i) => {
    if (i > 0) base -= gap + leastHeight + riseOf(plate);
    return plateAt(base, plate);
  });
  return merge(...parts);
}

const riseOf = ({ radius, chord }: RoundPlate): number =>
  radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2);

function plateAt(base: number, plate: RoundPlate): Part {
  const rise = riseOf(plate);
  const half = plate.chord / 2;
  const space = {
    left: 5 - half,
    right: half - 5,
    top: base + rise + leastHeight - 5,
    beside: half + 5,
  };
  return merge(
    strokes('outline', translate(outlineOf(plate, rise), 0, base)),
    plateWords(plate.title, [plate.edge], space),
  );
}

/** Counter-clockwise from the lower left; the round edge lies between 0 and `rise`. */
function outlineOf({ radius, chord, hollow }: RoundPlate, rise: number): Curve {
  const half = Math.asin(chord / 2 / radius);
  const corner = (x: number) => ({ x, y: rise + leastHeight, bulge: 0 });
  const down = -Math.PI / 2;
  const edge = hollow
    ? arc({ x: 0, y: rise - radius }, radius, half - down, -down - half)
    : arc({ x: 0, y: radius }, radius, down - half, down + half);
  return closedFrom([edge.vertices, [corner(chord / 2), corner(-chord / 2)]]);
}

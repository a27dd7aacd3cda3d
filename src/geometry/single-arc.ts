/** The one arc, or straight line, that follows a whole curve, if there is one. */
import type { Point, Vertex } from './curve.js';
import type { Path } from './path.js';
import { isBeside, leftDistance, segmentOf, type Segment } from './segment.js';
import { cross, distance, dot, minus, turned, unit } from './vector.js';

const searchSamples = 15;
const proofSamples = 48;

/** Rises flatter than this part of the tolerance are drawn straight: huge radii trouble other programs. */
const flatShare = 0.1;

/** Start and end vertex of an arc of at most half a circle within `target` mm of the path, or null. */
export function singleArc(path: Path, target: number): Vertex[] | null {
  const [from, to] = [path.at(0), path.at(1)];
  const chord = distance(from, to);
  if (!(chord > 0)) return null;
  const bulge = closestBulge(path, from, to, target);
  if (bulge === null || Math.abs(bulge) > 1 + 1e-9) return null;
  const flat = (Math.abs(bulge) * chord) / 2 < flatShare * target;
  const start = { x: from.x, y: from.y, bulge: flat ? 0 : bulge };
  const arc = segmentOf(start, to);
  for (let i = 0; i < proofSamples; i++)
    if (!isNear(arc, path.at((i + 0.5) / proofSamples), target)) return null;
  return [start, { x: to.x, y: to.y, bulge: 0 }];
}

function isNear(arc: Segment, point: Point, target: number): boolean {
  const { from, fromTangent, curvature } = arc;
  return (
    isBeside(arc, point) && Math.abs(leftDistance(from, fromTangent, curvature, point)) <= target
  );
}

/** The bulge whose largest distance from the path is least; null when that is clearly too large. */
function closestBulge(path: Path, from: Point, to: Point, target: number): number | null {
  const points: Point[] = [];
  for (let i = 0; i < searchSamples; i++) points.push(path.at((i + 0.5) / searchSamples));
  const middle = points[(searchSamples - 1) / 2]!;
  const [first, second] = [minus(middle, from), minus(to, middle)];
  const guess = Math.tan(Math.atan2(cross(first, second), dot(first, second)) / 2);
  const errors = offsets(points, from, to, guess);
  const chord = minus(to, from);
  const square = dot(chord, chord);
  // raising an arc by 1 mm in the middle raises it by this much elsewhere
  const weights = points.map(({ x, y }) => {
    const fraction = ((x - from.x) * chord.x + (y - from.y) * chord.y) / square;
    return Math.max(0.1, 4 * fraction * (1 - fraction));
  });
  const { shift, least } = bestShift(errors, weights);
  if (least > 1.2 * target) return null;
  // the arc of a positive bulge lies to the right of its chord: more bulge moves it right
  return guess - (2 * shift) / Math.sqrt(square);
}

/** Signed distances of the points from the arc, positive on its left. */
function offsets(points: readonly Point[], from: Point, to: Point, bulge: number): number[] {
  const half = 2 * Math.atan(bulge);
  const tangent = turned(unit(minus(to, from)), -half);
  const curvature = (2 * Math.sin(half)) / distance(from, to);
  return points.map((point) => leftDistance(from, tangent, curvature, point));
}

/** Finds the shift to the left that makes the largest of |error - shift * weight| least, by halving. */
function bestShift(errors: readonly number[], weights: readonly number[]) {
  let reach = 0;
  for (let i = 0; i < errors.length; i++) reach = Math.max(reach, 10 * Math.abs(errors[i]!));
  let low = -reach;
  let high = reach;
  let least = Infinity;
  for (let step = 0; step < 40; step++) {
    const shift = (low + high) / 2;
    let size = 0;
    let isLeft = false;
    for (let i = 0; i < errors.length; i++) {
      const left = errors[i]! - shift * weights[i]!;
      const off = left < 0 ? -left : left;
      if (off > size) {
        size = off;
        isLeft = left > 0;
      }
    }
    if (size < least) least = size;
    if (isLeft) low = shift;
    else high = shift;
  }
  return { shift: (low + high) / 2, least };
}

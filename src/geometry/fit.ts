/** Fits true arcs to a smooth curve, as few as the tolerance allows, each tangent to the next. */
import type { Biarc } from './biarc.js';
import { biarcBetween, biarcVertices, distanceFromBiarc } from './biarc.js';
import type { Vertex } from './curve.js';
import { mergeArcs } from './merge.js';
import type { Path, SmoothCurve } from './path.js';
import { pathAlong } from './path.js';
import { singleArc } from './single-arc.js';
import { fitShare, fitTolerance } from './tolerance.js';
import { distance } from './vector.js';

export type { SmoothCurve } from './path.js';

interface Fit {
  readonly breaks: readonly number[];
  readonly biarcs: readonly (Biarc | null)[];
  /** largest distance measured beside each biarc; Infinity where there is none */
  readonly errors: readonly number[];
}

const searchSamples = 9;
const proofSamples = 33;
const balancingRounds = 6;
const mostBiarcs = 1000;

/**
 * Arcs and straight lines that follow the curve from one parameter to another (either way), nowhere further
 * from it than `tolerance` mm. They are tangent to each other; the end points are exact and the ends'
 * directions within what the tolerance allows. The last vertex's bulge is 0.
 *
 * Throws when the curve gives numbers that aren't finite, or isn't smooth enough to be fitted.
 */
export function fitArcs(
  curve: SmoothCurve,
  from: number,
  to: number,
  tolerance = fitTolerance,
): Vertex[] {
  const path = pathAlong(curve, from, to);
  return singleArc(path, tolerance * fitShare) ?? fitPath(path, tolerance);
}

/** As `fitArcs`, with the curve's own direction at both ends, so that two runs can be joined smoothly. */
export function fitTangentArcs(
  curve: SmoothCurve,
  from: number,
  to: number,
  tolerance = fitTolerance,
): Vertex[] {
  return fitPath(pathAlong(curve, from, to), tolerance);
}

function fitPath(path: Path, tolerance: number): Vertex[] {
  const target = tolerance * fitShare;
  let fit = fitAt(path, [0, 1]);
  let best: Fit | null = null;
  let tooFew = 0;
  for (let count = 1; count <= mostBiarcs; count = nextCount(fit, target, tooFew, best)) {
    if (count > 1) fit = balancedFit(path, balancedBreaks(fit, count), target);
    if (worst(fit) <= target && proofError(path, fit) <= target) best = fit;
    else tooFew = count;
    if (best && tooFew === best.errors.length - 1) return verticesOf(best);
  }
  throw new RangeError('fit: the curve is not smooth enough');
}

/** The number of pieces to try next: more than any that failed, fewer than any that did. */
function nextCount(fit: Fit, target: number, tooFew: number, best: Fit | null): number {
  // small numbers are tried one by one: the estimate is good only once the pieces are short
  const estimate = tooFew < 8 && !best ? 0 : Math.floor(0.9 * piecesNeeded(fit, target));
  const guess = Number.isFinite(estimate) ? Math.max(tooFew + 1, estimate) : tooFew + 1;
  return best ? Math.min(guess, best.errors.length - 1) : guess;
}

/** Moves the breaks until the errors are about equal, or it is clear that there are too few pieces. */
function balancedFit(path: Path, breaks: readonly number[], target: number): Fit {
  const count = breaks.length - 1;
  let fit = fitAt(path, breaks);
  let best = fit;
  for (let round = 1; round < balancingRounds; round++) {
    const hopeless = piecesNeeded(fit, target) > (round === 1 ? 1.5 : 1.1) * count;
    const balanced = worst(fit) < Math.max(1.2 * Math.min(...fit.errors), 1e-3 * target);
    if (hopeless || balanced) break;
    fit = fitAt(path, balancedBreaks(fit, count));
    if (worst(fit) < worst(best)) best = fit;
  }
  return best;
}

function fitAt(path: Path, breaks: readonly number[]): Fit {
  const places = breaks.map((fraction) => path.place(fraction));
  const biarcs: (Biarc | null)[] = [];
  const errors: number[] = [];
  for (let i = 0; i + 1 < breaks.length; i++) {
    const biarc = biarcBetween(places[i]!, places[i + 1]!);
    biarcs.push(biarc);
    errors.push(biarc ? errorOf(path, biarc, breaks[i]!, breaks[i + 1]!, searchSamples) : Infinity);
  }
  return { breaks, biarcs, errors };
}

function errorOf(path: Path, biarc: Biarc, from: number, to: number, samples: number): number {
  let error = 0;
  for (let i = 0; i < samples; i++) {
    const point = path.at(from + ((i + 0.5) / samples) * (to - from));
    error = Math.max(error, distanceFromBiarc(biarc, point));
  }
  return error;
}

function worst(fit: Fit): number {
  return Math.max(...fit.errors);
}

/** The largest error again, measured at more places than the search looked at. */
function proofError(path: Path, fit: Fit): number {
  return Math.max(
    ...fit.biarcs.map((biarc, i) =>
      biarc ? errorOf(path, biarc, fit.breaks[i]!, fit.breaks[i + 1]!, proofSamples) : Infinity,
    ),
  );
}

/** How many biarcs would do: a biarc's error grows with the cube of its length. */
function piecesNeeded(fit: Fit, target: number): number {
  return fit.errors.reduce((sum, error) => sum + Math.cbrt(error / target), 0);
}

/** Breaks for `count` pieces, each with an equal share of the sum of cube roots of the errors. */
function balancedBreaks(fit: Fit, count: number): number[] {
  const { breaks, errors } = fit;
  const most = worst(fit);
  const weights = errors.map((error) =>
    Number.isFinite(most) ? Math.cbrt(Math.max(error, 1e-3 * most)) : 1,
  );
  const share = weights.reduce((sum, weight) => sum + weight, 0) / count;
  const moved = [0];
  let piece = 0;
  let passed = 0;
  for (let i = 1; i < count; i++) {
    while (piece < weights.length - 1 && passed + weights[piece]! < i * share) {
      passed += weights[piece++]!;
    }
    const part = Math.min(1, (i * share - passed) / weights[piece]!);
    moved.push(breaks[piece]! + part * (breaks[piece + 1]! - breaks[piece]!));
  }
  return [...moved, 1];
}

function verticesOf(fit: Fit): Vertex[] {
  const biarcs = fit.biarcs.filter((biarc) => biarc !== null);
  const vertices = biarcs.flatMap((biarc) => biarcVertices(biarc));
  const last = biarcs.at(-1)!.to.point;
  const smooth = vertices.filter((v, i) => distance(v, vertices[i + 1] ?? last) > 0);
  return mergeArcs([...smooth, { ...last, bulge: 0 }]);
}

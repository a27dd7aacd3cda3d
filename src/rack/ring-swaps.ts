/**
 * What a ring would measure after two staves change places, told from running sums and not by walking round it again:
 * the joints between the two places all shift by the same angle, so sums over them shift and turn as a whole.
 */

import {
  FAULT,
  imbalanceOf,
  inLine,
  narrowPair,
  shortOfMean,
  unevenness,
  type RingFacts,
} from './ring-measure.js';

/** Sums over an order as it stands; made anew after every exchange that is kept. */
export class RingSums {
  /** azimuth where each place begins, and where the last one ends */
  private readonly edge: Float64Array;
  /** by place, sums over all places before it: */
  private readonly strays: Float64Array;
  private readonly straysSquared: Float64Array;
  private readonly east: Float64Array;
  private readonly north: Float64Array;
  private readonly inLine: Float64Array;
  private readonly narrowPairs: number;

  constructor(
    private readonly facts: RingFacts,
    private readonly order: readonly number[],
  ) {
    const n = order.length;
    const sums = (): Float64Array => new Float64Array(n + 1);
    this.edge = sums();
    [this.strays, this.straysSquared, this.inLine] = [sums(), sums(), sums()];
    [this.east, this.north] = [sums(), sums()];
    this.edge[0] = -facts.halfAngles[order[0]!]!;
    for (let i = 0; i < n; i++) this.pass(i);
    let pairs = 0;
    for (let i = 0; i < n; i++) pairs += narrowPair(facts, order[i]!, order[(i + 1) % n]!);
    this.narrowPairs = pairs;
  }

  private pass(i: number): void {
    const { facts, order, edge, strays, straysSquared, east, north } = this;
    const { halfAngles, headJoints } = facts;
    const half = halfAngles[order[i]!]!;
    const over = this.over(order[i]!);
    const end = edge[i]! + 2 * half;
    const stray = end - ((2 * i + 1) * Math.PI) / order.length;
    edge[i + 1] = end;
    strays[i + 1] = strays[i]! + stray;
    straysSquared[i + 1] = straysSquared[i]! + stray * stray;
    east[i + 1] = east[i]! + over * Math.sin(edge[i]! + half);
    north[i + 1] = north[i]! + over * Math.cos(edge[i]! + half);
    this.inLine[i + 1] = this.inLine[i]! + (headJoints.length > 0 ? inLine(facts, end) : 0);
  }

  /**
   * No more than what the ring measures once the staves at places `a` < `b` (neither the top) are exchanged; exactly
   * that, but for rounding, when there are no head joints. Infinity as soon as it is sure to exceed `limit`.
   */
  measureAfter(a: number, b: number, limit: number): number {
    const shift = 2 * (this.half(b) - this.half(a));
    const least = this.unevenAfter(a, b, shift) + FAULT * this.faultsAfter(a, b);
    return least > limit ? Infinity : least + this.imbalanceAfter(a, b, shift);
  }

  private half(place: number): number {
    return this.facts.halfAngles[this.order[place]!]!;
  }

  private over(stave: number): number {
    return this.facts.widths[stave]! - this.facts.meanWidth;
  }

  private unevenAfter(a: number, b: number, shift: number): number {
    const { strays, straysSquared } = this;
    const n = this.order.length;
    const shifted = b - a;
    const total = strays[n]! + shifted * shift;
    const squared =
      straysSquared[n]! + 2 * shift * (strays[b]! - strays[a]!) + shifted * shift * shift;
    return unevenness(this.facts, n, total, squared);
  }

  private imbalanceAfter(a: number, b: number, shift: number): number {
    const { edge, east, north, order } = this;
    const n = order.length;
    const [sin, cos] = [Math.sin(shift), Math.cos(shift)];
    const between = { east: east[b]! - east[a + 1]!, north: north[b]! - north[a + 1]! };
    const [atA, atB] = [edge[a]! + this.half(b), edge[b + 1]! - this.half(a)];
    const [overA, overB] = [this.over(order[b]!), this.over(order[a]!)];
    const outside = {
      east: east[a]! + east[n]! - east[b + 1]!,
      north: north[a]! + north[n]! - north[b + 1]!,
    };
    return imbalanceOf(
      n,
      outside.east +
        between.east * cos +
        between.north * sin +
        overA * Math.sin(atA) +
        overB * Math.sin(atB),
      outside.north +
        between.north * cos -
        between.east * sin +
        overA * Math.cos(atA) +
        overB * Math.cos(atB),
    );
  }

  private faultsAfter(a: number, b: number): number {
    const { facts, order, inLine } = this;
    const n = order.length;
    const after = (place: number): number => order[place === a ? b : place === b ? a : place % n]!;
    const change = (place: number): number =>
      narrowPair(facts, after(place), after(place + 1)) -
      narrowPair(facts, order[place]!, order[(place + 1) % n]!);
    let pairs = this.narrowPairs + change(a - 1) + change(a) + change(b);
    if (b > a + 1) pairs += change(b - 1);
    const low = shortOfMean(facts, after(1)) + shortOfMean(facts, after(n - 1));
    // joints between the two places shift: they may all come out of line
    return low + pairs + inLine[a]! + inLine[n]! - inLine[b]!;
  }
}

/** A closed stave outline taken apart: two ends square to its length, and two long edges as functions of the station. */
import { heightAt, pointOn } from './arcs.js';
import type { Segment } from './arcs.js';
import type { Chain } from './read-dxf.js';

export interface StaveEdges {
  /** stations of the two square ends */
  left: number;
  right: number;
  /** how far the ends are from straight and square */
  endRaggedness: number;
  upper: Segment[];
  lower: Segment[];
  /** distance of the edge from the centre line; positive on its own side */
  upperAt(station: number): number;
  lowerAt(station: number): number;
}

/** Null when the curve isn't two ends and two edges. */
export function staveEdges(chain: Chain): StaveEdges | null {
  const ends = chain.segments.filter((s) => Math.sign(s.from.y) !== Math.sign(s.to.y));
  const upper = byStation(chain.segments.filter((s) => s.from.y > 0 && s.to.y > 0));
  const lower = byStation(chain.segments.filter((s) => s.from.y < 0 && s.to.y < 0));
  const [one, other] = ends;
  if (!one || !other || ends.length !== 2 || upper.length === 0 || lower.length === 0) return null;
  const [leftEnd, rightEnd] = one.from.x < other.from.x ? [one, other] : [other, one];
  return {
    left: middleX(leftEnd),
    right: middleX(rightEnd),
    endRaggedness: Math.max(spreadX(leftEnd), spreadX(rightEnd)),
    upper,
    lower,
    upperAt: (station) => heightAt(segmentAt(upper, station), station),
    lowerAt: (station) => -heightAt(segmentAt(lower, station), station),
  };
}

const leftX = (s: Segment): number => Math.min(s.from.x, s.to.x);
const middleX = (s: Segment): number => (s.from.x + s.to.x) / 2;
const byStation = (segments: Segment[]): Segment[] => segments.sort((a, b) => leftX(a) - leftX(b));

function spreadX(end: Segment): number {
  return Math.max(
    ...[0, 0.25, 0.5, 0.75, 1].map((u) => Math.abs(pointOn(end, u).x - middleX(end))),
  );
}

function segmentAt(segments: Segment[], station: number): Segment {
  const found = segments.findLast((s) => leftX(s) <= station) ?? segments[0];
  if (found === undefined) throw new Error('an edge without segments');
  return found;
}

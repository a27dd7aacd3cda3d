/**
 * What of a drawing must come onto paper: its lines and leaders, and the middles of its lettering. Enough to count, for
 * every way of tiling it, which tiles are needed.
 */
import type { Curve, Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOf } from '../geometry/measure.js';
import type { Segment } from '../geometry/segment.js';
import { pointOn, segmentsOf } from '../geometry/segment.js';
import { coincident } from '../geometry/tolerance.js';
import { distance } from '../geometry/vector.js';
import type { Laid } from './lay.js';

/** The points of a line that count are nowhere farther apart than this along it, mm. */
export const sampling = 4;
/** Boxes are larger than what is in them by this: what arithmetic on arcs may be out by, mm. */
const rounding = 1e-6;
/** Lines that reach farther than this stand first, mm: they need most of the tiles, and then little is left to look at. */
const far = 100;

export interface Traces {
  /** round each of the traces, as the drawing is turned: minX, minY, maxX and maxY by turns */
  readonly boxes: readonly number[];
  /** in the same order, before the drawing is turned */
  readonly traced: readonly Traced[];
  readonly quarter: 0 | 1 | -1;
}

type Traced = TracedLine | Point;

/** How far at most a point gets each way while it moves on by 1 mm along a line. */
export interface Speeds {
  readonly right: number;
  readonly left: number;
  readonly up: number;
  readonly down: number;
}

/** Few lines are ever walked along: the rest lie within a tile. */
class TracedLine {
  private known: readonly (readonly [Segment, Speeds])[] | null = null;

  constructor(private readonly curve: Curve) {}

  get segments(): readonly (readonly [Segment, Speeds])[] {
    return (this.known ??= segmentsOf(this.curve).map((segment) => [segment, speedsOf(segment)]));
  }
}

/** Each way as fast as at the faster end, or fully where an arc turns through that direction in between. */
function speedsOf({ fromTangent: from, toTangent: to, sweep }: Segment): Speeds {
  if (Math.abs(sweep) > Math.PI) return { right: 1, left: 1, up: 1, down: 1 };
  const turn = Math.sign(sweep);
  // turning left, it comes to point right from below, up from the right, and so on
  const turnsThrough = (before: number, after: number): boolean =>
    turn !== 0 && turn * before <= 0 && turn * after >= 0;
  return {
    right: turnsThrough(from.y, to.y) ? 1 : Math.max(from.x, to.x),
    left: turnsThrough(-from.y, -to.y) ? 1 : Math.max(-from.x, -to.x),
    up: turnsThrough(-from.x, -to.x) ? 1 : Math.max(from.y, to.y),
    down: turnsThrough(from.x, to.x) ? 1 : Math.max(-from.y, -to.y),
  };
}

function turnedSpeeds(speeds: Speeds, quarter: Traces['quarter']): Speeds {
  const { right, left, up, down } = speeds;
  if (quarter === 0) return speeds;
  return quarter === 1
    ? { right: down, left: up, up: right, down: left }
    : { right: up, left: down, up: left, down: right };
}

const standing: Speeds = { right: 0, left: 0, up: 0, down: 0 };

export function tracesOf({ strokes, letterings }: Laid): Traces {
  const long = { boxes: [] as number[], traced: [] as Traced[] };
  const short = { boxes: [] as number[], traced: [] as Traced[] };
  const add = (curve: Curve, { minX, minY, maxX, maxY }: Bounds): void => {
    const { boxes, traced } = maxX - minX > far || maxY - minY > far ? long : short;
    boxes.push(minX - rounding, minY - rounding, maxX + rounding, maxY + rounding);
    traced.push(new TracedLine(curve));
  };
  for (const { curve, bounds } of strokes) if (hasSegment(curve)) add(curve, bounds);
  for (const { lettering, box } of letterings) {
    const { leader } = lettering;
    if (leader && hasSegment(leader)) add(leader, boundsOf(leader)!);
    const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
    short.boxes.push(middle.x, middle.y, middle.x, middle.y);
    short.traced.push(middle);
  }
  return {
    boxes: [...long.boxes, ...short.boxes],
    traced: [...long.traced, ...short.traced],
    quarter: 0,
  };
}

/** Whether there is a point to it: what has no length is not drawn. */
function hasSegment({ closed, vertices }: Curve): boolean {
  for (let i = closed ? 0 : 1; i < vertices.length; i++) {
    const before = vertices[i === 0 ? vertices.length - 1 : i - 1]!;
    if (distance(before, vertices[i]!) >= coincident) return true;
  }
  return false;
}

/** Turned about the origin by a quarter, to the left when it is 1. */
export function turnedTraces({ boxes, traced }: Traces, quarter: 1 | -1): Traces {
  const turned: number[] = [];
  for (let i = 0; i < boxes.length; i += 4) {
    const [minX, minY] = [boxes[i]!, boxes[i + 1]!];
    const [maxX, maxY] = [boxes[i + 2]!, boxes[i + 3]!];
    if (quarter === 1) turned.push(-maxY, minX, -minY, maxX);
    else turned.push(minY, -maxX, maxY, -minX);
  }
  return { boxes: turned, traced, quarter };
}

/**
 * Calls `visit` with the points of the trace at an index, in order. It answers how far along the line there is nothing new
 * to see at such speeds, mm: those points are passed over.
 */
export function visitPoints(
  { traced, quarter }: Traces,
  index: number,
  visit: (x: number, y: number, speeds: Speeds) => number,
): void {
  const visitTurned = ({ x, y }: Point, speeds: Speeds): number =>
    quarter === 0 ? visit(x, y, speeds) : visit(-quarter * y, quarter * x, speeds);
  const trace = traced[index]!;
  if (!(trace instanceof TracedLine)) {
    visitTurned(trace, standing);
    return;
  }
  const { segments } = trace;
  for (let k = 0; k < segments.length; k++) {
    const [segment, speeds] = segments[k]!;
    const { length, from, to } = segment;
    const count = Math.max(1, Math.ceil(length / sampling));
    // where the next segment starts, it is visited
    const isVisited = segments[(k + 1) % segments.length]![0].from === to;
    const last = isVisited ? count - 1 : count;
    const turned = turnedSpeeds(speeds, quarter);
    let i = 0;
    while (i <= last) {
      const point = i === 0 ? from : i === count ? to : pointOn(segment, (length * i) / count);
      i += Math.max(1, Math.floor(visitTurned(point, turned) / sampling));
    }
  }
}

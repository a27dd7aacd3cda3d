/**
 * Plates that are held on a finished stave end from inside: a hook lies on the end, a body runs down the inside. The
 * origin is the end plane at the radius of the groove's bottom; `x` grows outwards, the end is always up.
 */
import type { Point, Vertex } from '../geometry/curve.js';
import { fitArcs } from '../geometry/fit.js';
import { closedFrom } from '../geometry/join.js';
import { leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import { heights } from '../drawing/heights.js';
import { shortLengthText } from '../drawing/length-text.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { plateWords } from './plate-words.js';
import { spread } from './spread.js';
import type { Words } from './words/index.js';

/** Height of the hook above the end plane, and width of the body at its narrowest. */
const hook = 26;
const body = 44;
/** Distance between lines of labels, and of columns of dimensions; how far beside the plate they stand. */
const row = 6;
const column = 11;
const beside = 14;

export interface EndView {
  readonly vessel: Vessel;
  readonly head: Head;
  /** what is added to the name of its file, and the end's name; nothing where one gauge serves both ends */
  readonly suffix: string;
  readonly end: string | null;
}

export interface EndPlate {
  readonly part: Part;
  /** where the body ends, away from the stave */
  readonly left: number;
}

/** The ends that have a groove; one where both are worked alike, and for a tub. */
export function endViews(vessel: Vessel, words: Words): EndView[] {
  const { top, bottom } = vessel.heads;
  if (!top || isWorkedAlike(top, bottom)) return [{ vessel, head: bottom, suffix: '', end: null }];
  return [top, bottom].map((head) => {
    const { end } = head.groove;
    return { vessel, head, suffix: `-${end}`, end: words.ends[end] };
  });
}

function isWorkedAlike(a: Head, b: Head): boolean {
  const [first, second] = [a, b].map(({ spec }) => JSON.stringify(spec.croze));
  return first === second;
}

/** From a radius and a height in the vessel to the plate's own frame. */
export function endPlace({ vessel, head }: EndView, radius: number, height: number): Vertex {
  const { towardsEnd, radius: bottom } = head.groove;
  return { x: radius - bottom, y: height * towardsEnd - vessel.spec.height / 2, bulge: 0 };
}

/** The finished howel between two heights, from the first to the second. */
export function howelRun(view: EndView, from: number, to: number): Vertex[] {
  const { howelRadius } = view.head.groove;
  const place = (height: number) => endPlace(view, howelRadius(height), height);
  const half = 0.05;
  const curve = {
    at: place,
    tangent: (height: number) => {
      const [before, after] = [place(height - half), place(height + half)];
      return { x: after.x - before.x, y: after.y - before.y };
    },
  };
  return fitArcs(curve, from, to);
}

/** The outside of the stave at the end plane: there the hook ends, flush. */
export function outsideCorner(view: EndView): Vertex {
  const plane = view.head.groove.towardsEnd * (view.vessel.spec.height / 2);
  return endPlace(view, view.vessel.profile.radius(plane), plane);
}

/** Closes the working edge, from its foot up to the end plane, with hook and body; its name stands on the hook. */
export function endPlate(
  view: EndView,
  edge: readonly (readonly Vertex[])[],
  name: string,
  words: Words,
): EndPlate {
  const outer = outsideCorner(view);
  const points = edge.flat();
  const left = Math.min(...points.map(({ x }) => x)) - body;
  const foot = Math.min(...points.map(({ y }) => y));
  const corner = (x: number, y: number): Vertex => ({ x, y, bulge: 0 });
  const back = [outer, corner(outer.x, hook), corner(left, hook), corner(left, foot)];
  const part = merge(
    strokes('outline', closedFrom([...edge, back])),
    plateWords(name, [words.gauges.held], {
      left: left + 4,
      right: outer.x - 3,
      top: hook - 4,
      beside: outer.x + beside,
    }),
  );
  return { part, left };
}

export interface Pointed {
  readonly text: string;
  readonly target: Point;
}

/** In the stave's place, right of the plate: one line for each thing to say, on leaders. */
export function sayBeside(view: EndView, labels: readonly Pointed[]): Part {
  const ordered = [...labels].sort((a, b) => a.target.y - b.target.y);
  const ys = spread(
    ordered.map(({ target }) => Math.min(target.y, -row)),
    row,
  );
  const x = Math.max(...ordered.map(({ target }) => target.x), outsideCorner(view).x) + beside;
  const options = { height: heights.small };
  return merge(
    ...ordered.map(({ text, target }, i) => leaderLabel(text, { x, y: ys[i]! }, target, options)),
  );
}

/** Left of the body: how deep below the end each height lies. */
export function depths({ vessel }: EndView, { left: x }: EndPlate, ys: readonly number[]): Part {
  const dimensions = ys.map((y, i) => {
    const text = shortLengthText(-y, vessel.spec.units);
    const through = { x: x - column * (i + 1), y: 0 };
    return dimensionLine(text, { x, y: 0 }, { x, y }, through, { angle: Math.PI / 2 });
  });
  return merge(...dimensions);
}

/** The dimension of an angle: an arc between its sides, with the same arrowheads and clearances as a dimension line. */
import type { Point } from '../geometry/curve.js';
import { arc, line } from '../geometry/curve.js';
import { arrowhead, arrowLength } from './arrow.js';
import type { Part } from './build.js';
import { clearance, label, merge, strokes } from './build.js';
import { extensionGap, overshoot, roomForArrows, tail } from './dimension.js';
import { readable } from './frame.js';
import { heights } from './heights.js';
import { ascenderPart, descenderPart, textWidth } from './lettering.js';

export interface AngleDimensionOptions {
  /** how far from the vertex the drawn sides end; extension lines carry them on to the arc */
  readonly sides?: readonly [number, number];
  readonly height?: number;
}

/**
 * The angle at `vertex` from the direction `from` counter-clockwise to `to` (radians, `to` greater), on an arc of
 * `radius` mm. The text stands outside the arc, or past the end at `to` where the sides leave it no room.
 */
export function angleDimension(
  text: string,
  vertex: Point,
  radius: number,
  from: number,
  to: number,
  options: AngleDimensionOptions = {},
): Part {
  const height = options.height ?? heights.normal;
  const { sides = [radius, radius] } = options;
  const half = (to - from) / 2;
  const room = half < Math.PI / 2 ? (radius + clearance) * Math.tan(half) : Infinity;
  const textFits = textWidth(text, height) / 2 + clearance <= room;
  const arrowsFit = textFits && 2 * half * radius >= roomForArrows;
  const run = arrowsFit ? 0 : tail / radius;
  const inwards = arrowsFit ? 1 : -1;
  return merge(
    extension(vertex, radius, from, sides[0]),
    extension(vertex, radius, to, sides[1]),
    strokes('dimension', arc(vertex, radius, from - run, to + run)),
    arrow(vertex, radius, from, -inwards),
    arrow(vertex, radius, to, inwards),
    textFits
      ? textOutside(text, vertex, radius, from + half, height)
      : textBeyond(text, vertex, radius, to + run, height),
  );
}

function polar(vertex: Point, radius: number, angle: number): Point {
  return { x: vertex.x + radius * Math.cos(angle), y: vertex.y + radius * Math.sin(angle) };
}

function extension(vertex: Point, radius: number, angle: number, side: number): Part {
  if (side + extensionGap >= radius) return merge();
  const start = polar(vertex, side + extensionGap, angle);
  return strokes('dimension', line(start, polar(vertex, radius + overshoot, angle)));
}

/** `turn` 1: the arrow points counter-clockwise. It lies along the chord of the arc that it covers. */
function arrow(vertex: Point, radius: number, angle: number, turn: number): Part {
  const direction = angle + turn * (Math.PI / 2 - arrowLength / (2 * radius));
  return strokes('dimension', arrowhead(polar(vertex, radius, angle), direction));
}

/** Square to the middle of the angle, outside the arc, the right way up. */
function textOutside(
  text: string,
  vertex: Point,
  radius: number,
  middle: number,
  height: number,
): Part {
  const along = middle - Math.PI / 2;
  const angle = readable(along);
  const upright = Math.cos(angle - along) > 0;
  const away = clearance + (upright ? descenderPart : ascenderPart) * height;
  return label(text, polar(vertex, radius + away, middle), { height, align: 'centre', angle });
}

/** Level, with its whole box beyond the radial line at the arc's end: so it meets neither the arc nor a side. */
function textBeyond(
  text: string,
  vertex: Point,
  radius: number,
  end: number,
  height: number,
): Part {
  const direction = end + Math.PI / 2;
  const boxHeight = (ascenderPart + descenderPart) * height;
  const support =
    (Math.abs(Math.cos(direction)) * textWidth(text, height) +
      Math.abs(Math.sin(direction)) * boxHeight) /
    2;
  const middle = polar(polar(vertex, radius, end), clearance + support, direction);
  const baseline = middle.y - boxHeight / 2 + descenderPart * height;
  return label(text, { x: middle.x, y: baseline }, { height, align: 'centre' });
}

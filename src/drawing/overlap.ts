/**
 * Where lettering meets other lettering or a line. Text may stand inside a closed outline; it may not touch its line.
 * A lettering's own leader is left out. Used by tests on every drawing and sheet.
 */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOfPoints } from '../geometry/measure.js';
import { coincident } from '../geometry/tolerance.js';
import type { Part } from './build.js';
import type { Lettering, Stroke } from './drawing.js';
import { flatten } from './flatten.js';
import { layerStyles } from './layers.js';
import { letteringBox } from './lettering.js';
import type { TurnedBox } from './turned-box.js';
import { boxesMeet, chainMeets, turnedBox } from './turned-box.js';

export interface Overlap {
  readonly lettering: Lettering;
  /** what it meets; the leader of another lettering is given as a stroke */
  readonly other: Lettering | Stroke;
}

/** Arcs are followed within this, mm. */
const flatness = 0.01;

/** Every pair that meets, lines taken with their width; two letterings that meet are reported once. */
export function overlaps(part: Part): Overlap[] {
  const boxes = part.letterings.map(boxOf).filter(hasWidth);
  const lines = [
    ...part.strokes.map((stroke) => lineOf(stroke)),
    ...part.letterings.flatMap((lettering) =>
      lettering.leader ? [lineOf({ layer: 'dimension', curve: lettering.leader }, lettering)] : [],
    ),
  ].filter((path) => path !== null);
  return boxes.flatMap(({ lettering, box }, i) => [
    ...boxes
      .slice(i + 1)
      .filter((other) => boxesMeet(box, other.box))
      .map((other) => ({ lettering, other: other.lettering })),
    ...lines
      .filter(({ owner }) => owner !== lettering)
      .filter(({ points, bounds, halfWidth }) => chainMeets(points, bounds, box, halfWidth))
      .map(({ stroke }) => ({ lettering, other: stroke })),
  ]);
}

interface Words {
  readonly lettering: Lettering;
  readonly box: TurnedBox;
}

interface Line {
  readonly stroke: Stroke;
  /** whose leader it is */
  readonly owner: Lettering | undefined;
  readonly points: readonly Point[];
  readonly bounds: Bounds;
  readonly halfWidth: number;
}

function boxOf(lettering: Lettering): Words {
  return { lettering, box: turnedBox(letteringBox(lettering), lettering.angle) };
}

/** Text without a character to draw overlaps nothing. */
function hasWidth({ box }: Words): boolean {
  return box.level.maxX - box.level.minX > coincident;
}

function lineOf(stroke: Stroke, owner?: Lettering): Line | null {
  const points = flatten(stroke.curve, flatness);
  const bounds = boundsOfPoints(points);
  const halfWidth = layerStyles[stroke.layer].width / 2;
  return bounds && { stroke, owner, points, bounds, halfWidth };
}

/** Measures the drawn section of a head's edge in its groove: the wall of the stave's end, and the head's own section. */
import type { Curve } from '../geometry/curve.js';
import { boundsOf } from '../geometry/measure.js';
import { segmentsOf, type Segment } from '../geometry/segment.js';
import type { End } from '../spec/spec.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Bending } from './bending.js';
import { crossings, transposed } from './contour.js';
import { insideRadius, towards } from './due.js';
import { judged, worst, type Finding } from './finding.js';
import { counted } from './head.js';
import { dueGrooveHeight, grooveRadius, howelRadius } from './groove.js';
import type { Pattern } from './patterns.js';
import { tolerance } from './tolerance.js';

/** The origin of the section is the groove's bottom at the end plane; `x` runs outwards, `y` along the axis. */
interface View {
  readonly vessel: Vessel;
  readonly bending: Bending;
  readonly end: End;
  readonly file: string;
  /** radius of the groove's bottom */
  readonly bottom: number;
}

/** Heights at which the wall is looked at, and how far from its corners they keep (mm). */
const places = 80;
const fromCorner = 0.05;

export function checkHeadEdge(
  vessel: Vessel,
  pattern: Pattern,
  end: End,
  bending: Bending,
): Finding[] {
  const bottom = grooveRadius(vessel, bending, end, dueGrooveHeight(vessel, end));
  const view = { vessel, bending, end, file: pattern.file, bottom };
  const outlines = pattern.curves('outline');
  const count = counted('edge-stave', pattern.file, { end, part: 'count' }, outlines.length, 2);
  const [stave, head] = [...outlines].sort((a, b) => rightmost(b) - rightmost(a));
  if (!stave || !head) return [count];
  return [count, ...checkStaveEnd(stave, view), ...checkHeadSection(head, view)];
}

const rightmost = (curve: Curve): number => Math.max(...curve.vertices.map(({ x }) => x));

function checkStaveEnd(curve: Curve, view: View): Finding[] {
  const { vessel, bending, end, file, bottom } = view;
  const { croze } = vessel.spec.heads[end]!;
  const segments = segmentsOf(transposed(curve));
  const sign = towards(end);
  const corners = wallCorners(view);
  const last = vessel.spec.howel.beyondGroove + croze.inset + croze.width / 2 + 15;
  const insets = Array.from({ length: places }, (_, i) => ((i + 0.5) / places) * last);
  const clear = insets.filter((inset) => corners.every((at) => Math.abs(at - inset) > fromCorner));
  const wallAt = (inset: number): { inner: number; outer: number } =>
    across(segments, -sign * inset);
  const inner = clear.map((inset) => {
    const measured = wallAt(inset).inner;
    return offBy(file, { end, part: 'wall' }, measured - (wallRadius(view, inset) - bottom));
  });
  // the section is broken off square to the outer face, which a leaning wall shows a shorter piece of
  const { sin, thickness } = bending.sectionAt((sign * vessel.spec.height) / 2);
  const shown = clear.filter((inset) => inset < last - thickness * Math.abs(sin));
  const outer = shown.map((inset) => {
    const height = sign * (vessel.spec.height / 2 - inset);
    const measured = wallAt(inset).outer;
    return offBy(file, { end, part: 'face' }, measured - (bending.sectionAt(height).r - bottom));
  });
  const howel = howelRadius(vessel, bending, dueGrooveHeight(vessel, end));
  const depth = judged(
    'edge-groove-depth',
    file,
    { end },
    {
      measured: wallAt(croze.inset).inner - (howel - bottom),
      expected: croze.depth,
      tolerance: tolerance.place,
    },
  );
  return [worst(inner), worst(outer), depth];
}

function offBy(file: string, place: Finding['place'], measured: number): Finding {
  return judged('edge-stave', file, place, { measured, expected: 0, tolerance: tolerance.outline });
}

/** The innermost and the outermost point of a contour at a height of the drawing. */
function across(turned: readonly Segment[], y: number): { inner: number; outer: number } {
  const found = crossings(turned, y);
  return found.length < 2
    ? { inner: NaN, outer: NaN }
    : { inner: Math.min(...found), outer: Math.max(...found) };
}

/** Distances from the end plane at which the wall steps: lips of the groove, and where the howel ends. */
function wallCorners({ vessel, end }: View): number[] {
  const { inset, width } = vessel.spec.heads[end]!.croze;
  const innerLip = inset + width / 2;
  return [inset - width / 2, innerLip, innerLip + vessel.spec.howel.beyondGroove];
}

/** Radius of the finished inside at a distance from the end plane. The chime bevel and the howel leave the wider of both. */
function wallRadius(view: View, inset: number): number {
  const { vessel, bending, end, bottom } = view;
  const [outerLip, innerLip, howelEnd] = wallCorners(view) as [number, number, number];
  const height = towards(end) * (vessel.spec.height / 2 - inset);
  if (inset > howelEnd) return insideRadius(bending, height);
  if (inset > outerLip && inset < innerLip) return bottom;
  const howel = howelRadius(vessel, bending, height);
  if (inset > innerLip) return howel;
  const { bevel, flat } = vessel.spec.chime;
  const endRadius = bending.sectionAt((towards(end) * vessel.spec.height) / 2).r;
  return Math.max(howel, endRadius - flat - inset / Math.tan(bevel));
}

/** Thickness, land and bevels of the head, from the corners of its section. */
function checkHeadSection(curve: Curve, { vessel, end, file, bottom }: View): Finding[] {
  const { thickness, edge, croze, clearance } = vessel.spec.heads[end]!;
  const sign = towards(end);
  const bounds = boundsOf(curve)!;
  const [insideFace, outsideFace] =
    sign > 0 ? [bounds.minY, bounds.maxY] : [bounds.maxY, bounds.minY];
  const reachAt = (y: number): number => {
    const there = curve.vertices.filter((vertex) => Math.abs(vertex.y - y) < tolerance.place);
    return Math.max(...there.map(({ x }) => x));
  };
  const rim = bounds.maxX;
  const land = curve.vertices.filter(({ x }) => rim - x < tolerance.place).map(({ y }) => y);
  const [landLow, landHigh] = [Math.min(...land), Math.max(...land)];
  const measures = {
    rim: [rim + bottom, bottom - clearance / 2],
    thickness: [bounds.maxY - bounds.minY, thickness],
    insideFace: [sign * insideFace, -croze.inset - edge.fromInside],
    landThickness: [landHigh - landLow, edge.thickness],
    landMiddle: [sign * ((landLow + landHigh) / 2 - insideFace), edge.fromInside],
    innerBevel: [rim - reachAt(insideFace), edge.innerBevel],
    outerBevel: [rim - reachAt(outsideFace), edge.outerBevel],
  } as const;
  return Object.entries(measures).map(([part, [measured, expected]]) =>
    judged('edge-head', file, { end, part }, { measured, expected, tolerance: tolerance.place }),
  );
}

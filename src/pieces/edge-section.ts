/** The two cut surfaces of a head's edge in its groove: the stave's end and the head's edge. Origin as in `head-edge.ts`. */
import type { Curve, Point, Vertex } from '../geometry/curve.js';
import { polygon } from '../geometry/curve.js';
import { fitArcs } from '../geometry/fit.js';
import { closedFrom } from '../geometry/join.js';
import type { SmoothCurve } from '../geometry/path.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';

/** How much stave is shown past the howel, and how much head past its bevels. */
const stavePastHowel = 22;
const headPastBevels = 25;

export interface Section {
  readonly outline: Curve;
  /** where the head is broken off */
  readonly left: number;
  /** heights of the head's faces, from the drawing's origin */
  readonly faces: { readonly inside: number; readonly outside: number };
}

/** From the drawing's origin: the groove's bottom and the end plane. */
export function sectionPlace(vessel: Vessel, head: Head, radius: number, height: number): Point {
  return {
    x: radius - head.groove.radius,
    y: height - (head.groove.towardsEnd * vessel.spec.height) / 2,
  };
}

/** The end of the stave, cut through the middle of its face: outside, end, chime, howel, groove, howel, inside, break. */
export function staveEndOutline(vessel: Vessel, head: Head): Curve {
  const { groove } = head;
  const { profile, wall, spec } = vessel;
  const endPlane = (groove.towardsEnd * spec.height) / 2;
  const at = (radius: number, height: number): Point => sectionPlace(vessel, head, radius, height);
  const breakSection = wall.sectionAt(
    groove.howelTo - groove.towardsEnd * stavePastHowel,
    wall.thickness,
  );
  const along = (radius: (height: number) => number, from: number, to: number): Vertex[] =>
    fitArcs(
      byHeight((height) => at(radius(height), height)),
      from,
      to,
    );
  const inside = wall.fibre(breakSection, wall.thickness(breakSection));
  const corner = (radius: number, height: number): Vertex => ({ ...at(radius, height), bulge: 0 });
  return closedFrom([
    along(profile.radius, breakSection, endPlane),
    groove.chime ? [corner(groove.chime.endRadius, endPlane)] : [],
    along(groove.howelRadius, groove.howelFrom, groove.outerLip),
    [corner(groove.radius, groove.outerLip), corner(groove.radius, groove.innerLip)],
    along(groove.howelRadius, groove.innerLip, groove.howelTo),
    along(wall.insideRadius, groove.howelTo, inside.height),
  ]);
}

/** The head from its rim to where it is broken off. */
export function headOutline(head: Head): Section {
  const { spec, groove } = head;
  const up = groove.towardsEnd;
  const face = (fromInside: number): number =>
    up * (fromInside - spec.edge.fromInside - spec.croze.inset);
  const left =
    head.diameter / 2 -
    groove.radius -
    Math.max(spec.edge.outerBevel, spec.edge.innerBevel) -
    headPastBevels;
  const edge = head.section.map(({ x, y }) => ({ x: x - groove.radius, y: face(y) }));
  const [inside, outside] = [face(0), face(spec.thickness)];
  const outline = polygon([{ x: left, y: inside }, ...edge, { x: left, y: outside }]);
  return { outline, left, faces: { inside, outside } };
}

/** A curve given by the place of each height; its direction by a difference that is exact enough for fitting arcs. */
export function byHeight(place: (height: number) => Point): SmoothCurve {
  const half = 0.05;
  return {
    at: place,
    tangent: (height) => {
      const [before, after] = [place(height - half), place(height + half)];
      return { x: after.x - before.x, y: after.y - before.y };
    },
  };
}

/** What the flat blank of a stave is due to be, from the spec and the bent wall alone. Lengths in mm. */
import type { End, Spec } from '../spec/spec.js';
import { widestHeight } from '../vessel/profile.js';
import type { Bending, Section } from './bending.js';
import type { Face } from './finding.js';

export const ends = ['top', 'bottom'] as const;

export const towards = (end: End): 1 | -1 => (end === 'top' ? 1 : -1);

export interface DueStave {
  readonly alpha: number;
  /** by how much the blank is thicker than the finished stave */
  readonly extra: number;
  /** depth of a face in a section */
  readonly depth: (section: Section, face: Face) => number;
  readonly halfWidth: (section: Section, depth: number) => number;
  /** stations at which the faces meet the end planes */
  readonly ends: Readonly<Record<End, Readonly<Record<Face, number>>>>;
  /** stations at which the drawn faces end: the same, or beyond the trim */
  readonly blankEnds: Readonly<Record<End, Readonly<Record<Face, number>>>>;
}

export function dueStave(spec: Spec, bending: Bending, alpha: number): DueStave {
  const extra = hollowedExtra(spec, bending, alpha);
  const depth = ({ thickness }: Section, face: Face): number =>
    face === 'outer' ? 0 : thickness + extra;
  const endOf = (end: End): Record<Face, number> => {
    const plane = (towards(end) * spec.height) / 2;
    const inner = bending.sectionThrough(plane, (section) => depth(section, 'inner'));
    return { outer: bending.stationOf(plane), inner: bending.stationOf(inner.z) };
  };
  const finished = { top: endOf('top'), bottom: endOf('bottom') };
  return {
    alpha,
    extra,
    depth,
    halfWidth: ({ r, cos }, below) => (r - below * cos) * Math.tan(alpha),
    ends: finished,
    blankEnds: {
      top: blankEnd('top', finished.top, spec),
      bottom: blankEnd('bottom', finished.bottom, spec),
    },
  };
}

function blankEnd(end: End, finished: Record<Face, number>, spec: Spec): Record<Face, number> {
  if (spec.staves.ends === 'cut') return finished;
  const sign = towards(end);
  const longer = Math.max(sign * finished.outer, sign * finished.inner) + spec.staves.trim;
  return { outer: sign * longer, inner: sign * longer };
}

/**
 * The corner of a hollowed blank's inner face must lie on the inside surface where the vessel is widest. How far it stands
 * outside that surface's cone changes evenly with its depth, so two depths give the one at which it stands on it.
 */
function hollowedExtra(spec: Spec, bending: Bending, alpha: number): number {
  if (spec.staves.inside === 'flat') return 0;
  const { r, cos, sin } = bending.sectionAt(widestHeight(spec));
  const { thickness } = spec.staves;
  const outside = (depth: number): number => {
    const corner = (r - depth * cos) / Math.cos(alpha);
    const cone = r - thickness * cos + ((depth - thickness) * sin * sin) / cos;
    return corner - cone;
  };
  const [atFinished, deeper] = [outside(thickness), outside(2 * thickness)];
  return (thickness * atFinished) / (atFinished - deeper);
}

/** Radius of the inside, to the middle of a face, at a height. */
export function insideRadius(bending: Bending, height: number): number {
  const section = bending.sectionThrough(height, ({ thickness }) => thickness);
  return section.r - section.thickness * section.cos;
}

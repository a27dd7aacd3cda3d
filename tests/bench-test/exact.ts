/** What the flat blank, the groove and the litres must be, derived from the definitions alone. */
import { bendOf } from './bend.js';
import type { Bend, Section } from './bend.js';
import { ringOf } from './bench-spec.js';
import type { BenchSpec } from './bench-spec.js';
import { integral } from './quadrature.js';

export interface ExactStave {
  alpha: number;
  /** the blank's thickness where the stave is `thickness` thick */
  blankThickness: number;
  bend: Bend;
  /** stations where the outer and the inner face meet the end planes */
  outerEnd: { top: number; bottom: number };
  innerEnd: { top: number; bottom: number };
  /** the blank's local thickness, mm */
  depthAt(section: Section): number;
  /** half-widths of the outer and the inner face at a station */
  halfWidth(station: number, face: 'outer' | 'inner'): number;
}

export function exactStave(spec: BenchSpec, alpha: number): ExactStave {
  const bend = bendOf(spec);
  const blankThickness = blankThicknessOf(spec, bend, alpha);
  const depthAt = (section: Section): number => blankThickness + section.t - spec.staves.thickness;
  const half = spec.height / 2;
  return {
    alpha,
    blankThickness,
    bend,
    outerEnd: { top: bend.stationOf(half), bottom: bend.stationOf(-half) },
    innerEnd: {
      top: bend.stationOf(outerHeightFor(half, bend, depthAt)),
      bottom: bend.stationOf(outerHeightFor(-half, bend, depthAt)),
    },
    depthAt,
    halfWidth(station, face) {
      const section = bend.sectionAt(bend.heightOf(station));
      const depth = face === 'outer' ? 0 : depthAt(section);
      return (section.r - depth * section.cos) * Math.tan(alpha);
    },
  };
}

/**
 * The corner of the blank's inner face must reach the hollowed surface. In the horizontal plane through that
 * corner the inside radius is `r_in`; both change with the depth, so the depth is found by bisection on
 * "corner radius less inside radius" along the cone that touches the profile at the widest section.
 */
function blankThicknessOf(spec: BenchSpec, bend: Bend, alpha: number): number {
  const { thickness, inside } = spec.staves;
  if (inside === 'flat') return thickness;
  const { r, cos, sin } = bend.sectionAt(widestHeight(spec));
  const shortfall = (depth: number): number => {
    const corner = (r - depth * cos) / Math.cos(alpha);
    const insideRadius = r + (depth * sin * sin) / cos - thickness / cos;
    return corner - insideRadius;
  };
  let [low, high] = [0, r / cos];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (shortfall(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function widestHeight(spec: BenchSpec): number {
  if (spec.vessel === 'cask') return 0;
  return spec.top >= spec.bottom ? spec.height / 2 : -spec.height / 2;
}

/** Height of the section (at its outer face) whose point at a depth lies at height `z`. */
export function outerHeightFor(z: number, bend: Bend, depth: (section: Section) => number): number {
  const offset = (u: number): number => {
    const section = bend.sectionAt(u);
    return u - depth(section) * section.sin - z;
  };
  let u = z;
  for (let i = 0; i < 200; i++) {
    const error = offset(u);
    const slope = (offset(u + 1e-3) - offset(u - 1e-3)) / 2e-3;
    u -= error / slope;
    if (Math.abs(error) < 1e-12 * Math.max(1, Math.abs(z))) break;
  }
  return u;
}

/** Inside radius (middle of the stave's inner face) at a height. */
export function insideRadius(bend: Bend, z: number): number {
  const section = bend.sectionAt(outerHeightFor(z, bend, (s) => s.t));
  return section.r - section.t * section.cos;
}

/** Radius of the groove's ground, and the diameter of the head that goes with it. */
export function exactGroove(
  spec: BenchSpec,
  end: 'top' | 'bottom',
): { radius: number; head: number } {
  const bend = bendOf(spec);
  const { croze, clearance } = spec.heads;
  const z = grooveHeight(spec, end);
  const wall = insideRadius(bend, z);
  const widestAngle = Math.max(...ringOf(spec).alphas);
  const corner = spec.staves.inside === 'flat' ? wall / Math.cos(widestAngle) : wall;
  const radius = corner + spec.howel.depth + croze.depth;
  return { radius, head: 2 * radius - clearance };
}

function grooveHeight(spec: BenchSpec, end: 'top' | 'bottom'): number {
  const z = spec.height / 2 - spec.heads.croze.inset;
  return end === 'top' ? z : -z;
}

/**
 * How far the chime must open to let the head's rim in: the groove's radius less the least radius on its way. From the
 * groove outwards the wall is howelled, until the chime bevel cuts it back; looked for in steps, then in finer ones.
 */
export function exactChimeOpening(spec: BenchSpec, end: 'top' | 'bottom'): number {
  const bend = bendOf(spec);
  const sign = end === 'top' ? 1 : -1;
  const half = spec.height / 2;
  const widestAngle = Math.max(...ringOf(spec).alphas);
  const stretch = spec.staves.inside === 'flat' ? 1 / Math.cos(widestAngle) : 1;
  const slope = Math.tan((spec.chime.bevelDegrees * Math.PI) / 180);
  const rim = bend.sectionAt(sign * half).r - spec.chime.flat;
  const radius = (inset: number): number => {
    const howelled = insideRadius(bend, sign * (half - inset)) * stretch + spec.howel.depth;
    return Math.max(howelled, rim - inset / slope);
  };
  const { inset, width } = spec.heads.croze;
  let [near, far] = [0, inset - width / 2];
  let narrowest = Infinity;
  for (let round = 0; round < 5; round++) {
    const step = (far - near) / 40;
    const places = Array.from({ length: 41 }, (_, i) => near + i * step);
    const best = places.reduce((a, b) => (radius(b) < radius(a) ? b : a));
    narrowest = radius(best);
    [near, far] = [Math.max(near, best - step), Math.min(far, best + step)];
  }
  return exactGroove(spec, end).radius - narrowest;
}

/** Litres between the inside faces of the heads (tub: from the bottom to the rim). */
export function exactLitres(spec: BenchSpec): number {
  const bend = bendOf(spec);
  const { fromInside } = spec.heads.edge;
  const low = grooveHeight(spec, 'bottom') + fromInside;
  const high = spec.vessel === 'tub' ? spec.height / 2 : grooveHeight(spec, 'top') - fromInside;
  const { alphas } = ringOf(spec);
  const areaFactor =
    spec.staves.inside === 'flat' ? alphas.reduce((sum, a) => sum + Math.tan(a), 0) : Math.PI;
  const area = (z: number): number => areaFactor * insideRadius(bend, z) ** 2;
  return integral(area, low, high, 8) / 1e6;
}

/** One stave as a flat blank: widths, bevels, thickness, end cuts. Lengths in mm, angles in radians. */
import type { End, Spec } from '../spec/spec.js';
import type { Bend } from './bend.js';
import { lean, widestHeight, type Profile } from './profile.js';
import type { Depth, Wall } from './wall.js';

export interface EndCut {
  /** station of the end plane on the outer face and on the inner face of the blank */
  readonly outerStation: number;
  readonly innerStation: number;
  /** angle of the cut from square, radians; positive when the inner face is the longer */
  readonly angle: number;
}

export interface Stave {
  readonly alpha: number;
  /** across the flat outer face at the bilge */
  readonly width: number;
  /** thickness of the flat blank at the middle; corners keep it where the vessel is widest */
  readonly blankThickness: number;
  /** thickness of the blank at the section whose outer face is at `z` */
  readonly blankThicknessAt: Depth;
  /** half the width in the section at `z`, at a depth below the flat outer face */
  halfWidth(z: number, depth: number): number;
  /** angle of the joint from square to the face, in a section square to the stave */
  bevel(z: number): number;
  /** angle of the joint for a saw that is set square to the stave's edge */
  sawTilt(z: number): number;
  readonly ends: Readonly<Record<End, EndCut>>;
  /** how far each face runs before the end is trimmed: stations of the blank's ends on the outer and inner face */
  readonly blankEnds: Readonly<Record<End, { readonly outer: number; readonly inner: number }>>;
}

/**
 * Thickness of the blank of a hollowed stave, where the vessel leans `phi` and its outside has the radius `r`: the inner
 * corner at depth `T` lies on the inside cone, `(r - T cos phi) / cos alpha = r - t / cos phi + T sin^2 phi / cos phi`.
 */
export function hollowedBlankThickness(r: number, t: number, alpha: number, phi: number): number {
  const [cosAlpha, cosPhi, sinPhi] = [Math.cos(alpha), Math.cos(phi), Math.sin(phi)];
  const above = r * (1 - cosAlpha) * cosPhi + t * cosAlpha;
  return above / (cosPhi ** 2 + cosAlpha * sinPhi ** 2);
}

function blankThicknessOf(spec: Spec, profile: Profile, alpha: number): number {
  const t = spec.staves.thickness;
  if (spec.staves.inside === 'flat') return t;
  const z = widestHeight(spec);
  return hollowedBlankThickness(profile.radius(z), t, alpha, lean(profile, z));
}

/** The end cut: straight from the outer face's station on the end plane to the station of the fibre at the full depth. */
function endCutOf(end: End, spec: Spec, wall: Wall, bend: Bend, blank: Depth): EndCut {
  const sign = end === 'top' ? 1 : -1;
  const plane = (sign * spec.height) / 2;
  const inner = wall.sectionAt(plane, blank);
  const outerStation = bend.station(plane);
  const innerStation = bend.station(inner);
  const longer = sign * (innerStation - outerStation);
  return { outerStation, innerStation, angle: Math.atan2(longer, blank(inner)) };
}

function blankEndOf(end: End, cut: EndCut, spec: Spec): { outer: number; inner: number } {
  if (spec.staves.ends === 'cut') return { outer: cut.outerStation, inner: cut.innerStation };
  const sign = end === 'top' ? 1 : -1;
  const furthest = Math.max(sign * cut.outerStation, sign * cut.innerStation) + spec.staves.trim;
  return { outer: sign * furthest, inner: sign * furthest };
}

/** The stave of one half-angle. */
export function staveOf(
  spec: Spec,
  profile: Profile,
  wall: Wall,
  bend: Bend,
  alpha: number,
): Stave {
  const blankThickness = blankThicknessOf(spec, profile, alpha);
  const extra = blankThickness - spec.staves.thickness;
  const blankThicknessAt: Depth = (z) => wall.thickness(z) + extra;
  const tangent = Math.tan(alpha);
  const cut = (end: End): EndCut => endCutOf(end, spec, wall, bend, blankThicknessAt);
  const ends = { top: cut('top'), bottom: cut('bottom') };
  return {
    alpha,
    width: 2 * profile.radius(widestHeight(spec)) * tangent,
    blankThickness,
    blankThicknessAt,
    halfWidth: (z, depth) => (profile.radius(z) - depth * Math.cos(lean(profile, z))) * tangent,
    bevel: (z) => Math.atan(tangent * Math.cos(lean(profile, z))),
    sawTilt: (z) => Math.asin(Math.sin(alpha) * Math.cos(lean(profile, z))),
    ends,
    blankEnds: {
      top: blankEndOf('top', ends.top, spec),
      bottom: blankEndOf('bottom', ends.bottom, spec),
    },
  };
}

/**
 * What one gauge, set to the bilge's bevel, leaves open per joint at an end: each stave's edge at the depth of the blank
 * misses its joint plane by `T (tan beta_bilge - tan beta_end)` along the face, times `cos alpha` square to the plane.
 */
export function fixedBevelGap(stave: Stave, bilgeZ: number, endZ: number): number {
  const miss = Math.tan(stave.bevel(bilgeZ)) - Math.tan(stave.bevel(endZ));
  return 2 * stave.blankThicknessAt(endZ) * miss * Math.cos(stave.alpha);
}

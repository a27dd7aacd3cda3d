/** Whether the ring closes and its staves can be bent, before any part is made. Lengths in the values are mm, angles degrees. */
import type { Issue, SpecPath } from '../spec/issue.js';
import type { Spec } from '../spec/spec.js';
import { error, warning } from './issues.js';
import { greatestDiameter, lean, widestHeight, type Profile } from './profile.js';
import type { Ring } from './ring.js';
import { hollowedBlankThickness } from './stave.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Steeper walls are dishes, not vessels of staves; the groove and hoops would not hold. */
const steepestLeanDegrees = 45;
/** The ring of a mixed set may miss the spec's diameter by this share before it is another vessel. */
const closingShare = 0.05;
/** A ring that misses it by more than this is worth a word (mm). */
const closingTolerance = 1.5;
/** Of the least outside radius: a blank that takes more leaves its inner face no width. */
const mostOfRadius = 0.9;
/** Thickness over bending radius, about the strain across the blank: softened wood shortens by no more (from memory). */
const mostShortening = 0.3;

/** Whether the staves close at all, and near the diameter that the spec asks for. */
export function checkRing(spec: Spec, ring: Ring): Issue[] {
  const wanted = greatestDiameter(spec);
  const values = { closesAt: ring.closesAt, wanted };
  if (!(Math.abs(ring.closesAt - wanted) <= closingShare * wanted)) {
    return [error('staves-do-not-close', ['staves', 'widths'], values)];
  }
  if (Math.abs(ring.closesAt - wanted) > closingTolerance) {
    return [warning('staves-close-elsewhere', ['staves', 'widths'], values)];
  }
  return [];
}

/** Whether the profile reaches far enough, leans little enough and bends gently enough for staves of this thickness. */
export function checkFrame(spec: Spec, profile: Profile, ring: Ring): Issue[] {
  const plane = spec.height / 2;
  const blame: SpecPath = [spec.vessel === 'cask' ? 'ends' : 'bottom'];
  const steepest = Math.abs(lean(profile, plane));
  if (!(degrees(steepest) <= steepestLeanDegrees)) {
    const values = { leanDegrees: degrees(steepest), allowed: steepestLeanDegrees };
    return [error('wall-too-steep', blame, values)];
  }
  const thickness = thickest(spec, profile, ring);
  const trim = spec.staves.ends === 'overlong' ? spec.staves.trim : 0;
  // an inner face runs on past the end plane by the thickness times the sine of the lean there
  const needed = plane + trim + thickness * Math.min(1, 1.5 * Math.sin(steepest));
  const radius = Math.min(profile.radius(needed), profile.radius(-needed));
  if (!(profile.reach >= needed && radius > 0)) {
    return [error('profile-ends-early', blame, { reach: profile.reach, needed })];
  }
  if (thickness * Math.cos(steepest) > mostOfRadius * radius) {
    return [error('wall-too-thick', ['staves', 'thickness'], { thickness, radius })];
  }
  const tightest = Math.max(profile.curvature(0), profile.curvature(needed));
  if (tightest * thickness > mostShortening) {
    const values = { thickness, bendRadius: 1 / tightest };
    return [error('bend-too-tight', ['staves', 'thickness'], values)];
  }
  return [];
}

/** The greatest thickness of any blank. */
function thickest(spec: Spec, profile: Profile, ring: Ring): number {
  const { thickness, endThickness, inside } = spec.staves;
  const widest = widestHeight(spec);
  const radius = profile.radius(widest);
  const blank =
    inside === 'flat'
      ? thickness
      : hollowedBlankThickness(radius, thickness, ring.widestAlpha, lean(profile, widest));
  return blank + Math.max(0, endThickness - thickness);
}

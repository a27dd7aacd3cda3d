/** The outside of a vessel that is cut shorter and shaved, as a spec can say it, and how far that is from the wood. */
import { newton } from '../geometry/quadrature.js';
import type { Spec } from '../spec/spec.js';
import { profileOf, type Profile } from '../vessel/profile.js';
import type { Wall } from '../vessel/wall.js';
import { rounded, withDimensions } from './size-dimensions.js';

interface Cut {
  readonly top: number;
  readonly bottom: number;
}

interface Surfaces {
  readonly profile: Profile;
  readonly wall: Wall;
}

export interface Resurfaced {
  readonly spec: Spec;
  residual(old: Surfaces, made: Surfaces): { readonly outside: number; readonly inside: number };
}

/** Places along the wall at which old and new are compared. */
const samples = 64;

/**
 * A cask loses the same at both ends, so its bilge stays in the middle: the circle, parabola or ellipse through the old bilge and
 * the new ends is the old one. Shaving moves the outside inwards by `shave`, square to it; the inside stays.
 */
export function recutOutside(old: Spec, off: Cut, shave: number): Resurfaced {
  const shaved = shavedRadius(profileOf(old, 1), shave);
  const [low, high] = [off.bottom - old.height / 2, old.height / 2 - off.top];
  const sizes = {
    height: high - low,
    body: 2 * (old.vessel === 'cask' ? shaved(0) : shaved(high)),
    headEnd: 2 * shaved(low),
  };
  const resized = withDimensions(old, sizes);
  const { thickness, endThickness } = old.staves;
  const share = (sizes.height / old.height) ** 2;
  const staves = {
    ...resized.staves,
    thickness: thickness - shave,
    // t(z) = t + (t_e - t)(2z/H)^2 goes on as it was up to the new ends
    endThickness: thickness + (endThickness - thickness) * share - shave,
  };
  const middle = (low + high) / 2;
  return {
    spec: rounded({ ...resized, staves }, old),
    residual: (before, made) => ({
      outside: furthest(low, high, (h) => made.profile.radius(h - middle) - shaved(h)),
      inside: furthest(
        low,
        high,
        (h) => made.wall.insideRadius(h - middle) - before.wall.insideRadius(h),
      ),
    }),
  };
}

function furthest(from: number, to: number, apart: (height: number) => number): number {
  const at = (i: number): number => Math.abs(apart(from + ((to - from) * i) / samples));
  return Math.max(...Array.from({ length: samples + 1 }, (_, i) => at(i)));
}

/** Radius at a height of the curve that lies a distance inside the profile, square to it. */
function shavedRadius(profile: Profile, by: number): (height: number) => number {
  if (by === 0) return profile.radius;
  const inwards = (z: number): number => by / Math.hypot(1, profile.slope(z));
  return (height) => {
    const z = newton(
      (at) => at + profile.slope(at) * inwards(at) - height,
      (at) => 1 - by * profile.curvature(at),
      height,
    );
    return profile.radius(z) - inwards(z);
  };
}

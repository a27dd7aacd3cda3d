/** The edge of a flat blank as a smooth curve: `x` the station, `y` half the width at a depth below the outer face. */
import type { SmoothCurve } from '../geometry/path.js';
import type { Stave } from './stave.js';
import type { Vessel } from './vessel.js';
import type { Depth } from './wall.js';

/** Half a step of the difference quotient below; the thickness is quadratic in `z`, so that quotient is exact. */
const half = 0.5;

/**
 * The edge at a depth, by the `z` of the section's outer face. Its direction comes from `dphi = kappa dsigma` and
 * `y = (r - T cos phi) tan alpha`, so `dy/dz = (r' - T' cos phi + T sin phi dphi/dz) tan alpha`.
 */
export function staveEdge(
  vessel: Pick<Vessel, 'profile' | 'wall' | 'bend' | 'spec'>,
  stave: Stave,
  depth: Depth,
): SmoothCurve {
  const { profile, wall, bend, spec } = vessel;
  const tangentOfAlpha = Math.tan(stave.alpha);
  return {
    at: (z) => ({ x: bend.station(z), y: stave.halfWidth(z, depth(z)) }),
    tangent: (z) => {
      const slope = profile.slope(z);
      const outward = Math.hypot(1, slope);
      const curvature = profile.curvature(z);
      const [cosPhi, sinPhi] = [1 / outward, -slope / outward];
      const deeper = depth(z + half) - depth(z - half);
      const turning = curvature * outward;
      return {
        x: (1 - spec.staves.neutral * wall.thickness(z) * curvature) * outward,
        y: (slope - deeper * cosPhi + depth(z) * sinPhi * turning) * tangentOfAlpha,
      };
    },
  };
}

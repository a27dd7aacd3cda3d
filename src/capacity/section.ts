/** The inside section of a lying vessel, for an inside radius of 1, and how much of it lies below a level. */

export interface Section {
  /** area below the level, both measured from the axis, upwards positive */
  areaBelow(level: number): number;
  /** how far the section reaches below and above the axis */
  readonly below: number;
  readonly above: number;
  /** levels at which the area below changes its law: it is smooth between them */
  readonly kinks: readonly number[];
}

/** A circle: the segment below a chord. */
export const roundSection: Section = {
  areaBelow: (level) => {
    const u = Math.min(1, Math.max(-1, level));
    return Math.acos(-u) + u * Math.sqrt(1 - u * u);
  },
  below: 1,
  above: 1,
  kinks: [-1, 1],
};

/** The triangle from the axis to a stave's inner corners: its area, and the heights of its corners in order. */
interface Wedge {
  readonly area: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/**
 * The polygon of flat inner faces, stave `up` with its middle at the top. Each face spans its own wedge of the ring, so the
 * section is the sum of triangles from the axis, whatever step unlike neighbours leave at their joint.
 */
export function polygonSection(alphas: readonly number[], up: number): Section {
  const wedges = wedgesOf(alphas, up);
  const heights = wedges.flatMap(({ low, middle, high }) => [low, middle, high]);
  return {
    areaBelow: (level) => wedges.reduce((sum, wedge) => sum + wedgeBelow(wedge, level), 0),
    below: -Math.min(...heights),
    above: Math.max(...heights),
    kinks: distinct(heights),
  };
}

function wedgesOf(alphas: readonly number[], up: number): Wedge[] {
  let azimuth = Math.PI / 2 - alphas[up]!;
  return alphas.map((_, i) => {
    const alpha = alphas[(up + i) % alphas.length]!;
    const corners = [azimuth, azimuth + 2 * alpha].map(
      (angle) => Math.sin(angle) / Math.cos(alpha),
    );
    azimuth += 2 * alpha;
    const [low, middle, high] = [0, ...corners].sort((a, b) => a - b) as [number, number, number];
    return { area: Math.tan(alpha), low, middle, high };
  });
}

/** Up to the middle corner, and from there on to the top, what is cut off is similar to a part of the triangle. */
function wedgeBelow({ area, low, middle, high }: Wedge, level: number): number {
  if (level <= low) return 0;
  if (level >= high) return area;
  return level < middle
    ? (area * (level - low) ** 2) / ((middle - low) * (high - low))
    : area * (1 - (high - level) ** 2 / ((high - middle) * (high - low)));
}

/** Neighbours share corners, and mirrored corners their heights. */
function distinct(heights: readonly number[]): number[] {
  const sorted = [...heights].sort((a, b) => a - b);
  return sorted.filter((height, i) => i === 0 || height - sorted[i - 1]! > 1e-9);
}

/** The diameter at which a ring of staves closes: where their half-angles together make pi. */

/**
 * How widths were measured: `blank` across the flat outer face before backing, `backed` from corner to
 * corner after it (the corners then lie on the circle).
 */
export type Measured = 'blank' | 'backed';

/**
 * Half the angle, in radians, that a stave takes up at an outside diameter. Blank: the face is tangent to the
 * circle, so tan(alpha) = (w/2)/(D/2). Backed: the width is the circle's chord, so sin(alpha) = (w/2)/(D/2).
 * NaN when a backed stave is wider than the diameter.
 */
export function halfAngle(width: number, diameter: number, measured: Measured): number {
  return measured === 'blank' ? Math.atan(width / diameter) : Math.asin(width / diameter);
}

/** What a half-angle gains per mm of width. */
export function halfAngleSlope(width: number, diameter: number, measured: Measured): number {
  if (measured === 'blank') return diameter / (diameter ** 2 + width ** 2);
  return 1 / Math.sqrt(diameter ** 2 - width ** 2);
}

/** The width that takes up a half-angle: the inverse of `halfAngle`. */
export function widthAt(angle: number, diameter: number, measured: Measured): number {
  return diameter * (measured === 'blank' ? Math.tan(angle) : Math.sin(angle));
}

/**
 * The outside diameter, in mm, at which staves close into a ring, to machine precision; null when they can't
 * (fewer than three, or one backed stave as wide as all the rest reach). Newton's method on u = 1/D, where
 * the sum of angles is smooth, held inside a bracket that shrinks at every step. `rings`: the staves of so many
 * rings at once, for the diameter that they all close at on average.
 */
export function closesAt(widths: ArrayLike<number>, measured: Measured, rings = 1): number | null {
  const { total, widest } = sumAndWidest(widths);
  if (widths.length < 3 || !(total > 0)) return null;
  let [low, high] = measured === 'blank' ? [0, Infinity] : [0, 1 / widest];
  const turn = rings * Math.PI;
  if (measured === 'backed' && excess(widths, high, measured, turn).value < 0) return null;
  let u = Math.min(turn / total, 0.9 * high);
  for (let step = 0; step < 200; step++) {
    const { value, slope } = excess(widths, u, measured, turn);
    if (value === 0) break;
    if (value < 0) low = u;
    else high = u;
    let next = u - value / slope;
    if (!(next > low && next < high)) next = high === Infinity ? 2 * low : (low + high) / 2;
    const settled = Math.abs(next - u) <= 2 * Number.EPSILON * u;
    u = next;
    if (settled) break;
  }
  return 1 / u;
}

function sumAndWidest(widths: ArrayLike<number>): { total: number; widest: number } {
  let total = 0;
  let widest = 0;
  for (let i = 0; i < widths.length; i++) {
    total += widths[i]!;
    if (widths[i]! > widest) widest = widths[i]!;
  }
  return { total, widest };
}

/** Sum of half-angles at u = 1/D less what they should sum to, and its derivative by u. */
function excess(widths: ArrayLike<number>, u: number, measured: Measured, turn: number) {
  let value = -turn;
  let slope = 0;
  for (let i = 0; i < widths.length; i++) {
    const w = widths[i]!;
    const x = w * u;
    value += measured === 'blank' ? Math.atan(x) : Math.asin(Math.min(1, x));
    slope += measured === 'blank' ? w / (1 + x * x) : w / Math.sqrt(Math.max(0, 1 - x * x));
  }
  return { value, slope };
}

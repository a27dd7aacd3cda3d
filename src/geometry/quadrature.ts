/** Numerical integration and root finding: the numerical tools that the model needs. */

/** Positive abscissae and weights of the 10-point Gauss-Legendre rule (Abramowitz and Stegun, table 25.4, n = 10). */
const abscissae = [
  0.148874338981631, 0.433395394129247, 0.679409568299024, 0.865063366688985, 0.973906528517172,
] as const;
const weights = [
  0.295524224714753, 0.269266719309996, 0.219086362515982, 0.149451349150581, 0.066671344308688,
] as const;

/** Integral of a smooth function over one short panel. */
function overPanel(f: (x: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (let i = 0; i < abscissae.length; i++) {
    const offset = half * abscissae[i]!;
    sum += weights[i]! * (f(middle + offset) + f(middle - offset));
  }
  return sum * half;
}

/** Integral of a smooth function from one limit to another, in equal panels of ten points each. */
export function integrate(f: (x: number) => number, from: number, to: number, panels = 8): number {
  const step = (to - from) / panels;
  let sum = 0;
  for (let i = 0; i < panels; i++) sum += overPanel(f, from + i * step, from + (i + 1) * step);
  return sum;
}

/**
 * The running integral `F(x) = integral of f from 0 to x`, for many values of x within `[-reach, reach]`: a table of
 * panel sums is made once, and each call adds the rest of one panel. Beyond the reach the last panel is stretched.
 */
export function runningIntegral(
  f: (x: number) => number,
  reach: number,
  panels = 8,
): (x: number) => number {
  const step = reach / panels;
  const sums = { up: [0], down: [0] };
  for (let i = 0; i < panels; i++) {
    sums.up.push(sums.up[i]! + overPanel(f, i * step, (i + 1) * step));
    sums.down.push(sums.down[i]! + overPanel(f, -i * step, -(i + 1) * step));
  }
  return (x) => {
    const sign = x < 0 ? -1 : 1;
    const panel = Math.min(panels, Math.floor(Math.abs(x) / step));
    const done = (sign < 0 ? sums.down : sums.up)[panel]!;
    const start = sign * panel * step;
    return x === start ? done : done + overPanel(f, start, x);
  };
}

/**
 * A root of a function between two limits at which its signs differ, to about 1e-12 of the limits' size (bisection
 * guarded secant steps, the Illinois rule). NaN when the signs do not differ: callers turn that into their own message.
 */
export function root(f: (x: number) => number, from: number, to: number): number {
  let a = from;
  let b = to;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return NaN;
  const enough = 1e-13 * Math.max(Math.abs(from), Math.abs(to), 1);
  for (let i = 0; i < 200 && Math.abs(b - a) > enough; i++) {
    const secant = b - (fb * (b - a)) / (fb - fa);
    const inside = secant > Math.min(a, b) && secant < Math.max(a, b);
    const x = inside && i % 8 !== 7 ? secant : (a + b) / 2;
    const fx = f(x);
    if (fx === 0) return x;
    if (fx * fb < 0) {
      a = b;
      fa = fb;
    } else fa /= 2;
    b = x;
    fb = fx;
  }
  return b;
}

/**
 * The root of an increasing, nearly straight function by Newton's steps from a start, to about 1e-13 of its size. `rate` is
 * the derivative; terms of a few per cent may be left out of it, at the price of a few more steps. NaN when the steps do
 * not settle, or leave the range where the function is defined.
 */
export function newton(
  f: (x: number) => number,
  rate: (x: number) => number,
  start: number,
): number {
  let x = start;
  for (let i = 0; i < 40; i++) {
    const step = f(x) / rate(x);
    if (!Number.isFinite(step)) return NaN;
    x -= step;
    if (Math.abs(step) <= 1e-13 * Math.max(1, Math.abs(x))) return x;
  }
  return NaN;
}

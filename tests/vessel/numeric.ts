/** Plain numerical tools of the tests' own: slow, obvious, and not the product's. */

/** Simpson's rule. */
export function simpson(f: (x: number) => number, from: number, to: number, steps = 2000): number {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/** Halving, for a function that rises or falls from one limit to the other. */
export function bisect(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  const rising = f(b) > f(a);
  for (let i = 0; i < 200; i++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0 === rising) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

export const derivative = (f: (x: number) => number, x: number, h = 1e-3): number =>
  (f(x + h) - f(x - h)) / (2 * h);

/** `count` numbers evenly spread from one limit to the other. */
export const spread = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** Gauss-Legendre quadrature with six points; nodes found here, not copied. */

const rule = legendreRule(6);

/** Integral of `f` from `from` to `to` in one panel. */
export function gauss(f: (x: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (const { node, weight } of rule) sum += weight * f(middle + half * node);
  return half * sum;
}

/** Integral in `panels` equal panels. */
export function integral(
  f: (x: number) => number,
  from: number,
  to: number,
  panels: number,
): number {
  const step = (to - from) / panels;
  let sum = 0;
  for (let i = 0; i < panels; i++) sum += gauss(f, from + i * step, from + (i + 1) * step);
  return sum;
}

function legendreRule(n: number): { node: number; weight: number }[] {
  return Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 0;
    for (let round = 0; round < 50; round++) {
      let [before, now] = [1, x];
      for (let k = 2; k <= n; k++)
        [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
      slope = (n * (x * now - before)) / (x * x - 1);
      x -= now / slope;
    }
    return { node: x, weight: 2 / ((1 - x * x) * slope * slope) };
  });
}

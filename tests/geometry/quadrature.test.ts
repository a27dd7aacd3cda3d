import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate, newton, root, runningIntegral } from '../../src/geometry/quadrature.js';

describe('integrate', () => {
  it('gives nothing between equal limits and changes sign with their order', () => {
    expect(integrate(Math.exp, 2, 2)).toBe(0);
    expect(integrate(Math.exp, 1, 0)).toBeCloseTo(-(Math.E - 1), 13);
  });

  it('is exact for polynomials up to degree 19 in a single panel (ten Gauss points)', () => {
    for (let power = 0; power <= 19; power++) {
      const exact = (2 ** (power + 1) - 1) / (power + 1);
      expect(integrate((x) => x ** power, 1, 2, 1) / exact).toBeCloseTo(1, 13);
    }
    const overreached = integrate((x) => x ** 40, 0, 1, 1) * 41;
    expect(overreached).not.toBeCloseTo(1, 12);
  });

  it('knows pi as the area under 4 / (1 + x^2)', () => {
    expect(integrate((x) => 4 / (1 + x * x), 0, 1)).toBeCloseTo(Math.PI, 14);
  });

  it('adds up: two spans make the whole', () => {
    const limit = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(limit, limit, limit, (a, b, c) => {
        const whole = integrate(Math.cos, a, c);
        expect(integrate(Math.cos, a, b) + integrate(Math.cos, b, c)).toBeCloseTo(whole, 12);
        expect(whole).toBeCloseTo(Math.sin(c) - Math.sin(a), 12);
      }),
    );
  });
});

describe('runningIntegral', () => {
  const sine = runningIntegral(Math.cos, 3);

  it('is 0 at 0 and agrees with the antiderivative on both sides, between and on panel borders', () => {
    expect(sine(0)).toBe(0);
    for (const x of [-3, -2.2, -0.375, -1e-9, 0.1, 0.375, 0.75, 2.9, 3])
      expect(sine(x)).toBeCloseTo(Math.sin(x), 13);
  });

  it('stretches the last panel a little beyond its reach', () => {
    expect(sine(3.4)).toBeCloseTo(Math.sin(3.4), 12);
    expect(sine(-3.4)).toBeCloseTo(Math.sin(-3.4), 12);
  });

  it('does not take the function for an even one', () => {
    const exponential = runningIntegral(Math.exp, 2);
    expect(exponential(-1.5)).toBeCloseTo(Math.exp(-1.5) - 1, 13);
    expect(exponential(1.5)).toBeCloseTo(Math.exp(1.5) - 1, 12);
  });
});

describe('root', () => {
  it('finds a limit that is itself a root', () => {
    expect(root((x) => x - 1, 1, 4)).toBe(1);
    expect(root((x) => x - 4, 1, 4)).toBe(4);
  });

  it('is NaN where the signs agree or nothing is defined', () => {
    expect(root((x) => x * x + 1, -1, 1)).toBeNaN();
    expect(root(() => NaN, -1, 1)).toBeNaN();
  });

  it('finds roots to 1e-12, limits in either order', () => {
    expect(root((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 12);
    expect(root((x) => x * x - 2, 2, 0)).toBeCloseTo(Math.SQRT2, 12);
    expect(root((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 12);
  });

  it('gets through flat, steep and nearly vertical functions', () => {
    const flat = root((x) => (x - 0.3) ** 9, -1, 1);
    expect(Math.abs(flat - 0.3)).toBeLessThan(1e-2);
    expect(root((x) => Math.cbrt(x - 0.3), -1, 1)).toBeCloseTo(0.3, 11);
    expect(root((x) => Math.atan(1e6 * (x - 0.3)), -1, 1)).toBeCloseTo(0.3, 11);
    expect(root((x) => 1 / x - 1e4, 1e-9, 1)).toBeCloseTo(1e-4, 12);
  });
});

describe('newton', () => {
  it('solves a straight line at once, also from far away', () => {
    expect(
      newton(
        (x) => 2 * x - 6,
        () => 2,
        1e6,
      ),
    ).toBe(3);
  });

  it('settles with a rate that is a few per cent off', () => {
    const f = (x: number): number => x - 0.3 * Math.sin(x) - 1;
    const exact = root(f, 0, 3);
    const rate = (x: number): number => 1 - 0.3 * Math.cos(x);
    expect(newton(f, rate, 1)).toBeCloseTo(exact, 13);
    expect(newton(f, (x) => 1.05 * rate(x), 1)).toBeCloseTo(exact, 12);
  });

  it('is NaN where steps leave the function or never settle', () => {
    expect(
      newton(
        (x) => Math.sqrt(1 - x * x) - 2,
        () => 1,
        0,
      ),
    ).toBeNaN();
    expect(
      newton(
        (x) => x,
        () => 0,
        1,
      ),
    ).toBeNaN();
    expect(newton(Math.cbrt, (x) => 1 / (3 * Math.cbrt(x) ** 2), 1)).toBeNaN();
  });
});

/** The slices of the proof against closed forms: an arc of one curvature, and a straight wall. */
import { describe, expect, test } from 'vitest';
import { bendingOf, heightAt, radiusAt } from '../../src/proof/bending.js';
import { dueStave } from '../../src/proof/due.js';
import { wideTub, wineCask } from '../pieces/vessels.js';
import { vesselOf } from './pack.js';

const cask = vesselOf(wineCask);
const bending = bendingOf(cask);
// rise 53 over half the height 472.5: radius of the outside profile
const [half, rise] = [945 / 2, (678 - 572) / 2];
const rho = (half ** 2 + rise ** 2) / (2 * rise);

describe('a cask of one arc', () => {
  test.each([100, 250, 472.5, -472.5])('station of the section at %d', (z) => {
    // the unstretched line is an arc of the same angle, half a thickness inside
    const exact = (rho - 0.5 * 27) * Math.asin(z / rho);
    expect(bending.stationOf(z)).toBeCloseTo(exact, 5);
    expect(bending.sectionAtStation(exact)!.z).toBeCloseTo(z, 5);
  });

  test('radius, lean and thickness of a section', () => {
    const { r, cos, sin, thickness } = bending.sectionAt(300);
    expect(r).toBeCloseTo(339 - rho + Math.sqrt(rho ** 2 - 300 ** 2), 9);
    expect(sin / cos).toBeCloseTo(300 / Math.sqrt(rho ** 2 - 300 ** 2), 9);
    expect(thickness).toBe(27);
  });

  test('a point at a depth lies on the line to the arc’s centre', () => {
    const section = bending.sectionAt(300);
    const inner = Math.hypot(radiusAt(section, 27) - (339 - rho), heightAt(section, 27));
    expect(inner).toBeCloseTo(rho - 27, 9);
    const through = bending.sectionThrough(400, () => 27);
    // the height of the inner arc's point at the same angle
    expect((through.z / rho) * (rho - 27)).toBeCloseTo(400, 8);
  });

  test('beyond the profile there is nothing', () => {
    expect(bending.stationOf(5000)).toBeNaN();
    expect(bending.sectionAtStation(5000)).toBeNull();
  });

  test('the unstretched line moves with the spec', () => {
    const outer = bendingOf(vesselOf(`${wineCask}  neutral: 0\n`));
    expect(outer.stationOf(472.5)).toBeCloseTo(rho * Math.asin(472.5 / rho), 5);
  });

  test('the blank: thickness after the closed form of a hollowed stave, ends after the arc', () => {
    const alpha = Math.PI / 28;
    const due = dueStave(cask.spec, bending, alpha);
    // at the bilge the wall stands upright: T = R (1 - cos alpha) + t cos alpha
    const thick = 339 * (1 - Math.cos(alpha)) + 27 * Math.cos(alpha);
    expect(27 + due.extra).toBeCloseTo(thick, 9);
    expect(due.ends.top.outer).toBeCloseTo((rho - 13.5) * Math.asin(half / rho), 5);
    expect(due.ends.top.inner).toBeCloseTo((rho - 13.5) * Math.asin(half / (rho - thick)), 4);
    expect(due.blankEnds.top).toEqual({
      outer: due.ends.top.inner + 10,
      inner: due.ends.top.inner + 10,
    });
    expect(due.halfWidth(bending.sectionAt(0), 0)).toBeCloseTo(339 * Math.tan(alpha), 9);
  });
});

test('a straight wall is laid flat at its slant length', () => {
  const tub = bendingOf(vesselOf(wideTub));
  const slant = Math.hypot(300, (620 - 520) / 2) / 300;
  for (const z of [-150, -40, 150]) expect(tub.stationOf(z)).toBeCloseTo(z * slant, 9);
});

test('a thinned wall: the drawn thickness, not more fibre', () => {
  const thin = bendingOf(vesselOf(`${wineCask}  endThickness: 23\n`));
  expect(thin.sectionAt(472.5).thickness).toBeCloseTo(23, 12);
  expect(thin.sectionAt(236.25).thickness).toBeCloseTo(26, 12);
  // integral of 1 - nu t(z) kappa along the arc, by Simpson's rule over the angle
  const end = Math.asin(half / rho);
  const along = (angle: number): number =>
    rho - 0.5 * (27 - 4 * ((rho * Math.sin(angle)) / half) ** 2);
  const n = 200;
  const sum = Array.from({ length: n + 1 }, (_, i) => {
    const weight = i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2;
    return weight * along((end * i) / n);
  }).reduce((a, b) => a + b, 0);
  expect(thin.stationOf(half)).toBeCloseTo((sum * end) / (3 * n), 4);
});

/** Hoops in space: steel against the vessel's own lengths, the lap's length, the upper end further out, rivets on it. */
import { describe, expect, it } from 'vitest';
import { rivetsOf } from '../../../../src/index.js';
import { hoopMesh } from '../../../../src/page/view3d/mesh/hoop-mesh.js';
import { openEdges, planned, template, templateNames, triangles, volumeOf } from '../meshes.js';

const pi = Math.PI;
const flat =
  'vessel: tub\nunits: mm\nheight: 280\ntop: 300\nbottom: 260\n' +
  'staves: { count: 12, thickness: 18, inside: flat, outside: flat }\n' +
  'hoops: [{ name: one, end: top, offset: 40, width: 25, thickness: 1.2, lap: 90 }]\n';

/** Of a piece of a ball with a flat of 2 a and the height h: pi h (3 a^2 + h^2) / 6. */
const cap = (a: number, h: number): number => (pi * h * (3 * a * a + h * h)) / 6;

describe.each([
  ...templateNames.map((name) => [name, template(name)] as const),
  ['flat', planned(flat)] as const,
])('%s', (_, vessel) => {
  it('has as much steel as was cut, and the heads of its rivets', () => {
    for (const hoop of vessel.hoops) {
      const mesh = hoopMesh(vessel, hoop);
      expect(openEdges(mesh)).toBe(0);
      const { width, thickness } = hoop.spec;
      // in the middle of its width, before driving tightens it; the upper end lies a thickness further out
      const length = hoop.cutLength + hoop.driving + hoop.splay / 2;
      const { count, diameter } = rivetsOf(hoop.spec, vessel.spec.units);
      const steel = width * thickness * length + count * cap(0.875 * diameter, 0.6 * diameter);
      expect(Math.abs(volumeOf(mesh) / steel - 1)).toBeLessThan(0.003);
    }
  });
});

describe('the quarter hoop of the wine cask', () => {
  const vessel = template('wine-cask-225');
  const hoop = vessel.hoops.find(({ spec }) => spec.name === 'quarter')!;
  const { nearRadius, nearHeight, spec, slope } = hoop;
  const mesh = hoopMesh(vessel, hoop);
  const corners = triangles(mesh)
    .flat()
    .map(([x, y, z]) => ({ radius: Math.hypot(x, y), azimuth: Math.atan2(y, x), z }));
  const at = (depth: number) =>
    corners.filter(
      ({ radius, z }) =>
        Math.abs(radius - (nearRadius + depth * Math.cos(slope))) < 0.01 &&
        Math.abs(z - (nearHeight + depth * Math.sin(slope))) < 0.01,
    );
  const reach = (found: { azimuth: number }[]): number => {
    const all = found.map(({ azimuth }) => azimuth);
    return Math.max(...all) - Math.min(...all);
  };

  it('lies two straps high over the length of the lap, and one elsewhere', () => {
    const outermost = at(2 * spec.thickness);
    const middle = (hoop.nearRadius + hoop.farRadius) / 2 + spec.thickness * Math.cos(slope);
    expect(reach(outermost) * middle).toBeCloseTo(spec.lap, 1);
    const lap = outermost.map(({ azimuth }) => azimuth);
    const [from, to] = [Math.min(...lap), Math.max(...lap)];
    const beyond = corners.filter(
      ({ azimuth, radius, z }) =>
        Math.abs(z - nearHeight) < 0.1 &&
        (azimuth < from - 0.03 || azimuth > to + 0.03) &&
        radius > nearRadius + 1.1 * spec.thickness,
    );
    expect(beyond).toEqual([]);
  });

  it('has the heads of two rivets of 4 in the middle of the strap, a quarter of the lap from its ends', () => {
    // square to the strap, from its inside
    const heightOf = ({ radius, z }: (typeof corners)[number]): number =>
      (radius - nearRadius) * Math.cos(slope) + (z - nearHeight) * Math.sin(slope);
    const proud = corners.filter((corner) => heightOf(corner) > 2 * spec.thickness + 0.1);
    const most = Math.max(...proud.map(heightOf));
    expect(most).toBeCloseTo(2 * spec.thickness + 0.6 * 4, 2);
    const tops = proud.filter((corner) => heightOf(corner) > most - 0.001);
    const lap = at(2 * spec.thickness).map(({ azimuth }) => azimuth);
    const share = ({ azimuth }: { azimuth: number }): string =>
      ((azimuth - Math.min(...lap)) / (Math.max(...lap) - Math.min(...lap))).toFixed(2);
    expect([...new Set(tops.map(share))].sort()).toEqual(['0.25', '0.75']);
    const middle =
      (hoop.nearHeight + hoop.farHeight) / 2 + (2 * spec.thickness + 2.4) * Math.sin(slope);
    for (const { z } of tops) expect(z).toBeCloseTo(middle, 2);
  });
});

describe('a flat outside', () => {
  const vessel = planned(flat);
  const [hoop] = vessel.hoops;
  const mesh = hoopMesh(vessel, hoop!);

  it('bends the lap round the corner with the strap beneath: its length is the lap’s along the faces', () => {
    const { spec, nearRadius, nearHeight, slope } = hoop!;
    const { thickness, lap } = spec;
    // near edge of the outside of the upper end: on the polygon two thicknesses out
    const apothem = nearRadius + 2 * thickness * Math.cos(slope);
    const line = triangles(mesh)
      .flat()
      .filter(
        ([, , z]) =>
          Math.abs(
            z -
              (nearHeight +
                2 * thickness * Math.sin(slope) * Math.sign(hoop!.nearHeight - hoop!.farHeight)),
          ) < 0.005,
      )
      .map(([x, y]) => {
        const azimuth = Math.atan2(y, x);
        const face = (Math.round(azimuth / (pi / 6)) * pi) / 6;
        return {
          azimuth,
          isOn: Math.abs(Math.hypot(x, y) * Math.cos(azimuth - face) - apothem) < 0.005,
          along: apothem * (Math.tan(azimuth - face) + 2 * Math.tan(pi / 12) * (face / (pi / 6))),
        };
      })
      .filter(({ isOn }) => isOn);
    const places = line.map(({ along }) => along);
    const scale =
      ((hoop!.nearRadius + hoop!.farRadius) / 2 + thickness * Math.cos(slope)) / apothem;
    expect((Math.max(...places) - Math.min(...places)) * scale).toBeCloseTo(lap, 1);
  });
});

it('a welded hoop, without a lap, is one ring', () => {
  const vessel = planned(flat.replace('lap: 90', 'lap: 0'));
  const [hoop] = vessel.hoops;
  const mesh = hoopMesh(vessel, hoop!);
  expect(openEdges(mesh)).toBe(0);
  const { width, thickness } = hoop!.spec;
  const length = hoop!.cutLength + hoop!.driving + hoop!.splay / 2;
  expect(volumeOf(mesh) / (width * thickness * length)).toBeCloseTo(1, 2);
});

it('a lap longer than the hoop stays a closed body', () => {
  const vessel = planned(flat.replace('lap: 90', 'lap: 1000'));
  expect(openEdges(hoopMesh(vessel, vessel.hoops[0]!))).toBe(0);
});

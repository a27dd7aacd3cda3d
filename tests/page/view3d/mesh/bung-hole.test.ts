/** The bung hole: where it is, how wide, through which stave, and how much wood it takes. */
import { describe, expect, it } from 'vitest';
import { partsOf, type Part } from '../../../../src/page/view3d/parts.js';
import { openEdges, planned, template, triangles, volumeOf } from '../meshes.js';

type Vessel = ReturnType<typeof template>;

const staves = (vessel: Vessel): Part[] => partsOf(vessel).filter(({ id }) => id.kind === 'stave');
const cask = (rest: string): Vessel =>
  planned(`vessel: cask\nunits: mm\nheight: 945\nbilge: 678\nends: 572\n${rest}\n`);
const flatTub = (bung: string): Vessel =>
  planned(
    'vessel: tub\nunits: mm\nheight: 400\ntop: 500\nbottom: 500\n' +
      `staves: { count: 12, thickness: 25, inside: flat, outside: flat }\nbung: ${bung}\n`,
  );

/** Corners whose distance from the hole's axis is the hole's radius, as distances from the vessel's axis along it. */
function wallOf({ mesh }: Part, radius: number): number[] {
  const near = triangles(mesh)
    .flat()
    .filter(([, y, z]) => Math.abs(Math.hypot(y, z) - radius) < 1e-3);
  return near.map(([x]) => x);
}

describe('the bung hole of the wine cask', () => {
  const vessel = template('wine-cask-225');
  const [bungStave, ...others] = staves(vessel);

  it('is 50 wide about mid-height in the first stave, and reaches from face to face', () => {
    expect(vessel.spec.bung!.diameter).toBe(50);
    const wall = wallOf(bungStave!, 25);
    const { ring, spec, profile } = vessel;
    // the outer ends above and below, the inner ones beside the middle
    expect(Math.max(...wall)).toBeCloseTo(profile.radius(25), 3);
    const inside = ring.closesAt / 2 - spec.staves.thickness;
    expect(Math.min(...wall)).toBeCloseTo(Math.sqrt(inside ** 2 - 25 ** 2), 3);
    expect(openEdges(bungStave!.mesh)).toBe(0);
  });

  it('leaves nothing of the stave within it', () => {
    const within = triangles(bungStave!.mesh).filter((corners) => {
      const [y, z] = [1, 2].map((k) => corners.reduce((sum, at) => sum + at[k]! / 3, 0));
      return Math.hypot(y!, z!) < 24.9;
    });
    // 48 facets lie up to 25 (1 - cos(pi / 48)) = 0.05 within the circle, their triangles no further
    expect(within).toEqual([]);
  });

  it('takes its area times the thickness out of the stave', () => {
    const [first, second] = [bungStave!, others[0]!].map(({ mesh }) => volumeOf(mesh));
    const polygon = 24 * 25 ** 2 * Math.sin((2 * Math.PI) / 48);
    // round faces: the hole is a little longer at its sides, and the stave is made of facets
    expect((second! - first!) / (polygon * 27)).toBeCloseTo(1, 1);
  });

  it('is in one stave only', () => {
    for (const each of others) expect(each.mesh).toBe(others[0]!.mesh);
    expect(wallOf(others[0]!, 25)).toEqual([]);
  });
});

it('of flat staves takes exactly a prism', () => {
  const [bored, whole] = ['{ diameter: 60 }', 'none'].map((bung) =>
    volumeOf(staves(flatTub(bung))[0]!.mesh),
  );
  expect(whole! - bored!).toBeCloseTo(24 * 30 ** 2 * Math.sin((2 * Math.PI) / 48) * 25, 0);
});

it('is in the widest stave of a mixed set', () => {
  const widths = [...Array<number>(13).fill(70), 96, ...Array<number>(14).fill(74)];
  const all = staves(cask(`staves: { widths: [${widths.join(', ')}] }`));
  const radius = planned(
    `vessel: cask\nunits: mm\nheight: 945\nbilge: 678\nends: 572\nstaves: { widths: [${widths.join(', ')}] }\n`,
  ).spec.bung!.diameter;
  const holed = all.filter((each) => wallOf(each, radius / 2).length > 0);
  expect(holed.map(({ id }) => id.index)).toEqual([13]);
});

it('is left out where the spec has none, or the stave no room for it', () => {
  for (const bung of ['none', '{ diameter: 74 }']) {
    const all = staves(cask(`staves: { count: 28 }\nbung: ${bung}`));
    expect(openEdges(all[0]!.mesh)).toBe(0);
    expect(volumeOf(all[0]!.mesh)).toBeCloseTo(volumeOf(all[1]!.mesh), 6);
  }
});

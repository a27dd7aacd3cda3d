/** Bodies are closed, look outwards and hold as much wood as formulas that know no triangles say. */
import { describe, expect, it } from 'vitest';
import { partsOf } from '../../../src/page/view3d/parts.js';
import { openEdges, planned, template, templateNames, triangles, volumeOf } from './meshes.js';

const flat = 'staves: { count: 12, thickness: 18, inside: flat, outside: flat }';
const tub = (staves: string): string =>
  `vessel: tub\nunits: mm\nheight: 280\ntop: 300\nbottom: 260\n${staves}\n`;
const cask = (staves: string): string =>
  `vessel: cask\nunits: mm\nheight: 945\nbilge: 678\nends: 572\n${staves}\n`;
const mixed = [...Array(14).keys()].flatMap(() => [62, 90.5]);

const others: [string, string][] = [
  ['a tub with flat faces', tub(flat)],
  ['a cask with flat faces', cask('staves: { count: 24, inside: flat, outside: flat }')],
  ['a mixed cask', cask(`staves: { widths: [${mixed.join(', ')}] }`)],
  ['a mixed cask with flat faces', cask(`staves: { widths: [${mixed.join(', ')}], inside: flat }`)],
  ['a cask thinned to its ends', cask('staves: { count: 28, endThickness: 22 }')],
  ['a head swollen across its boards', `${cask('staves: { count: 28 }')}heads: { crossGrain: -3 }`],
];
const all = [
  ...templateNames.map((name) => [name, template(name)] as const),
  ...others.map(([name, text]) => [name, planned(text)] as const),
];

describe.each(all)('%s', (_, vessel) => {
  const parts = partsOf(vessel);

  it('has a body for each stave, board and hoop', () => {
    const { staves, heads, hoops } = vessel;
    const boards = (heads.top?.boards.length ?? 0) + heads.bottom.boards.length;
    expect(parts).toHaveLength(staves.length + boards + hoops.length);
  });

  it('is closed, without a corner that is no number', () => {
    for (const { mesh, id } of parts) {
      expect(mesh.positions.every(Number.isFinite), JSON.stringify(id)).toBe(true);
      expect(openEdges(mesh), JSON.stringify(id)).toBe(0);
      expect(volumeOf(mesh), JSON.stringify(id)).toBeGreaterThan(0);
    }
  });

  it('meets its neighbours: the staves reach once round', () => {
    const staves = parts.filter(({ id }) => id.kind === 'stave');
    const last = staves.at(-1)!.azimuth - vessel.staves.at(-1)!.alpha;
    expect(last).toBeCloseTo(vessel.staves[0]!.alpha - 2 * Math.PI, 9);
  });
});

const of = (vessel: ReturnType<typeof template>, kind: string) =>
  partsOf(vessel).filter(({ id }) => id.kind === kind);
const sum = (values: number[]): number => values.reduce((total, value) => total + value, 0);

describe('volume', () => {
  /** A ring of rectangular section: Pappus, area times the way of its centre. */
  const ring = (outer: number, inner: number, height: number): number =>
    (outer - inner) * height * Math.PI * (outer + inner);

  it('of a straight tub: a hollow cylinder less croze and howel', () => {
    const vessel = planned(
      'vessel: tub\nunits: mm\nheight: 400\ntop: 500\nbottom: 500\nstaves: { count: 20, thickness: 25 }\n' +
        'howel: { depth: 2, beyondGroove: 20 }\n' +
        'heads: { thickness: 25, clearance: 0, croze: { inset: 50, depth: 5, width: 6 } }\n' +
        'chime: { bevelDegrees: 40, flat: 25 }\n',
    );
    expect(vessel.heads.bottom.groove.chime).toBeNull();
    // howel from the end to 20 above the groove's upper lip, groove 6 wide below it
    const howel = ring(227, 225, 53 + 20);
    const groove = ring(232, 227, 6);
    const expected = ring(250, 225, 400) - howel - groove;
    const wood = sum(of(vessel, 'stave').map(({ mesh }) => volumeOf(mesh)));
    // facets of 6 to 18 degrees over round faces: sin(d)/d of the sector's area
    const facet = (2 * Math.PI) / 20 / Math.ceil((2 * Math.PI) / 20 / 0.08);
    expect(wood / (expected * (Math.sin(facet) / facet))).toBeCloseTo(1, 6);
  });

  it('of flat staves: a prism over two polygons, less what is worked round', () => {
    const vessel = planned(
      'vessel: tub\nunits: mm\nheight: 400\ntop: 500\nbottom: 500\n' +
        'staves: { count: 12, thickness: 25, inside: flat, outside: flat }\n' +
        'howel: { depth: 2, beyondGroove: 20 }\nchime: { bevelDegrees: 40, flat: 25 }\n' +
        'heads: { thickness: 25, croze: { inset: 50, depth: 5, width: 6 } }\n',
    );
    expect(vessel.heads.bottom.groove.chime).toBeNull();
    const polygon = (apothem: number): number => 12 * apothem ** 2 * Math.tan(Math.PI / 12);
    const howel = 225 / Math.cos(Math.PI / 12) + 2;
    const worked = (Math.PI * howel ** 2 - polygon(225)) * (53 + 20);
    const groove = Math.PI * ((howel + 5) ** 2 - howel ** 2) * 6;
    const wood = sum(of(vessel, 'stave').map(({ mesh }) => volumeOf(mesh)));
    // a circle in facets of 4.3 degrees has 0.1 % less area than the circle
    const off = wood - ((polygon(250) - polygon(225)) * 400 - worked - groove);
    expect(Math.abs(off)).toBeLessThan(0.0011 * Math.PI * howel ** 2 * 73);
  });

  it('of the wall of a cask: its section by the midpoint rule, times the way round', () => {
    const vessel = template('wine-cask-225');
    const { spec, profile, wall, heads } = vessel;
    const inside = (z: number): number => {
      const head = z > 0 ? heads.top! : heads.bottom;
      const { groove } = head;
      const along = (h: number): number => (z - h) * groove.towardsEnd;
      if (groove.chime && along(groove.chime.footHeight) > 0) {
        const share =
          along(groove.chime.footHeight) / (spec.height / 2 - Math.abs(groove.chime.footHeight));
        return groove.chime.footRadius + share * (groove.chime.endRadius - groove.chime.footRadius);
      }
      if (along(groove.innerLip) > 0 && along(groove.outerLip) < 0) return groove.radius;
      return along(groove.howelTo) > 0 ? groove.howelRadius(z) : wall.insideRadius(z);
    };
    const slices = 20_000;
    const thick = spec.height / slices;
    const expected = sum(
      Array.from({ length: slices }, (_, i) => {
        const z = (i + 0.5) * thick - spec.height / 2;
        return Math.PI * (profile.radius(z) ** 2 - inside(z) ** 2) * thick;
      }),
    );
    // the bung hole's own wood is 0.12 % of it
    const bung = Math.PI * (spec.bung!.diameter / 2) ** 2 * spec.staves.thickness;
    const wood = sum(of(vessel, 'stave').map(({ mesh }) => volumeOf(mesh)));
    expect(Math.abs(wood / (expected - bung) - 1)).toBeLessThan(0.002);
  });

  it('of a head: cone, land and cone again', () => {
    const { heads } = template('wine-cask-225');
    const head = heads.top!;
    const { section } = head;
    // each band between two corners is a frustum: pi h (a^2 + ab + b^2) / 3
    const expected = sum(
      section.slice(1).map(({ x, y }, i) => {
        const from = section[i]!;
        return (Math.PI * (y - from.y) * (x * x + x * from.x + from.x ** 2)) / 3;
      }),
    );
    const boards = of(template('wine-cask-225'), 'board').filter(
      ({ id }) => id.kind === 'board' && id.end === 'top',
    );
    const wood = sum(boards.map(({ mesh }) => volumeOf(mesh)));
    // facets round the rim, and bevels in six cones: both take a little
    expect(wood / expected - 1).toBeLessThan(0);
    expect(wood / expected - 1).toBeGreaterThan(-0.003);
  });
});

describe('girths', () => {
  it('of the staves at the bilge and of hoops at their edges are the vessel’s', () => {
    const vessel = template('wine-cask-225');
    for (const { mesh, id } of of(vessel, 'hoop')) {
      const hoop = vessel.hoops[id.index]!;
      const least = Math.min(
        ...triangles(mesh).flatMap((corners) => corners.map(([x, y]) => Math.hypot(x, y))),
      );
      const girth = Math.min(hoop.nearGirth, hoop.farGirth);
      expect(2 * Math.PI * least).toBeCloseTo(girth, 1);
    }
    const stave = of(vessel, 'stave')[0]!;
    const most = Math.max(
      ...triangles(stave.mesh).flatMap((corners) => corners.map(([x, y]) => Math.hypot(x, y))),
    );
    expect(2 * most).toBeCloseTo(vessel.ring.closesAt, 2);
  });

  it('of a flat outside is the polygon’s', () => {
    const vessel = planned(tub(flat));
    const { hoops } = vessel;
    // twelve staves, the middle of the first at azimuth 0
    const isAtJoint = (x: number, y: number): boolean =>
      Math.abs(Math.cos(6 * Math.atan2(y, x))) < 1e-6;
    for (const { mesh, id } of of(vessel, 'hoop')) {
      const { nearHeight, nearGirth } = hoops[id.index]!;
      const corners = triangles(mesh)
        .flat()
        .filter(([x, y, z]) => Math.abs(z - nearHeight) < 0.01 && isAtJoint(x, y))
        .map(([x, y]) => ({ radius: Math.hypot(x, y), azimuth: Math.atan2(y, x) }));
      const inner = corners.filter(
        ({ radius }) => radius < Math.min(...corners.map((c) => c.radius)) + 0.01,
      );
      const radius = inner[0]!.radius;
      expect(12 * 2 * radius * Math.sin(Math.PI / 12)).toBeCloseTo(nearGirth, 2);
      expect(
        new Set(inner.map(({ azimuth }) => Math.round(azimuth * 1000))).size,
      ).toBeGreaterThanOrEqual(12);
    }
  });
});

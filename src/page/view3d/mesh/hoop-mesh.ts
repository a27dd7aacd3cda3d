/**
 * A hoop as it sits: a strap of its thickness round the outside, its end lapped over its beginning and riveted there. Before
 * the lap the strap climbs by its thickness.
 */
import { rivetHead, rivetsOf, type Vessel } from '../../../index.js';
import { hoopWay, type HoopWay } from './hoop-way.js';
import { MeshMaker, type Mesh, type Place } from './mesh.js';
import { rivetHeadOn, type Seat } from './rivet-mesh.js';

type Hoop = Vessel['hoops'][number];

/** The middle of every lap, clockwise from the middle of the first stave as seen from the top: a sixth of the way round. */
const lapMiddle = -Math.PI / 3;
/** The climb is this many times as long as it is high. */
const climb = 4;

export function hoopMesh(vessel: Vessel, hoop: Hoop): Mesh {
  const make = new MeshMaker();
  const way = hoopWay(vessel);
  const strap = strapOf(hoop, way);
  const section = strap.corners.map((corner) =>
    strap.stations.map(({ azimuth, lift }) => corner(azimuth, lift)),
  );
  const turned = strap.upwards > 0 ? section : [...section].reverse();
  turned.forEach((from, i) => {
    make.patch([from, turned[(i + 1) % turned.length]!]);
    make.edge(from);
  });
  cut(make, turned);
  rivets(make, vessel, hoop, way, strap);
  return make.made();
}

/** Both ends of the strap. */
function cut(make: MeshMaker, rows: readonly (readonly Place[])[]): void {
  const [a, b, c, d] = rows.map((row) => row[0]!) as [Place, Place, Place, Place];
  make.patch([
    [a, b],
    [d, c],
  ]);
  make.edge([a, b, c, d, a]);
  const [e, f, g, h] = rows.map((row) => row.at(-1)!) as [Place, Place, Place, Place];
  make.patch([
    [f, e],
    [g, h],
  ]);
  make.edge([e, f, g, h, e]);
}

interface Station {
  readonly azimuth: number;
  /** how many thicknesses the strap lies further out than on the staves */
  readonly lift: number;
}

interface Strap {
  readonly stations: readonly Station[];
  /** the four edges of the strap, each in place at a station: inside near and far, outside far and near, going round */
  readonly corners: readonly ((azimuth: number, lift: number) => Place)[];
  readonly upwards: number;
  readonly begins: number;
  /** where the surfaces of the lap touch, in the middle of the strap */
  readonly lapRadius: number;
}

function strapOf(hoop: Hoop, way: HoopWay): Strap {
  const { nearRadius, farRadius, nearHeight, farHeight, slope, spec } = hoop;
  const upwards = Math.sign(farHeight - nearHeight);
  const [out, along] = [spec.thickness * Math.cos(slope), spec.thickness * Math.sin(slope)];
  const corner =
    (radius: number, height: number, depth: number) =>
    (azimuth: number, lift: number): Place => {
      const reach = (radius + (lift + depth) * out) * way.stretch(azimuth);
      return [
        reach * Math.cos(azimuth),
        reach * Math.sin(azimuth),
        height - upwards * (lift + depth) * along,
      ];
    };
  const lapRadius = (nearRadius + farRadius) / 2 + out;
  const begins = lapMiddle - spec.lap / 2 / lapRadius;
  return {
    stations: stationsOf(way, begins, spec, lapRadius),
    corners: [
      corner(nearRadius, nearHeight, 0),
      corner(nearRadius, nearHeight, 1),
      corner(farRadius, farHeight, 1),
      corner(farRadius, farHeight, 0),
    ],
    upwards,
    begins,
    lapRadius,
  };
}

/** Once round on the staves, a climb at the end of it, and the lap on top of the beginning. */
function stationsOf(
  way: HoopWay,
  begins: number,
  { lap, thickness }: Hoop['spec'],
  radius: number,
): Station[] {
  const home = begins + 2 * Math.PI;
  const climbs = home - (climb * thickness) / radius;
  // no hoop is lapped all round, whatever a spec says
  const lapTurn = Math.min(way.after(begins, lap, radius), climbs - 0.1) - begins;
  const low = (azimuth: number): Station => ({ azimuth, lift: 0 });
  const high = (azimuth: number): Station => ({ azimuth, lift: 1 });
  if (lap === 0) return [begins, ...way.bends(begins, home), home].map(low);
  return [
    ...[begins, ...way.bends(begins, begins + lapTurn), begins + lapTurn].map(low),
    ...[...way.bends(begins + lapTurn, climbs), climbs].map(low),
    ...[home, ...way.bends(home, home + lapTurn), home + lapTurn].map(high),
  ];
}

function rivets(make: MeshMaker, vessel: Vessel, hoop: Hoop, way: HoopWay, strap: Strap): void {
  const { places, diameter } = rivetsOf(hoop.spec, vessel.spec.units);
  const head = rivetHead(diameter);
  for (const place of places) {
    const azimuth = way.after(strap.begins, place, strap.lapRadius);
    rivetHeadOn(make, seatAt(hoop, strap, azimuth), head.diameter, head.height);
  }
}

/** In the middle of the upper end's outside. */
function seatAt({ slope }: Hoop, { corners, upwards }: Strap, azimuth: number): Seat {
  const [near, far] = [corners[1]!(azimuth, 1), corners[2]!(azimuth, 1)];
  const middle = (k: 0 | 1 | 2): number => (near[k] + far[k]) / 2;
  const [cos, sin] = [Math.cos(azimuth), Math.sin(azimuth)];
  const [level, rise] = [Math.cos(slope), upwards * Math.sin(slope)];
  return {
    at: [middle(0), middle(1), middle(2)],
    along: [-sin, cos, 0],
    across: [rise * cos, rise * sin, level],
    out: [level * cos, level * sin, -rise],
  };
}

/** A hoop as it sits: a strap of its thickness round the outside, round or along the flat faces. The lap is not shown. */
import type { Vessel } from '../../../index.js';
import { MeshMaker, type Mesh, type Place } from './mesh.js';

type Hoop = Vessel['hoops'][number];

const facets = 96;

/** Where the strap bends, anticlockwise from the middle of the first stave, and how much further out it lies there. */
interface Turn {
  readonly azimuth: number;
  readonly stretch: number;
}

export function hoopMesh(vessel: Vessel, hoop: Hoop): Mesh {
  const make = new MeshMaker();
  const { nearRadius, farRadius, nearHeight, farHeight, slope, spec } = hoop;
  const turns = vessel.spec.staves.outside === 'flat' ? alongFaces(vessel.ring.alphas) : round();
  const upwards = Math.sign(farHeight - nearHeight);
  const [out, along] = [spec.thickness * Math.cos(slope), spec.thickness * Math.sin(slope)];
  const row = (radius: number, height: number): Place[] => {
    const places = turns.map(({ azimuth, stretch }): Place => [
      radius * stretch * Math.cos(azimuth),
      radius * stretch * Math.sin(azimuth),
      height,
    ]);
    return [...places, places[0]!];
  };
  const section = [
    row(nearRadius, nearHeight),
    row(nearRadius + out, nearHeight - upwards * along),
    row(farRadius + out, farHeight - upwards * along),
    row(farRadius, farHeight),
  ];
  section.forEach((from, i) => {
    const to = section[(i + 1) % section.length]!;
    make.edgedPatch(upwards > 0 ? [from, to] : [to, from]);
  });
  return make.made();
}

const round = (): Turn[] =>
  Array.from({ length: facets }, (_, i) => ({ azimuth: (i / facets) * 2 * Math.PI, stretch: 1 }));

/** At each joint, at the corner that stands out further. Staves follow one another clockwise. */
function alongFaces(alphas: readonly number[]): Turn[] {
  let azimuth = alphas[0]!;
  const clockwise = alphas.map((alpha, i) => {
    const turn = { azimuth, stretch: 1 / Math.cos(Math.max(alphas.at(i - 1)!, alpha)) };
    azimuth -= 2 * alpha;
    return turn;
  });
  return clockwise.reverse();
}

/**
 * The ring before it is bent: straight staves stand in the raising hoop with their joints closed there, and splay towards
 * the other end. Lengths in mm, angles in radians; `s` is the station on the flat stave.
 *
 * Leaning by `lambda`, a stave's outer face stands at `r(s) = r_h + (s_h - s) sin lambda` from the axis, `r_h` the finished
 * radius at the hoop. Its joint planes leave it room for the half-width `r tan alpha` and it needs `r_o tan alpha`, with
 * `r_o(s)` the finished radius of that station: so `r(s)` may not be less than `r_o(s)`. That curve is hollow towards the
 * axis, and the straight line that touches it at the hoop, with the slope `sin lambda = -d r_o / ds`, is the least that will
 * do. The joints gape by `2 sin alpha (r - r_o)`, measured straight across from corner to corner.
 */
import { lean } from './profile.js';
import type { Vessel } from './vessel.js';
import { workingHoopsOf, type WorkingHoop } from './working-hoops.js';

export interface RaisingPlace {
  readonly station: number;
  /** along the axis from the raised end, downwards */
  readonly depth: number;
  /** from the axis to the middle of an outer face */
  readonly radius: number;
  /** widths of the outer faces together: the girth if the joints were closed here */
  readonly widths: number;
  /** open joint between two staves of mean width, across the outer corners */
  readonly gap: number;
  /** of a tape pulled round the outer corners */
  readonly girth: number;
}

export interface Raising {
  readonly hoop: WorkingHoop;
  /** of every stave from the axis; positive when the ring opens downwards */
  readonly lean: number;
  /** of the standing ring, along the axis */
  readonly height: number;
  readonly raisedStation: number;
  readonly freeStation: number;
  readonly hoopStation: number;
  place(station: number): RaisingPlace;
}

/** The top end is raised; both ends as they are sawn before bending. */
export function raisingOf(vessel: Vessel): Raising {
  const { spec, profile, wall, bend, meanStave } = vessel;
  const [hoop] = workingHoopsOf(vessel) as [WorkingHoop];
  const hoopStation = bend.station(hoop.height);
  const hoopRadius = profile.radius(hoop.height);
  // dr/dsigma = -sin phi on the outer face, and ds = (1 - nu t kappa) dsigma on the flat stave
  const shortening =
    1 - spec.staves.neutral * wall.thickness(hoop.height) * profile.curvature(hoop.height);
  const sine = Math.sin(lean(profile, hoop.height)) / shortening;
  const cosine = Math.sqrt(1 - sine * sine);
  const raisedStation = meanStave.blankEnds.top.outer;
  const freeStation = meanStave.blankEnds.bottom.outer;
  const place = (station: number): RaisingPlace => {
    const radius = hoopRadius + (hoopStation - station) * sine;
    const finished = profile.radius(bend.sectionAtStation(station));
    return {
      station,
      depth: (raisedStation - station) * cosine,
      radius,
      ...around(vessel, radius, finished),
    };
  };
  return {
    hoop,
    lean: Math.asin(sine),
    height: (raisedStation - freeStation) * cosine,
    raisedStation,
    freeStation,
    hoopStation,
    place,
  };
}

/** All staves together, where they stand at `radius` and are as wide as they will be at `finished`. */
function around(
  { ring, meanStave }: Vessel,
  radius: number,
  finished: number,
): Pick<RaisingPlace, 'widths' | 'gap' | 'girth'> {
  const open = radius - finished;
  const widths = 2 * finished * ring.sumOfTangents;
  const gaps = ring.alphas.reduce((sum, alpha) => sum + 2 * Math.sin(alpha) * open, 0);
  return { widths, gap: 2 * Math.sin(meanStave.alpha) * open, girth: widths + gaps };
}

/** Sets bent staves in a ring and measures what stands between them. */
import type { ExactStave } from './exact.js';
import type { StaveEdges } from './stave-edges.js';
import type { Notebook } from './verdict.js';
import { tolerance } from './tolerances.js';

/** A stave on the bench: what was drawn, and how its blank bends. */
export interface BentStave {
  exact: ExactStave;
  outer: StaveEdges;
  inner: StaveEdges;
}

const sectionsMeasured = 41;
const depthsMeasured = [0, 0.25, 0.5, 0.75, 1];

/**
 * Every stave stands with its middle plane on its nominal azimuth and its outer face on the profile. The joint
 * plane between two neighbours goes through the axis; a facing edge's distance to it is
 * `radius sin(alpha) - halfWidth cos(alpha)`, and the gap is the sum of both.
 */
export function measureRing(ring: readonly BentStave[], notebook: Notebook): void {
  for (const [one, other] of distinctJoints(ring)) {
    for (const station of sharedStations([one, other])) {
      for (const depth of depthsMeasured) {
        const gap =
          standOff(one, station, depth, 'upper') + standOff(other, station, depth, 'lower');
        notebook.note('joint gap', gap, tolerance.joint);
      }
    }
  }
  measureGirths(ring, notebook);
}

function standOff(
  stave: BentStave,
  station: number,
  depth: number,
  side: 'upper' | 'lower',
): number {
  const { exact, outer, inner } = stave;
  const section = exact.bend.sectionAt(exact.bend.heightOf(station));
  const radius = section.r - depth * exact.depthAt(section) * section.cos;
  const edge = side === 'upper' ? 'upperAt' : 'lowerAt';
  // the bevel is straight from face to face
  const halfWidth = (1 - depth) * outer[edge](station) + depth * inner[edge](station);
  return radius * Math.sin(exact.alpha) - halfWidth * Math.cos(exact.alpha);
}

/** The polygon of outer faces at several heights: its girth, and whether its angles fill the ring. */
function measureGirths(ring: readonly BentStave[], notebook: Notebook): void {
  const [first] = ring;
  if (first === undefined) return;
  const allowed = ring.length * tolerance.joint;
  for (const station of sharedStations(ring)) {
    const { r } = first.exact.bend.sectionAt(first.exact.bend.heightOf(station));
    let [girth, angle, trueGirth] = [0, 0, 0];
    for (const { outer, exact } of ring) {
      for (const halfWidth of [outer.upperAt(station), outer.lowerAt(station)]) {
        girth += halfWidth;
        angle += Math.atan(halfWidth / r);
      }
      trueGirth += 2 * r * Math.tan(exact.alpha);
    }
    notebook.note('girth', girth - trueGirth, allowed);
    notebook.note('closure', (angle - 2 * Math.PI) * r, allowed);
  }
}

function distinctJoints(ring: readonly BentStave[]): [BentStave, BentStave][] {
  const joints = new Map<BentStave, Set<BentStave>>();
  ring.forEach((stave, i) => {
    const next = ring[(i + 1) % ring.length] ?? stave;
    joints.set(stave, (joints.get(stave) ?? new Set()).add(next));
  });
  return [...joints].flatMap(([one, others]) =>
    [...others].map((other): [BentStave, BentStave] => [one, other]),
  );
}

/** Stations that every face of these staves reaches. */
function sharedStations(staves: readonly BentStave[]): number[] {
  const faces = staves.flatMap(({ outer, inner }) => [outer, inner]);
  const left = Math.max(...faces.map((face) => face.left));
  const right = Math.min(...faces.map((face) => face.right));
  return Array.from(
    { length: sectionsMeasured },
    (_, i) => left + ((right - left) * i) / (sectionsMeasured - 1),
  );
}

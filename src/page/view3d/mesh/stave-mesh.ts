/**
 * One stave as it stands in the vessel, finished: its middle at azimuth 0, which is `+x`. All its surfaces are cut at the same
 * heights. A level cut of a face that stays flat is a straight line across, exactly: `r / cos(azimuth)`.
 */
import type { Vessel } from '../../../index.js';
import { boreWall, bungHoleOf, roomFor, type BungHole } from './bung-hole.js';
import { byHeight, rung } from './chain.js';
import { MeshMaker, type Mesh, type Place } from './mesh.js';
import { stavesInside, type InsidePlace } from './stave-inside.js';

/** A round face is made of facets no wider than this, radians: a quarter of a millimetre off on a 225-litre cask. */
const widestFacet = 0.08;

interface Section {
  readonly outer: readonly InsidePlace[];
  readonly levels: readonly InsidePlace[][];
  readonly runs: readonly InsidePlace[][];
}

/** Makes the staves of a vessel by their half-angles; what they have in common is worked out once. */
export function staveMaker(vessel: Vessel): (alpha: number, takesBung: boolean) => Mesh {
  const levels = byHeight(stavesInside(vessel));
  const outer = levels.map(([level]) => outsideAt(vessel, level!.height));
  const section = { outer, levels, runs: runsOf(levels) };
  return (alpha, takesBung) =>
    staveMesh(section, alpha, takesBung ? boreOf(vessel, section, alpha) : null);
}

function staveMesh({ outer, levels, runs }: Section, alpha: number, bore: Bore | null): Mesh {
  const make = new MeshMaker();
  const azimuths = azimuthsAcross(alpha);
  const row = (face: InsidePlace): Place[] => azimuths.map((azimuth) => placeOf(face, azimuth));
  bored(make, outer.map(row), bore?.outside);
  for (const run of runs) {
    const rows = run.map((face) => row(face).reverse());
    bored(make, rows, run === bore?.run ? bore.inside : undefined);
  }
  if (bore) boreWall(make, bore.outside.ring, bore.inside.ring);
  make.edgedPatch([row(outer.at(-1)!), row(levels.at(-1)!.at(-1)!)]);
  make.edgedPatch([row(levels[0]![0]!), row(outer[0]!)]);
  joint(make, outer, levels, alpha);
  joint(make, outer, levels, -alpha);
  return make.made();
}

/** A face with a hole in it: between which of its rows, and round which places. */
interface Holed {
  readonly rows: readonly [low: number, high: number];
  readonly ring: readonly Place[];
  /** 1 where rows run towards greater `y`, else -1 */
  readonly hand: 1 | -1;
}

interface Bore {
  readonly outside: Holed;
  /** which of the inside's runs the hole comes out in */
  readonly run: readonly InsidePlace[];
  readonly inside: Holed;
}

/** Null where there is no hole, or no room for it. */
function boreOf(vessel: Vessel, { outer, runs }: Section, alpha: number): Bore | null {
  const { profile, wall } = vessel;
  const hole = bungHoleOf(vessel);
  const run = runs.find((places) => places[0]!.height < 0 && places.at(-1)!.height > 0);
  if (!hole || !run) return null;
  const outside = holed(hole, outer, profile.radius, alpha, 1);
  const inside = holed(hole, run, wall.insideRadius, alpha, -1);
  return outside && inside && { outside, run, inside };
}

function holed(
  hole: BungHole,
  face: readonly InsidePlace[],
  radiusAt: (height: number) => number,
  alpha: number,
  hand: 1 | -1,
): Holed | null {
  const rows = roomFor(hole, face, alpha);
  return rows && { rows, ring: hole.ring(radiusAt, face[0]!.isRound), hand };
}

function bored(
  make: MeshMaker,
  rows: readonly (readonly Place[])[],
  hole: Holed | undefined,
): void {
  if (!hole) return make.edgedPatch(rows);
  // seen from outside the wood the ring runs anticlockwise on either face
  const ring = hole.hand > 0 ? hole.ring : [...hole.ring].reverse();
  make.holedPatch(rows, hole.rows, ring, ([, y, z]) => ({ x: hole.hand * y, y: z }));
  make.border(rows);
}

function azimuthsAcross(alpha: number): number[] {
  const facets = Math.max(1, Math.ceil((2 * alpha) / widestFacet));
  // the two edges are mirror images to the last digit, so that neighbours meet
  return Array.from({ length: facets + 1 }, (_, i) => alpha * ((2 * i - facets) / facets));
}

function outsideAt({ profile, spec }: Vessel, height: number): InsidePlace {
  return { height, radius: profile.radius(height), isRound: spec.staves.outside === 'rounded' };
}

function placeOf({ height, radius, isRound }: InsidePlace, azimuth: number): Place {
  const out = isRound ? radius : radius / Math.cos(azimuth);
  return [out * Math.cos(azimuth), out * Math.sin(azimuth), height];
}

/** The inside in pieces without a corner: each surface between two steps or bends, and each step. */
function runsOf(levels: readonly InsidePlace[][]): InsidePlace[][] {
  const steps = levels.flatMap((level) => level.slice(1).map((to, i) => [level[i]!, to]));
  const surfaces = levels.slice(1).map((level, i) => [levels[i]!.at(-1)!, level[0]!]);
  const joined: InsidePlace[][] = [];
  for (const [from, to] of surfaces as [InsidePlace, InsidePlace][]) {
    const last = joined.at(-1);
    const goesOn = last?.at(-1) === from && from.isRound === to.isRound;
    if (goesOn && straightOn(last.at(-2)!, from, to)) last.push(to);
    else joined.push([from, to]);
  }
  return [...steps, ...joined];
}

/** Whether the line bends so little there that it is a smooth surface. */
function straightOn(a: InsidePlace, b: InsidePlace, c: InsidePlace): boolean {
  const lean = (from: InsidePlace, to: InsidePlace): number =>
    Math.atan2(to.radius - from.radius, to.height - from.height);
  return Math.abs(lean(b, c) - lean(a, b)) < 0.2;
}

/** The joint at one edge: the wall's section, band by band. */
function joint(
  make: MeshMaker,
  outer: readonly InsidePlace[],
  levels: readonly InsidePlace[][],
  azimuth: number,
): void {
  // flat faces stand further out at their edges; which corner is behind which is settled there
  const level = (k: number): InsidePlace[] =>
    levels[k]!.map((face) => ({
      ...face,
      radius: face.isRound ? face.radius : face.radius / Math.cos(azimuth),
      isRound: true,
    }));
  const cut = (k: number, band: 'above' | 'below'): Place[] => {
    const faces = rung(level(k), band, 1);
    return [...faces.map((face) => placeOf(face, azimuth)), placeOf(outer[k]!, azimuth)];
  };
  for (let k = 0; k + 1 < levels.length; k++) {
    const [lower, upper] = [cut(k, 'above'), cut(k + 1, 'below')];
    if (azimuth > 0) make.strip(upper, lower);
    else make.strip(lower, upper);
  }
}

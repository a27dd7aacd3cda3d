/** The lines across a drawn stave: stations, hoops, groove, howel and finished ends, each where it is due. */
import type { End, HeadSpec } from '../spec/spec.js';
import { stationsOf } from '../vessel/stations.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Bending, Section } from './bending.js';
import { ends, towards, type DueStave } from './due.js';
import { judged, type Check, type Finding, type Place } from './finding.js';
import { hoopPlaces } from './hoop-place.js';
import type { Pattern } from './patterns.js';
import { tolerance } from './tolerance.js';

interface DueLine {
  readonly check: Check;
  readonly place: Place;
  readonly station: number;
  readonly half: number;
}

interface DrawnLine {
  readonly station: number;
  readonly upper: number;
  readonly lower: number;
}

export interface StaveLines {
  readonly findings: readonly Finding[];
  /** station at which a line is drawn; null where it is not */
  readonly drawnAt: (check: Check, place: Place) => number | null;
}

/** A line further than this from where it is due is another line (mm). */
const farAway = 5;

export function readLines(
  vessel: Vessel,
  stave: Stave,
  pattern: Pattern,
  due: DueStave,
  bending: Bending,
): StaveLines {
  const drawn = drawnLines(pattern);
  const wanted = dueLines(vessel, stave, due, bending);
  const nearest = wanted.map((line) => nearestTo(line, drawn));
  return {
    findings: [
      ...wanted.map((line, i) => lineFinding(pattern.file, line, nearest[i]!)),
      extraLines(pattern.file, drawn, wanted),
    ],
    drawnAt: (check, place) => {
      const key = JSON.stringify(place);
      const at = wanted.findIndex(
        (line) => line.check === check && JSON.stringify(line.place) === key,
      );
      return nearest[at]?.station ?? null;
    },
  };
}

function dueLines(vessel: Vessel, stave: Stave, due: DueStave, bending: Bending): DueLine[] {
  const lineAt = (check: Check, place: Place, section: Section, depth: number): DueLine => ({
    check,
    place,
    station: bending.stationOf(section.z),
    half: due.halfWidth(section, depth),
  });
  const stations = stationPlaces(vessel, stave, due).flatMap((station) => {
    const section = bending.sectionAtStation(station);
    return section ? [{ ...lineAt('station-line', { station }, section, 0), station }] : [];
  });
  const hoops = hoopPlaces(vessel).flatMap(({ near, far }, i) => [
    lineAt('hoop-line', hoopEdge(vessel, i, 'near'), bending.sectionAt(near), 0),
    lineAt('hoop-line', hoopEdge(vessel, i, 'far'), bending.sectionAt(far), 0),
  ]);
  const atDepth = (check: Check, place: Place, height: number): DueLine => {
    const section = bending.sectionThrough(height, ({ thickness }) => thickness);
    return lineAt(check, place, section, section.thickness);
  };
  const grooves = ends.flatMap((end) => {
    const head = vessel.spec.heads[end];
    return head
      ? grooveHeights(vessel, end, head).map(({ check, place, height }) =>
          atDepth(check, place, height),
        )
      : [];
  });
  return [...stations, ...hoops, ...grooves, ...innerEnds(vessel, due, bending)];
}

/** The stations that are drawn; the ends of a cut stave are drawn by its contour. */
function stationPlaces(vessel: Vessel, stave: Stave, due: DueStave): number[] {
  const all = stationsAlong(vessel, stave, due);
  return vessel.spec.staves.ends === 'cut' ? all.slice(1, -1) : all;
}

/** The stations that a stave's numbers are given at, from the bottom's finished end to the top's. */
export function stationsAlong(vessel: Vessel, stave: Stave, due: DueStave): number[] {
  const inner = stationsOf(vessel, stave)
    .map(({ s }) => s)
    .slice(1, -1);
  return [due.ends.bottom.outer, ...inner, due.ends.top.outer];
}

export const hoopEdge = (vessel: Vessel, hoop: number, edge: 'near' | 'far'): Place => ({
  number: hoop + 1,
  hoop: vessel.hoops[hoop]!.spec.name,
  end: vessel.hoops[hoop]!.end,
  edge,
});

interface GrooveLine {
  readonly check: Check;
  readonly place: Place;
  readonly height: number;
}

/** The groove's lips and the howel's edge, as the spec has them. */
function grooveHeights({ spec }: Vessel, end: End, { croze }: HeadSpec): GrooveLine[] {
  const sign = towards(end);
  const middle = sign * (spec.height / 2 - croze.inset);
  const innerLip = middle - (sign * croze.width) / 2;
  return [
    {
      check: 'groove-line',
      place: { end, edge: 'near' },
      height: middle + (sign * croze.width) / 2,
    },
    { check: 'groove-line', place: { end, edge: 'far' }, height: innerLip },
    { check: 'howel-line', place: { end }, height: innerLip - sign * spec.howel.beyondGroove },
  ];
}

/** Where the inner face of an overlong stave is to be trimmed to, unless it is where the outer face is. */
function innerEnds({ spec }: Vessel, due: DueStave, bending: Bending): DueLine[] {
  if (spec.staves.ends === 'cut') return [];
  return ends.flatMap((end) => {
    const { outer, inner } = due.ends[end];
    const section = bending.sectionAtStation(inner);
    if (!section || Math.abs(inner - outer) < tolerance.doubled) return [];
    const half = due.halfWidth(section, due.depth(section, 'inner'));
    return [{ check: 'end-line' as const, place: { end }, station: inner, half }];
  });
}

function drawnLines(pattern: Pattern): DrawnLine[] {
  return pattern.curves('station').flatMap(({ vertices }) => {
    const [from, to] = vertices;
    if (!from || !to || vertices.length !== 2 || Math.abs(from.x - to.x) > tolerance.place)
      return [];
    const station = (from.x + to.x) / 2;
    return [{ station, upper: Math.max(from.y, to.y), lower: -Math.min(from.y, to.y) }];
  });
}

const off = (due: DueLine, drawn: DrawnLine): number =>
  Math.max(
    Math.abs(drawn.station - due.station),
    Math.abs(drawn.upper - due.half),
    Math.abs(drawn.lower - due.half),
  );

function nearestTo(due: DueLine, drawn: readonly DrawnLine[]): DrawnLine | null {
  const best = drawn.reduce<DrawnLine | null>(
    (a, b) => (a === null || off(due, b) < off(due, a) ? b : a),
    null,
  );
  return best && off(due, best) < farAway ? best : null;
}

/** By the place of the line or, where that is right, by how far it reaches. */
function lineFinding(file: string, due: DueLine, drawn: DrawnLine | null): Finding {
  const { check, place, station, half } = due;
  const judge = (measured: number | null, expected: number, part?: string): Finding =>
    judged(check, file, part === undefined ? place : { ...place, part }, {
      measured,
      expected,
      tolerance: tolerance.place,
    });
  const where = judge(drawn && drawn.station, station);
  if (!drawn || !where.passed) return where;
  const reaches = [drawn.upper, drawn.lower].map((reach) => judge(reach, half, 'reach'));
  return reaches.find(({ passed }) => !passed) ?? where;
}

/** Lines that nothing in the spec explains, or more of them at one place than there should be. */
function extraLines(
  file: string,
  drawn: readonly DrawnLine[],
  wanted: readonly DueLine[],
): Finding {
  const isFor = (due: DueLine, line: DrawnLine): boolean => off(due, line) <= tolerance.place;
  const isSame = (a: DrawnLine, b: DrawnLine): boolean =>
    off({ check: 'extra-line', place: {}, station: b.station, half: b.upper }, a) <=
    tolerance.place;
  const strange = drawn.filter((line) => {
    const due = wanted.filter((each) => isFor(each, line)).length;
    return due === 0 || drawn.filter((each) => isSame(each, line)).length > due;
  });
  const [first] = strange;
  return judged('extra-line', file, first ? { station: first.station } : {}, {
    measured: strange.length,
    expected: 0,
    tolerance: 0,
    unit: 'count',
  });
}

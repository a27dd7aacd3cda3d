/** Takes a drawn stave off its file and holds its contours against the blank that it is due to be. */
import type { End } from '../spec/spec.js';
import type { Curve } from '../geometry/curve.js';
import { segmentsOf, type Segment } from '../geometry/segment.js';
import { heightAt, type Bending } from './bending.js';
import { crossings, samplesOf, type Sample } from './contour.js';
import { ends, towards, type DueStave } from './due.js';
import { judged, worst, type Face, type Finding, type Place, type Side } from './finding.js';
import type { Pattern } from './patterns.js';
import { tolerance } from './tolerance.js';

const faces = ['outer', 'inner'] as const;
const sides = ['upper', 'lower'] as const;
const layerOf: Readonly<Record<Face, string>> = { outer: 'outline', inner: 'hidden' };

export interface DrawnStave {
  readonly pattern: Pattern;
  readonly file: string;
  readonly due: DueStave;
  /** from the centre line to an edge at a station; NaN where the face has none */
  readonly halfWidth: (face: Face, side: Side, station: number) => number;
  /** stations between which both faces are drawn */
  readonly from: number;
  readonly to: number;
  readonly findings: readonly Finding[];
  /** stations at which the contours of the faces end; NaN where they do not */
  readonly drawnEnds: Readonly<Record<End, Readonly<Record<Face, number>>>>;
}

/** Null, with the reason, when the file does not show one contour for each face. */
export function takeStave(
  pattern: Pattern,
  due: DueStave,
  bending: Bending,
): DrawnStave | readonly Finding[] {
  const contours = faces.map((face) => pattern.curves(layerOf[face]));
  const findings = faces.map((face, i) => contourCount(pattern.file, face, contours[i]!));
  const [outer, inner] = contours.map(([contour]) => contour);
  if (!outer || !inner || findings.some(({ passed }) => !passed)) return findings;
  const curves: Record<Face, Curve> = { outer, inner };
  const segments = { outer: segmentsOf(outer), inner: segmentsOf(inner) };
  const measured = faces.map((face) => measureFace(pattern.file, face, curves[face], due, bending));
  const endsOf = (end: End): Record<Face, number> => {
    const [outerEnd, innerEnd] = measured.map((each) => each.ends[end]) as [number, number];
    return { outer: outerEnd, inner: innerEnd };
  };
  return {
    pattern,
    file: pattern.file,
    due,
    halfWidth: (face, side, station) => halfWidthOf(segments[face], side, station),
    ...sharedReach(curves),
    findings: [...findings, ...measured.flatMap((each) => each.findings)],
    drawnEnds: { top: endsOf('top'), bottom: endsOf('bottom') },
  };
}

function contourCount(file: string, face: Face, curves: readonly Curve[]): Finding {
  const measured = curves.filter(({ closed, vertices }) => closed && vertices.length > 2).length;
  const finding = judged(
    'stave-contour',
    file,
    { face, layer: layerOf[face] },
    {
      measured,
      expected: 1,
      tolerance: 0,
      unit: 'count',
    },
  );
  return { ...finding, passed: finding.passed && curves.length === 1 };
}

function halfWidthOf(segments: readonly Segment[], side: Side, station: number): number {
  const crossed = crossings(segments, station);
  if (crossed.length < 2) return NaN;
  return side === 'upper' ? Math.max(...crossed) : -Math.min(...crossed);
}

function sharedReach(curves: Record<Face, Curve>): { from: number; to: number } {
  const xs = faces.map((face) => curves[face].vertices.map(({ x }) => x));
  return {
    from: Math.max(...xs.map((each) => Math.min(...each))),
    to: Math.min(...xs.map((each) => Math.max(...each))),
  };
}

/** Edges run along the stave, ends across it. */
const isAlong = ({ tangent }: Sample): boolean => Math.abs(tangent.x) > 0.5;

function measureFace(
  file: string,
  face: Face,
  curve: Curve,
  due: DueStave,
  bending: Bending,
): { findings: Finding[]; ends: Record<End, number> } {
  const samples = samplesOf(curve);
  const along = samples.filter(isAlong);
  const across = samples.filter((sample) => !isAlong(sample));
  const edges = sides.flatMap((side) => edgeFinding(file, face, side, along, due, bending));
  const endStation = (end: End): number => {
    const own = across.filter(({ point }) => nearestEnd(point.x, face, due) === end);
    const target = due.blankEnds[end][face];
    const off = (sample: Sample): number => Math.abs(sample.point.x - target);
    if (own.length === 0) return NaN;
    return own.reduce((a, b) => (off(b) > off(a) ? b : a)).point.x;
  };
  const stations = { top: endStation('top'), bottom: endStation('bottom') };
  const endFindings = ends.map((end) =>
    judged(
      'blank-end',
      file,
      { end, face },
      {
        measured: stations[end],
        expected: due.blankEnds[end][face],
        tolerance: tolerance.place,
      },
    ),
  );
  return { findings: [...edges, ...endFindings], ends: stations };
}

function nearestEnd(x: number, face: Face, { blankEnds }: DueStave): End {
  const off = (end: End): number => Math.abs(x - blankEnds[end][face]);
  return off('top') <= off('bottom') ? 'top' : 'bottom';
}

/** How far an edge lies outside (positive) or inside the exact one, square to it, where it is worst. */
function edgeFinding(
  file: string,
  face: Face,
  side: Side,
  samples: readonly Sample[],
  due: DueStave,
  bending: Bending,
): Finding {
  const sign = side === 'upper' ? 1 : -1;
  const findings = samples
    .filter(({ point }) => sign * point.y > 0)
    .map(({ point, tangent }) => {
      const section = bending.sectionAtStation(point.x);
      const exact = section && due.halfWidth(section, due.depth(section, face));
      const off = exact === null ? NaN : (sign * point.y - exact) * Math.abs(tangent.x);
      return offFinding(file, { face, side, station: point.x }, off);
    });
  return findings.length > 0 ? worst(findings) : offFinding(file, { face, side }, NaN);
}

const offFinding = (file: string, place: Place, measured: number): Finding =>
  judged('stave-edge', file, place, { measured, expected: 0, tolerance: tolerance.outline });

/**
 * Where the finished end stands once the stave is bent, at both faces, and the angle of the cut. `stations` are the drawn
 * places of the cut on the blank.
 */
export function checkEnd(
  { file, due }: Pick<DrawnStave, 'file' | 'due'>,
  end: End,
  stations: Readonly<Record<Face, number>>,
  height: number,
  bending: Bending,
): Finding[] {
  const sections = faces.map((face) => bending.sectionAtStation(stations[face]));
  const planes = faces.map((face, i) => {
    const section = sections[i];
    const measured = section ? heightAt(section, due.depth(section, face)) : null;
    const expected = (towards(end) * height) / 2;
    return judged(
      'end-plane',
      file,
      { end, face },
      {
        measured,
        expected,
        tolerance: tolerance.place,
      },
    );
  });
  const inner = sections[1];
  const thickness = inner ? due.depth(inner, 'inner') : NaN;
  const angle = ({ outer, inner }: Readonly<Record<Face, number>>): number =>
    (Math.atan2(towards(end) * (inner - outer), thickness) * 180) / Math.PI;
  const cut = judged(
    'end-cut',
    file,
    { end },
    {
      measured: angle(stations),
      expected: angle(due.ends[end]),
      // both faces may be off by what an end may be off
      tolerance: (Math.atan((2 * tolerance.place) / thickness) * 180) / Math.PI,
      unit: 'degrees',
    },
  );
  return [...planes, cut];
}

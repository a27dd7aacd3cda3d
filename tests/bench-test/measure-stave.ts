/** Judges one stave's DXF: drawn edges and ends against the exact blank, and the end planes once it is bent and cut. */
import { pointOn } from './arcs.js';
import type { Segment } from './arcs.js';
import type { BenchSpec } from './bench-spec.js';
import { exactStave, outerHeightFor } from './exact.js';
import type { ExactStave } from './exact.js';
import type { BenchDrawing, Chain } from './read-dxf.js';
import type { BentStave } from './ring.js';
import { staveEdges } from './stave-edges.js';
import type { StaveEdges } from './stave-edges.js';
import { tolerance } from './tolerances.js';
import type { Notebook } from './verdict.js';

/** Null when the drawing is so far off that it can't be bent; the notebook then says why. */
export function measureStave(
  drawing: BenchDrawing,
  spec: BenchSpec,
  alpha: number,
  notebook: Notebook,
): BentStave | null {
  if (drawing.unit !== 4) notebook.fail('unit of the file');
  const exact = exactStave(spec, alpha);
  const outer = onlyClosedCurve(drawing, 'outline', notebook);
  const inner = onlyClosedCurve(drawing, 'hidden', notebook);
  if (!outer || !inner) return null;
  measureLengths(outer, inner, exact, spec, notebook);
  if (notebook.verdict().complaints.some((c) => c.value > 2)) return null;
  measureEdge(outer, exact, 'outer', notebook);
  measureEdge(inner, exact, 'inner', notebook);
  if (spec.staves.ends === 'overlong') measureFinishedEnds(drawing, exact, notebook);
  else measureEndPlanes(outer, inner, exact, spec, notebook);
  return { exact, outer, inner };
}

function onlyClosedCurve(
  drawing: BenchDrawing,
  layer: string,
  notebook: Notebook,
): StaveEdges | null {
  const chains = drawing.layers.get(layer) ?? [];
  const [only] = chains;
  const edges = only !== undefined && only.closed ? staveEdges(only) : null;
  if (chains.length !== 1 || edges === null) {
    notebook.fail(`one closed curve on ${layer}`);
    return null;
  }
  notebook.note(`square ends of ${layer}`, edges.endRaggedness, tolerance.end);
  return edges;
}

function measureLengths(
  outer: StaveEdges,
  inner: StaveEdges,
  exact: ExactStave,
  spec: BenchSpec,
  notebook: Notebook,
): void {
  const { outerEnd, innerEnd } = exact;
  const overlong = spec.staves.ends === 'overlong';
  const { trim } = spec.staves;
  const topTrimmed = Math.max(outerEnd.top, innerEnd.top) + trim;
  const bottomTrimmed = Math.min(outerEnd.bottom, innerEnd.bottom) - trim;
  const expect = (top: number, bottom: number): [number, number] =>
    overlong ? [topTrimmed, bottomTrimmed] : [top, bottom];
  const [outerTop, outerBottom] = expect(outerEnd.top, outerEnd.bottom);
  const [innerTop, innerBottom] = expect(innerEnd.top, innerEnd.bottom);
  notebook.note('outer face length', outer.right - outerTop, tolerance.end);
  notebook.note('outer face length', outer.left - outerBottom, tolerance.end);
  notebook.note('inner face length', inner.right - innerTop, tolerance.end);
  notebook.note('inner face length', inner.left - innerBottom, tolerance.end);
}

/** Places looked at on every segment: the error of a fitted arc has one or two waves along it. */
const samples = 10;

function measureEdge(
  drawn: StaveEdges,
  exact: ExactStave,
  face: 'outer' | 'inner',
  notebook: Notebook,
): void {
  const check = face === 'outer' ? 'outline edge' : 'hidden edge';
  for (const segment of [...drawn.upper, ...drawn.lower]) {
    for (let i = 0; i <= samples; i++) {
      const { x, y } = pointOn(segment, i / samples);
      const off = Math.abs(y) - exact.halfWidth(x, face);
      notebook.note(check, off * squareTo(segment), tolerance.edge);
    }
  }
}

/** Cosine between an edge and the stave's length: turns an error across into one square to the edge. */
function squareTo({ from, to }: Segment): number {
  return Math.abs(to.x - from.x) / Math.hypot(to.x - from.x, to.y - from.y);
}

/** An overlong blank is cut after bending: the line to cut to is on `station`. */
function measureFinishedEnds(drawing: BenchDrawing, exact: ExactStave, notebook: Notebook): void {
  const places = (drawing.layers.get('station') ?? []).flatMap(crosswise);
  for (const station of [exact.outerEnd.top, exact.outerEnd.bottom]) {
    const nearest = Math.min(...places.map((x) => Math.abs(x - station)));
    notebook.note('finished end on station', nearest, tolerance.end);
  }
}

function crosswise(chain: Chain): number[] {
  return chain.segments
    .filter((s) => s.bulge === 0 && Math.abs(s.to.x - s.from.x) < 1e-3)
    .map((s) => (s.from.x + s.to.x) / 2);
}

/**
 * The saw runs straight from the outer face's end to the inner face's. Both ends lie in the end plane; between them
 * the plane, laid flat, bows a little (about `tan(phi) kappa T^2 / 8`), which a straight cut leaves standing.
 */
function measureEndPlanes(
  outer: StaveEdges,
  inner: StaveEdges,
  exact: ExactStave,
  spec: BenchSpec,
  notebook: Notebook,
): void {
  const { bend } = exact;
  const ends: [number, number, number][] = [
    [outer.right, inner.right, spec.height / 2],
    [outer.left, inner.left, -spec.height / 2],
  ];
  for (const [outerStation, innerStation, plane] of ends) {
    const fullDepth = exact.depthAt(bend.sectionAt(bend.heightOf(innerStation)));
    for (const share of [0, 0.25, 0.5, 0.75, 1]) {
      const depth = share * fullDepth;
      const station = outerStation + (innerStation - outerStation) * share;
      const section = bend.sectionAt(bend.heightOf(station));
      const off = section.z - depth * section.sin - plane;
      if (share === 0 || share === 1) notebook.note('end plane at the faces', off, tolerance.end);
      else {
        const flat = bend.stationOf(outerHeightFor(plane, bend, () => depth));
        const bow = Math.abs(flat - station);
        notebook.note('end plane between the faces', off, tolerance.end + bow);
      }
    }
  }
}

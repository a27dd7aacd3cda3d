/** Measures taken from the drawings and their DXF text. */
import { readDxf } from '../bench-test/read-dxf.js';
import type { Inputs, Measure } from './inputs.js';
import { dxfOf, invented, letteringHeights } from './product.js';

const dxfOfPiece = (inputs: Inputs): Promise<string> => dxfOf(invented, String(inputs.piece));

/** Values of one group code, in order. */
function groups(dxf: string, code: string): string[] {
  const lines = dxf.split(/\r?\n/).map((line) => line.trim());
  return lines.flatMap((value, i) => (i % 2 === 1 && lines[i - 1] === code ? [value] : []));
}

/** The value that follows a header variable. */
function header(dxf: string, variable: string): string {
  const lines = dxf.split(/\r?\n/).map((line) => line.trim());
  const at = lines.indexOf(variable);
  return at < 0 ? '' : (lines[at + 2] ?? '');
}

/** Bulges round the largest closed curve on `outline`. */
function rimBulges(dxf: string): number[] {
  const closed = (readDxf(dxf).layers.get('outline') ?? []).filter((c) => c.closed);
  const width = (c: (typeof closed)[number]): number =>
    Math.max(...c.segments.map((s) => s.from.x)) - Math.min(...c.segments.map((s) => s.from.x));
  const [largest] = closed.sort((a, b) => width(b) - width(a));
  return largest?.segments.map((s) => s.bulge) ?? [];
}

const sweepOf = (bulges: number[]): number =>
  bulges.reduce((sum, bulge) => sum + 4 * Math.atan(bulge), 0);

/** ISO 3098-1 nominal heights. */
const isoHeights = [1.8, 2.5, 3.5, 5, 7, 10, 14, 20];
/** ISO 128-2 line widths. */
const isoWidths = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];
const outsideOf = (series: number[], values: number[]): number =>
  values.filter((v) => !series.some((s) => Math.abs(s - v) < 1e-9)).length;

/** Line weights of layers and entities in mm; below 0 they mean "by layer" or "default". */
const lineWeights = (dxf: string): number[] =>
  groups(dxf, '370')
    .map((weight) => Number(weight) / 100)
    .filter((weight) => weight >= 0);

/** A measure of one DXF file. */
const ofFile =
  (measure: (dxf: string) => number): Measure =>
  async (inputs) =>
    measure(await dxfOfPiece(inputs));

const heightsOf = (inputs: Inputs): number[] => letteringHeights(invented, String(inputs.piece));

export const fileMeasures: Record<string, Measure> = {
  insUnits: ofFile((dxf) => Number(header(dxf, '$INSUNITS'))),
  acadVersion: ofFile((dxf) => Number(header(dxf, '$ACADVER').replace('AC', ''))),
  // whatever number of arcs the rim has: the bulge that a quarter of their whole sweep would have
  quarterBulge: ofFile((dxf) => {
    const bulges = rimBulges(dxf);
    return bulges.length === 4 ? (bulges[0] ?? NaN) : Math.tan(sweepOf(bulges) / 16);
  }),
  turnOfRim: ofFile((dxf) => (sweepOf(rimBulges(dxf)) * 180) / Math.PI),
  openCurves: ofFile(
    (dxf) => (readDxf(dxf).layers.get('outline') ?? []).filter((chain) => !chain.closed).length,
  ),
  letteringOutsideSeries: (inputs) => outsideOf(isoHeights, heightsOf(inputs)),
  letteringCount: (inputs) => heightsOf(inputs).length,
  lineWidthsOutsideSeries: ofFile((dxf) => outsideOf(isoWidths, lineWeights(dxf))),
  widestLineWidth: ofFile((dxf) => Math.max(...lineWeights(dxf))),
};

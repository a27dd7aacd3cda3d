/** The product's answers to a spec, or an error that repeats its messages. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import {
  dipTable,
  drawVessel,
  figuresOf,
  fullDip,
  planVessel,
  renderVessel,
} from '../../src/index.js';
import type { Drawing, DrawOptions, Posture } from '../../src/index.js';
import { numberIn, type Inputs } from './inputs.js';
import type { BenchFigures } from '../bench-test/figures-shape.js';

function vesselOf(yaml: string): NonNullable<ReturnType<typeof planVessel>['vessel']> {
  const { vessel, messages } = planVessel(yaml, 'published.yaml');
  if (vessel === null) throw new Error(messages.map((m) => m.text).join('\n'));
  return vessel;
}

export type PublishedFigures = BenchFigures & {
  laidWidth: number;
  warnings: unknown[];
  oimlLimitLitres?: number;
  hoops: { name: string; width: number; nearGirth: number; farGirth: number; cutLength: number }[];
};

export function figuresFor(yaml: string): PublishedFigures {
  return figuresOf(vesselOf(yaml)) as unknown as PublishedFigures;
}

/** What a share of the depth holds, and the whole vessel; litres. */
export function dipAt(
  yaml: string,
  posture: Posture,
  wet: number,
): { litres: number; oldRule: number | null; capacity: number } {
  const vessel = vesselOf(yaml);
  const { rows } = dipTable(vessel, posture, wet * fullDip(vessel, posture));
  const [, row] = rows;
  if (!row) throw new Error('no dip');
  return { ...row, capacity: rows.at(-1)?.litres ?? NaN };
}

export function drawingOf(yaml: string, piece: string): Drawing | undefined {
  return drawVessel(vesselOf(yaml), { pieces: [piece] })[0];
}

/** Overlap of each hoop, mm, by its name. */
export function lapsOf(yaml: string): Map<string, number> {
  return new Map(vesselOf(yaml).spec.hoops.map(({ name, lap }) => [name, lap]));
}

/** A cask of eight lines, everything else left to the product. */
export function plainSpec(inputs: Inputs): string {
  const lines = ['vessel: cask', 'title: Invented', 'units: mm'];
  for (const key of ['height', 'bilge', 'ends']) lines.push(`${key}: ${numberIn(inputs, key)}`);
  return [...lines, `staves: { count: ${numberIn(inputs, 'staves')} }`].join('\n');
}

/** The DXF file of one piece. */
export async function dxfOf(yaml: string, piece: string): Promise<string> {
  const [file] = await renderVessel(vesselOf(yaml), { formats: ['dxf'], pieces: [piece] });
  if (file === undefined) throw new Error(`no drawing of ${piece}`);
  return String(file.content);
}

/** Heights of all lettering on one piece, mm. */
export function letteringHeights(yaml: string, piece: string): number[] {
  return drawVessel(vesselOf(yaml), { pieces: [piece] }).flatMap((drawing) =>
    drawing.letterings.map((lettering) => lettering.height),
  );
}

/** The font that PDFs are lettered in. */
export const dejaVu = (): Promise<Uint8Array> =>
  readFile(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'));

/** The PDF of one piece on a paper. */
export async function renderedPdf(
  yaml: string,
  piece: string,
  paper: string,
  font: () => Promise<Uint8Array>,
): Promise<Uint8Array> {
  const options = { formats: ['pdf'], pieces: [piece], paper, font } as DrawOptions;
  const [file] = await renderVessel(vesselOf(yaml), options);
  if (file === undefined || typeof file.content === 'string') throw new Error('no PDF');
  return file.content;
}

/** A wine cask from its first lines, the rest left to the product; invented. */
export const invented = [
  'vessel: cask',
  'title: Invented',
  'units: mm',
  'height: 945',
  'bilge: 678',
  'ends: 572',
  'staves: { count: 28 }',
].join('\n');

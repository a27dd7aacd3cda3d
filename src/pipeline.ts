/**
 * The steps in order; this file calls them all, but for its first line, `plan.ts`, and its last, `printing.ts`.
 *
 *   YAML text --readSpec--> Spec --solveVessel--> Vessel --+--figuresOf--> numbers
 *                                                          |
 *                                                          +--drawPieces--> Drawings --+--withLegend--> SVG, DXF
 *                                                          |                           +--printPdf--> PDF
 *                                                          +--jobSheet--> Form --+--formToHtml--> HTML
 *                                                                                +--printPdf--> PDF
 */
import { withLegend } from './drawing/legend.js';
import type { Drawing } from './drawing/drawing.js';
import { paperView } from './drawing/for-paper.js';
import { letteringCurves } from './drawing/lettering.js';
import { jobSheet, jobSheetName } from './job/job-sheet.js';
import { jobWords } from './job/words/index.js';
import { wordsIn, type Language } from './language.js';
import { drawPieces, eachDrawing, type PieceOptions } from './pieces/index.js';
import { settingPlan } from './pieces/setting-plan.js';
import type { SettingPlan } from './pieces/setting-view.js';
import { pieceWords, type Words } from './pieces/words/index.js';
import type { Printing } from './printing.js';
import type { PaperName } from './sheets/paper.js';
import type { Spec } from './spec/spec.js';
import { writeSpec } from './spec/write.js';
import type { Vessel } from './vessel/vessel.js';
import { toDxf } from './writers/dxf.js';
import { formToHtml } from './writers/form-html.js';
import { toHtml } from './writers/html.js';
import { indexPageWords } from './writers/index-page.words.js';
import { toSvg } from './writers/svg.js';

export type Format = 'svg' | 'dxf' | 'pdf';
export const formats: readonly Format[] = ['svg', 'dxf', 'pdf'];

/** How lettering goes out in DXF: as text, or as its outlines. */
export const letteringWays = ['text', 'outlines'] as const;
export type LetteringWay = (typeof letteringWays)[number];

export interface DrawOptions {
  readonly formats: readonly Format[];
  readonly pieces?: readonly string[];
  readonly paper?: PaperName;
  /** what the printed 100 mm square measured, across and along the page, mm */
  readonly printed?: { readonly across: number; readonly along: number };
  readonly fan?: { readonly from: number; readonly to: number };
  /** what the boards of a head are nested on, mm, its width along the grain */
  readonly router?: { readonly sheet: { readonly width: number; readonly height: number } };
  /** of all that people read on drawings, on sheets and on the page that shows them; English unless given */
  readonly language?: Language;
  /** in DXF; text unless given */
  readonly letteringAs?: LetteringWay;
  /** the TrueType font for PDF; called only when a PDF is made here */
  readonly font?: () => Promise<Uint8Array>;
  /** deflates what is in a PDF (RFC 1950); in its own way unless given */
  readonly pack?: (bytes: Uint8Array) => Uint8Array;
  /** makes the PDFs somewhere else, while the rest is made here */
  readonly print?: (printing: Printing) => Promise<Uint8Array>;
  /** told of each file of a pack as soon as it is made, whatever its place in the pack */
  readonly taken?: (file: OutFile) => void;
}

export interface OutFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** The drawings of a vessel, as values, in English unless other words are given. */
export function drawVessel(
  vessel: Vessel,
  options: Pick<DrawOptions, 'pieces' | 'fan' | 'router'> & { readonly words?: Words } = {},
): Drawing[] {
  return drawPieces(vessel, pieceOptions(options, options.words), options.pieces);
}

function pieceOptions(
  { fan, router }: Pick<DrawOptions, 'fan' | 'router'>,
  words: Words = pieceWords.en,
): PieceOptions {
  return { words, ...(fan && { fan }), ...(router && { router }) };
}

/** Every drawing in every format that is asked for, and the job sheet. */
export async function renderVessel(vessel: Vessel, options: DrawOptions): Promise<OutFile[]> {
  const { files } = await renderEach(await drawn(vessel, options), vessel.spec, options);
  const job = await renderJobSheet(vessel, options);
  return [
    ...(await Promise.all(files)).flat(),
    ...(await Promise.all(job.map(({ made }) => made))),
  ];
}

/** A folder's worth: drawings, job sheet, the spec with every default written out, a page that shows them. Empty without the first two. */
export async function packVessel(vessel: Vessel, options: DrawOptions): Promise<OutFile[]> {
  const job = await renderJobSheet(vessel, options);
  return pack(await drawn(vessel, options), job, vessel.spec, options);
}

/** A file that may yet be made. */
interface UnderWay {
  readonly name: string;
  readonly made: Promise<OutFile>;
}

async function pack(
  drawings: Iterable<Drawing>,
  job: readonly UnderWay[],
  spec: Spec,
  options: DrawOptions,
): Promise<OutFile[]> {
  const { drawn, files } = await renderEach(drawings, spec, options);
  if (drawn.length + job.length === 0) return [];
  const pieces = drawn.map(({ name, title }) => ({ name, title, formats: options.formats }));
  const words = await wordsIn(indexPageWords, options.language ?? 'en');
  const jobSheet = job.map(({ name }) => name);
  const page = toHtml({ title: spec.title, pieces, spec: 'spec.yaml', jobSheet }, words);
  const about = [
    taken({ name: 'spec.yaml', content: writeSpec(spec) }, options),
    taken({ name: 'index.html', content: page }, options),
  ];
  // what is made elsewhere may take longer than all this
  const [jobFiles, drawnFiles] = [job.map(({ made }) => made), await Promise.all(files)];
  return [...about, ...(await Promise.all(jobFiles)), ...drawnFiles.flat()];
}

function taken(file: OutFile, options: DrawOptions): OutFile {
  options.taken?.(file);
  return file;
}

async function drawn(vessel: Vessel, options: DrawOptions): Promise<Iterable<Drawing>> {
  const words = await wordsIn(pieceWords, options.language ?? 'en');
  return eachDrawing(vessel, pieceOptions(options, words), options.pieces);
}

/**
 * To read and to fill in: as HTML always, as PDF where that is asked for, which is then under way. None where other pieces are
 * asked for by name.
 */
async function renderJobSheet(vessel: Vessel, options: DrawOptions): Promise<UnderWay[]> {
  if (options.pieces && !options.pieces.includes(jobSheetName)) return [];
  const { spec } = vessel;
  const { language = 'en' } = options;
  const { typeset, hoopName } = await wordsIn(pieceWords, language);
  const form = jobSheet(vessel, await wordsIn(jobWords, language), { typeset, hoopName });
  const html = taken({ name: `${form.name}.html`, content: formToHtml(form) }, options);
  const files = [{ name: html.name, made: Promise.resolve(html) }];
  if (options.formats.includes('pdf'))
    files.push({ name: `${form.name}.pdf`, made: pdfOf({ form }, form, spec, options) });
  return files;
}

const paperOf = ({ paper }: DrawOptions, { units }: Spec): PaperName =>
  paper ?? (units === 'in' ? 'letter' : 'a4');

/**
 * A set that was chosen from a rack: its plan with the checklist, and a folder of the same name with its spec and, where
 * `patterns` are wanted, a pattern for every stave to rout or to print and a page that shows them.
 */
export async function packSet(
  plan: SettingPlan,
  options: Omit<DrawOptions, 'formats'> & { readonly patterns: boolean },
): Promise<OutFile[]> {
  const { spec } = plan.vessel;
  const words = await wordsIn(pieceWords, options.language ?? 'en');
  const drawing = settingPlan(plan, words);
  const { files } = await renderEach([drawing], spec, { ...options, formats: ['svg', 'pdf'] });
  const pages = (await Promise.all(files)).flat();
  const own: OutFile[] = options.patterns
    ? await pack(markedStaves(plan, words), [], spec, { ...options, formats: ['svg', 'dxf'] })
    : [{ name: 'spec.yaml', content: writeSpec(spec) }];
  return [
    ...pages,
    ...own.map(({ name, content }) => ({ name: `${drawing.name}/${name}`, content })),
  ];
}

/** The pattern of each stave, with its mark, which no language sets its own way. */
function markedStaves({ vessel, set }: SettingPlan, words: Words): Drawing[] {
  const drawings = drawVessel(vessel, { pieces: ['stave-each'], words });
  return drawings.map((each, i) => {
    const { mark } = set.staves[i]!;
    return { ...each, title: words.stave.marked(each.title, mark) };
  });
}

/** All formats of each drawing. PDFs that are made elsewhere are still under way. */
async function renderEach(
  drawings: Iterable<Drawing>,
  spec: Spec,
  options: DrawOptions,
): Promise<{ drawn: Drawing[]; files: Promise<OutFile[]>[] }> {
  const drawn: Drawing[] = [];
  const files: Promise<OutFile[]>[] = [];
  for (const drawing of drawings) {
    drawn.push(drawing);
    const made = render(drawing, spec, options);
    files.push(made);
    if (!options.print) await made;
  }
  return { drawn, files };
}

/** SVG and DXF are given the drawing with its legend set below it; on paper the legend has a place of its own. */
function render(drawing: Drawing, spec: Spec, options: DrawOptions): Promise<OutFile[]> {
  const { formats, paper } = options;
  const view = paper === 'full' ? drawing : paperView(drawing);
  // first, so that it may be under way elsewhere while the others are made
  const pdf = formats.includes('pdf') && pdfOf({ drawing: view }, drawing, spec, options);
  const lettered = formats.some((format) => format !== 'pdf') ? withLegend(drawing) : drawing;
  const files = formats.map((format) => {
    if (format === 'pdf') return pdf as Promise<OutFile>;
    const content = format === 'svg' ? toSvg(lettered) : dxfOf(lettered, options);
    return Promise.resolve(taken({ name: `${drawing.name}.${format}`, content }, options));
  });
  return Promise.all(files);
}

function dxfOf(drawing: Drawing, { letteringAs }: DrawOptions): string {
  return letteringAs === 'outlines'
    ? toDxf(drawing, { letteringAs, outlinesOf: letteringCurves })
    : toDxf(drawing);
}

/** Under way: it is waited for later, perhaps after something else has failed. */
function pdfOf(...given: Parameters<typeof makePdf>): Promise<OutFile> {
  const made = makePdf(...given);
  made.catch(() => {});
  return made;
}

/** The file's title names the piece and the vessel. */
async function makePdf(
  content: Printing['content'],
  { name, title, subject }: Pick<Drawing, 'name' | 'title' | 'subject'>,
  spec: Spec,
  options: DrawOptions,
): Promise<OutFile> {
  const { printed, print = printHere(options) } = options;
  const bytes = await print({
    title: `${title} - ${spec.title}`,
    content,
    paper: paperOf(options, spec),
    titleBlock: { ...spec.sheet, title, subtitle: subject },
    units: spec.units,
    language: options.language ?? 'en',
    ...(printed && { printed }),
  });
  return taken({ name: `${name}.pdf`, content: bytes }, options);
}

function printHere({ font, pack }: DrawOptions): NonNullable<DrawOptions['print']> {
  return async (printing) => {
    if (!font) throw new Error('a PDF needs a font');
    const { printPdf } = await import('./printing.js');
    return printPdf(printing, await font(), pack);
  };
}

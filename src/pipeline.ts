/**
 * The steps in order; this file and `plan.ts`, its first line, are the only ones that call them all.
 *
 *   YAML text --readSpec--> Spec --solveVessel--> Vessel --+--figuresOf--> numbers
 *                                                          |
 *                                                          +--drawPieces--> Drawings --+--withLegend--> SVG, DXF
 *                                                          |                           +--toSheets--> PDF
 *                                                          +--jobSheet--> Form --+--formToHtml--> HTML
 *                                                                                +--formSheets--> PDF
 */
import { withLegend } from './drawing/legend.js';
import type { Drawing } from './drawing/drawing.js';
import { paperView } from './drawing/for-paper.js';
import { letteringCurves } from './drawing/lettering.js';
import { jobSheet, jobSheetName } from './job/job-sheet.js';
import { jobWords } from './job/words/index.js';
import { wordsIn, type Language } from './language.js';
import { drawPieces } from './pieces/index.js';
import { settingPlan } from './pieces/setting-plan.js';
import type { SettingPlan } from './pieces/setting-view.js';
import { pieceWords, type Words } from './pieces/words/index.js';
import { formSheets } from './sheets/form-sheets.js';
import type { PaperName } from './sheets/paper.js';
import type { Sheet } from './sheets/sheet.js';
import { toSheets } from './sheets/sheets.js';
import { sheetWords, type SheetWords } from './sheets/words.js';
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
  /** the TrueType font for PDF; called only when a PDF is made */
  readonly font?: () => Promise<Uint8Array>;
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
  const { words = pieceWords.en, fan, router, pieces } = options;
  return drawPieces(vessel, { words, ...(fan && { fan }), ...(router && { router }) }, pieces);
}

/** Every drawing in every format that is asked for, and the job sheet. */
export async function renderVessel(vessel: Vessel, options: DrawOptions): Promise<OutFile[]> {
  const files = await render(await drawn(vessel, options), vessel.spec, options);
  return [...files, ...(await renderJobSheet(vessel, options))];
}

/** A folder's worth: drawings, job sheet, the spec with every default written out, a page that shows them. Empty without the first two. */
export async function packVessel(vessel: Vessel, options: DrawOptions): Promise<OutFile[]> {
  const drawings = await drawn(vessel, options);
  const job = await renderJobSheet(vessel, options);
  if (drawings.length + job.length === 0) return [];
  return pack(drawings, job, vessel.spec, options);
}

async function pack(
  drawings: readonly Drawing[],
  job: readonly OutFile[],
  spec: Spec,
  options: DrawOptions,
): Promise<OutFile[]> {
  const files = await render(drawings, spec, options);
  const pieces = drawings.map(({ name, title }) => ({ name, title, formats: options.formats }));
  const words = await wordsIn(indexPageWords, options.language ?? 'en');
  const jobFiles = job.map(({ name }) => name);
  const page = toHtml({ title: spec.title, pieces, spec: 'spec.yaml', jobSheet: jobFiles }, words);
  return [
    { name: 'spec.yaml', content: writeSpec(spec) },
    { name: 'index.html', content: page },
    ...job,
    ...files,
  ];
}

async function drawn(vessel: Vessel, { language = 'en', ...options }: DrawOptions) {
  return drawVessel(vessel, { ...options, words: await wordsIn(pieceWords, language) });
}

/** To read and to fill in: as HTML always, as PDF where that is asked for. None where other pieces are asked for by name. */
async function renderJobSheet(vessel: Vessel, options: DrawOptions): Promise<OutFile[]> {
  if (options.pieces && !options.pieces.includes(jobSheetName)) return [];
  const { spec } = vessel;
  const { language = 'en' } = options;
  const { typeset, hoopName } = await wordsIn(pieceWords, language);
  const form = jobSheet(vessel, await wordsIn(jobWords, language), { typeset, hoopName });
  const html = { name: `${form.name}.html`, content: formToHtml(form) };
  if (!options.formats.includes('pdf')) return [html];
  const sheets = formSheets(form, {
    paper: paperOf(options, spec),
    titleBlock: { ...spec.sheet, title: form.title, subtitle: form.subject },
    units: spec.units,
    words: await wordsIn(sheetWords, language),
  });
  return [html, { name: `${form.name}.pdf`, content: await pdfOf(sheets, form, spec, options) }];
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
  const pages = await render([drawing], spec, { ...options, formats: ['svg', 'pdf'] });
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

async function render(
  drawings: readonly Drawing[],
  spec: Spec,
  options: DrawOptions,
): Promise<OutFile[]> {
  const terms = await wordsIn(sheetWords, options.language ?? 'en');
  const files: OutFile[] = [];
  for (const drawing of drawings) {
    const isLettered = options.formats.some((format) => format !== 'pdf');
    const lettered = isLettered ? withLegend(drawing) : drawing;
    for (const format of options.formats) {
      const view = format === 'pdf' ? drawing : lettered;
      const content = await writers[format](view, { spec, options, terms });
      files.push({ name: `${drawing.name}.${format}`, content });
    }
  }
  return files;
}

interface Job {
  readonly spec: Spec;
  readonly options: DrawOptions;
  readonly terms: SheetWords;
}

/** SVG and DXF are given the drawing with its legend set below it; on paper the legend has a place of its own. */
type Writer = (drawing: Drawing, job: Job) => string | Promise<Uint8Array>;

const writers: Record<Format, Writer> = {
  svg: (drawing) => toSvg(drawing),
  dxf: (drawing, { options: { letteringAs } }) => {
    return letteringAs === 'outlines'
      ? toDxf(drawing, { letteringAs, outlinesOf: letteringCurves })
      : toDxf(drawing);
  },
  pdf: (drawing, { spec, options, terms }) => {
    const { paper, printed } = options;
    const sheets = toSheets(paper === 'full' ? drawing : paperView(drawing), {
      paper: paperOf(options, spec),
      titleBlock: { ...spec.sheet, title: drawing.title, subtitle: drawing.subject },
      units: spec.units,
      words: terms,
      ...(printed && { printed }),
    });
    return pdfOf(sheets, drawing, spec, options);
  },
};

/** The file's title names the piece and the vessel. */
async function pdfOf(
  sheets: readonly Sheet[],
  { title }: { readonly title: string },
  spec: Spec,
  { font }: DrawOptions,
): Promise<Uint8Array> {
  if (!font) throw new Error('a PDF needs a font');
  const { toPdf } = await import('./writers/pdf.js');
  return toPdf(sheets, { title: `${title} - ${spec.title}`, font: await font() });
}

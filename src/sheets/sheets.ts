/**
 * A drawing at full size on sheets of paper:
 *
 *     one sheet with everything on it        if the piece fits with its title block and the proof of scale,
 *       (legend on a second if need be)        as it stands or turned, on paper upright or sideways
 *     a cover, then one sheet                 if the piece fits with its title block
 *     a cover, then tiles                     otherwise: the fewest
 */
import type { Drawing } from '../drawing/drawing.js';
import { scaleText } from '../drawing/scale.js';
import type { Composition, LegendSetter } from './compose.js';
import { compose, frameSetter, isRoomFor, legendSetter } from './compose.js';
import { coverPages, legendSheets } from './cover.js';
import { fullSheet } from './full-sheet.js';
import type { Laid } from './lay.js';
import type { Page, Printed } from './page.js';
import { framedPage, trulyPrinted } from './page.js';
import type { PaperName, Size } from './paper.js';
import { paperSizes } from './paper.js';
import type { Units } from './proof.js';
import { proofBlock, proofLines } from './proof.js';
import type { Sheet } from './sheet.js';
import type { Tiling } from './tile.js';
import { tileSetter, tilesOf } from './tile.js';
import type { Placement } from './tiling.js';
import { fewestTiles, placementsOf } from './tiling.js';
import type { SheetNumber, TitleBlock, TitleBlockFields } from './title-block.js';
import { sheetWords, type SheetWords } from './words.js';

export interface SheetOptions {
  readonly paper: PaperName;
  readonly titleBlock: TitleBlock;
  readonly units: Units;
  /** what the 100 mm square of an earlier printout measured, mm: across the paper and along it */
  readonly printed?: Printed;
  readonly words?: SheetWords;
}

/** A sheet that doesn't know yet which of how many it is. */
type Unnumbered = (number: SheetNumber) => Sheet;

interface Job {
  readonly drawing: Drawing;
  readonly placements: readonly Placement[];
  readonly options: SheetOptions;
  readonly fields: TitleBlockFields;
  readonly size: Size;
  readonly printed: Printed;
  readonly terms: SheetWords;
}

/**
 * Throws a RangeError for a drawing that is empty, isn't finite or would need thousands of sheets, and for a printed
 * square that no printer makes of 100 mm.
 */
export function toSheets(drawing: Drawing, options: SheetOptions): Sheet[] {
  const sheets = unnumbered(drawing, options);
  return sheets.map((sheet, i) => sheet({ sheet: i + 1, sheets: sheets.length }));
}

function unnumbered(drawing: Drawing, options: SheetOptions): Unnumbered[] {
  const {
    paper,
    titleBlock,
    units,
    printed = trulyPrinted,
    words: terms = sheetWords.en,
  } = options;
  const { scale } = drawing;
  const fields = { ...titleBlock, units, ...(scale && { scale }) };
  const framed = frameSetter(fields, terms);
  const frame = (composition: Composition): Unnumbered => {
    return (number) => framed(composition, number);
  };
  if (paper === 'full') return [frame(fullSheet(drawing, printed, terms))];
  const placements = placementsOf(drawing);
  const size = paperSizes[paper];
  const job: Job = { drawing, placements, options, fields, size, printed, terms };
  const whole = onOneSheet(job) ?? coverAndOne(job);
  return whole ? whole.map(frame) : coverAndTiles(job, frame);
}

function onOneSheet(job: Job): Composition[] | null {
  const { drawing, terms } = job;
  const composed = (legend: LegendSetter | null) =>
    firstFit(job, (page, laid) =>
      compose(page, laid, drawing.scale ? null : proofBlock(page, terms), legend),
    );
  const all = composed(legendSetter(drawing.legend));
  if (all) return [all];
  const piece = composed(null);
  return piece && [piece, ...legendSheets(drawing.legend, piece.page)];
}

function coverAndOne(job: Job): Composition[] | null {
  const lines = proofLines(job.options.units, job.terms);
  const piece = firstFit(job, (page, laid) => compose(page, laid, lines, null));
  return piece && [...cover(job, null), piece];
}

/** What fits for the first of the placements. What is larger than its page is not even laid. */
function firstFit(
  { placements, size, printed }: Job,
  attempt: (page: Page, laid: Laid) => Composition | null,
): Composition | null {
  for (const placement of placements) {
    const page = framedPage(size, placement.lying, printed);
    if (!isRoomFor(page, placement.size)) continue;
    const composition = attempt(page, placement.laid);
    if (composition) return composition;
  }
  return null;
}

function coverAndTiles(job: Job, frame: (composition: Composition) => Unnumbered): Unnumbered[] {
  const { placements, size, printed, options, fields, terms } = job;
  const tiling = fewestTiles(placements, size, printed, options.units);
  const tiled = tileSetter(tiling, fields, terms);
  const tiles = tilesOf(tiling).map(
    (tile): Unnumbered =>
      (number) =>
        tiled(tile, number),
  );
  const joined = tiling.places.length > 1 ? tiling : null;
  return [...cover(job, joined).map(frame), ...tiles];
}

function cover(
  { drawing, options, size, printed, terms }: Job,
  tiling: Tiling | null,
): Composition[] {
  const page = framedPage(size, 'upright', printed);
  const { paper, titleBlock } = options;
  const { legend, scale } = drawing;
  return coverPages({ legend, titleBlock, page, paper, tiling, terms, scale: scaleText(scale) });
}

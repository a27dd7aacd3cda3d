/** One framed page: the piece, a block that proves the scale and perhaps the legend, put where there is room. */
import type { Legend } from '../drawing/drawing.js';
import { legendBlock, legendHeight } from '../drawing/legend.js';
import type { Bounds } from '../geometry/measure.js';
import { inkOf, inkTogether, lineWidths, moveInk, noInk, rectangle } from './ink.js';
import type { Laid } from './lay.js';
import { isEmpty } from './legend-pages.js';
import type { Page } from './page.js';
import type { Size } from './paper.js';
import type { Block } from './proof.js';
import { grown, heightOf, widthOf } from './rectangle.js';
import type { Room } from './room.js';
import { centred, lowerLeft, take, topLeft } from './room.js';
import type { Ink, Placed, Sheet } from './sheet.js';
import type { SheetNumber, TitleBlockFields } from './title-block.js';
import { titleBlockBox, titleBlockSetter } from './title-block.js';
import type { SheetWords } from './words.js';

/** Between the frame and what stands in it, and between two things in it, mm. */
export const inset = 6;
const gap = 8;
/** What sums and turns may be out by, mm. */
const rounding = 1e-6;
/** Widths of a legend that are worth trying, mm. */
const legendWidths = { least: 85, most: 180 };

export interface Composition {
  readonly page: Page;
  readonly content: readonly Placed[];
  readonly blocks: Ink;
}

/** The legend set in lines of a given width; null when that is higher than there is room for. */
export type LegendSetter = (width: number, room: number) => LegendBlock | null;
type LegendBlock = ReturnType<typeof legendBlock>;

/** Each width is set once only, and only if it fits: to measure it is far quicker. Null when there is no legend. */
export function legendSetter(legend: Legend): LegendSetter | null {
  if (isEmpty(legend)) return null;
  const measured = new Map<number, number>();
  const set = new Map<number, LegendBlock>();
  return (width, room) => {
    const height = measured.get(width) ?? legendHeight(legend, width);
    measured.set(width, height);
    if (height > room + rounding) return null;
    const block = set.get(width) ?? legendBlock(legend, width);
    set.set(width, block);
    return block.height > room ? null : block;
  };
}

/** Whether the piece by itself would fit between the frame's sides; turning a drawing may have rounded its size. */
export function isRoomFor({ area }: Page, { width, height }: Size): boolean {
  const room = grown(area, rounding - inset);
  return width <= widthOf(room) && height <= heightOf(room);
}

/** Null when it doesn't all fit. Without a `proof` nothing on the page proves its scale: a picture is not measured. */
export function compose(
  page: Page,
  laid: Laid,
  proof: Block | null,
  legend: LegendSetter | null,
): Composition | null {
  const start = take([grown(page.area, -inset)], titleBlockBox(page.area), inset);
  const pieceSize = { width: widthOf(laid.bounds), height: heightOf(laid.bounds) };
  const piece = topLeft(start, pieceSize);
  if (!piece) return null;
  const proofBox = proof && lowerLeft(take(start, piece, gap), proof);
  if (proof && !proofBox) return null;
  const around = proofBox ? take(start, proofBox, gap) : start;
  const rest = take(around, piece, gap);
  const notes = legend ? placeLegend(rest, legend) : { ink: noInk, box: null };
  if (!notes) return null;
  const at = centred(notes.box ? take(around, notes.box, gap) : around, piece);
  return {
    page,
    content: [placeLaid(laid, at)],
    blocks: inkTogether(
      proof && proofBox ? moveInk(proof.ink, proofBox.minX, proofBox.minY) : noInk,
      notes.ink,
    ),
  };
}

function placeLegend(room: Room, legend: LegendSetter): { ink: Ink; box: Bounds } | null {
  const byArea = [...room].sort((a, b) => widthOf(b) * heightOf(b) - widthOf(a) * heightOf(a));
  for (const free of byArea) {
    const width = Math.min(legendWidths.most, widthOf(free));
    if (width < legendWidths.least) continue;
    const block = legend(width, heightOf(free));
    // a table's columns that share a width may come to a hair more than it
    if (!block || block.width > widthOf(free) + rounding) continue;
    const { minX, maxY } = free;
    const box = { minX, maxX: minX + block.width, minY: maxY - block.height, maxY };
    return { ink: inkOf(block, minX, maxY), box };
  }
  return null;
}

function placeLaid({ strokes, letterings, bounds }: Laid, at: Bounds): Placed {
  const plain = inkOf({ strokes: [], letterings: letterings.map(({ lettering }) => lettering) });
  const ink = { strokes: [...strokes, ...plain.strokes], letterings: plain.letterings };
  return { ...ink, at: { x: at.minX - bounds.minX, y: at.minY - bounds.minY }, window: at };
}

/** The frame and the title block of a piece's sheets: what pages have in common is set once. */
export function frameSetter(
  fields: TitleBlockFields,
  terms: SheetWords,
): (composition: Composition, number: SheetNumber) => Sheet {
  const known = new Map<Page, { frame: Ink; titleBlock: (number: SheetNumber) => Ink }>();
  const setFor = (page: Page) => {
    const before = known.get(page);
    if (before) return before;
    const frame = rectangle(page.area, lineWidths.frame);
    const set = { frame, titleBlock: titleBlockSetter(fields, page.area, terms) };
    known.set(page, set);
    return set;
  };
  return ({ page, content, blocks }, number) => {
    const { width, height, correction } = page;
    const { frame, titleBlock } = setFor(page);
    const furniture = inkTogether(frame, titleBlock(number), blocks);
    return { width, height, correction, content, furniture };
  };
}

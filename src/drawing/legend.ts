/** Notes and tables set as lettering and rules: below a drawing, or as a block for a sheet of paper. */
import { translate } from '../geometry/transform.js';
import { drawingBounds, rememberBounds } from './bounds.js';
import type { Part } from './build.js';
import { lettering, merge } from './build.js';
import type { Drawing, Legend, Lettering, Table } from './drawing.js';
import { heights } from './heights.js';
import { ascenderPart, descenderPart } from './lettering.js';
import type { Block } from './table.js';
import { ruledTable, tableHeight } from './table.js';
import { wrap, wrappedWidth } from './wrap.js';

/** Space between two blocks, and between the drawing and what is below it, mm. */
const blockGap = 4;
const titleGap = 1.5;
const drawingGap = 12;
const narrowest = 170;
const widest = 400;

/**
 * Notes, then tables, one below the other. The origin is the top left corner, y runs downwards to `-height`; no line
 * of text and no table is wider than `width` mm, unless a table has more columns than letters would fit.
 */
export function legendBlock(legend: Legend, width: number): Block {
  const block = legendPile(legend, width);
  return { ...setDown(block, 0, 0), width: block.width, height: block.height };
}

function legendPile({ notes, tables }: Legend, width: number): Pile {
  return stack([
    paragraphs(notes, heights.normal, width),
    ...tables.map((table) => titledTable(table, width)),
  ]);
}

/** How high `legendBlock` will be. */
export function legendHeight({ notes, tables }: Legend, width: number): number {
  const heightsOfAll = [
    paragraphHeight(notes, heights.normal, width),
    ...tables.map((table) =>
      stackHeight(
        [paragraphHeight([table.title], heights.heading, width), tableHeight(table, width)],
        titleGap,
      ),
    ),
  ];
  return stackHeight(heightsOfAll, blockGap);
}

function stackHeight(each: readonly number[], gap: number): number {
  const filled = each.filter((height) => height > 0);
  return filled.reduce((sum, height) => sum + height, 0) + gap * Math.max(0, filled.length - 1);
}

function paragraphHeight(texts: readonly string[], height: number, width: number): number {
  return linesOf(texts, height, width).length * pitchOf(height);
}

/**
 * The drawing with its title and its legend set below it as ordinary strokes and lettering, and no legend left to set.
 * `width` is the greatest width of the legend in mm: by default the drawing's own, within 170 and 400.
 */
export function withLegend(drawing: Drawing, options: { readonly width?: number } = {}): Drawing {
  const bounds = drawingBounds(drawing);
  const own = bounds.maxX - bounds.minX;
  const width = options.width ?? Math.min(widest, Math.max(narrowest, own));
  const block = stack([
    paragraphs([drawing.title], heights.title, width),
    paragraphs([drawing.subject], heights.heading, width),
    legendPile(drawing.legend, width),
  ]);
  const placed = setDown(block, bounds.minX, bounds.minY - drawingGap);
  const whole = { ...drawing, ...merge(drawing, placed), legend: { notes: [], tables: [] } };
  // what was measured before isn't measured again
  if (placed.letterings.length > 0) rememberBounds(whole, [bounds, drawingBounds(placed)]);
  return whole;
}

/** Blocks below each other that nothing is moved for yet: each would be once in every pile that it is part of. */
interface Pile {
  readonly blocks: readonly { readonly block: Part; readonly down: number }[];
  readonly width: number;
  readonly height: number;
}

/** What is piled up, with its top left corner where it belongs. */
function setDown({ blocks }: Pile, x: number, y: number): Part {
  return merge(
    ...blocks.map(({ block, down }) =>
      x === 0 && y === down ? block : movePart(block, x, y - down),
    ),
  );
}

function pileOf({ strokes, letterings, width, height }: Block): Pile {
  return { blocks: [{ block: { strokes, letterings }, down: 0 }], width, height };
}

function titledTable(table: Table, width: number): Pile {
  const title = paragraphs([table.title], heights.heading, width);
  return stack([title, pileOf(ruledTable(table, width))], titleGap);
}

/** Each text starts on a line of its own and is wrapped to the width. */
function paragraphs(texts: readonly string[], height: number, width: number): Pile {
  const lines = linesOf(texts, height, width);
  const pitch = pitchOf(height);
  const letterings = lines.map((text, i) =>
    lettering(text, { x: 0, y: -ascenderPart * height - i * pitch }, { height }),
  );
  const widths = texts.map((text) => wrappedWidth(text, height, width));
  const block = { strokes: [], letterings };
  return pileOf({ ...block, width: Math.max(0, ...widths), height: lines.length * pitch });
}

function linesOf(texts: readonly string[], height: number, width: number): string[] {
  return texts.filter((text) => text !== '').flatMap((text) => wrap(text, height, width));
}

const pitchOf = (height: number): number => (ascenderPart + descenderPart) * height;

function stack(piles: readonly Pile[], gap = blockGap): Pile {
  const blocks: { block: Part; down: number }[] = [];
  let [width, height] = [0, 0];
  for (const pile of piles) {
    if (!(pile.height > 0)) continue;
    const top = height === 0 ? 0 : height + gap;
    width = Math.max(width, pile.width);
    height = top + pile.height;
    for (const { block, down } of pile.blocks) blocks.push({ block, down: top + down });
  }
  return { blocks, width, height };
}

/** The same part elsewhere. */
export function movePart(part: Part, dx: number, dy: number): Part {
  return {
    strokes: part.strokes.map(({ layer, curve }) => ({ layer, curve: translate(curve, dx, dy) })),
    letterings: part.letterings.map((lettering) => moveLettering(lettering, dx, dy)),
  };
}

function moveLettering(lettering: Lettering, dx: number, dy: number): Lettering {
  const { text, height, align, angle, leader } = lettering;
  const at = { x: lettering.at.x + dx, y: lettering.at.y + dy };
  const moved = { text, at, height, align, angle };
  return leader ? { ...moved, leader: translate(leader, dx, dy) } : moved;
}

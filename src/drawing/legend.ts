/** Notes and tables set as lettering and rules: below a drawing, or as a block for a sheet of paper. */
import { translate } from '../geometry/transform.js';
import { drawingBounds } from './bounds.js';
import type { Part } from './build.js';
import { label, merge } from './build.js';
import type { Drawing, Legend, Lettering, Table } from './drawing.js';
import { heights } from './heights.js';
import { ascenderPart, descenderPart, textWidth } from './lettering.js';
import type { Block } from './table.js';
import { ruledTable } from './table.js';
import { wrap } from './wrap.js';

/** Space between two blocks, and between the drawing and what is below it, mm. */
const blockGap = 4;
const drawingGap = 12;
const narrowest = 170;
const widest = 400;

const empty: Block = { strokes: [], letterings: [], width: 0, height: 0 };

/**
 * Notes, then tables, one below the other. The origin is the top left corner, y runs downwards to `-height`; no line
 * of text and no table is wider than `width` mm, unless a table has more columns than letters would fit.
 */
export function legendBlock(legend: Legend, width: number): Block {
  return stack([
    paragraphs(legend.notes, heights.normal, width),
    ...legend.tables.map((table) => titledTable(table, width)),
  ]);
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
    legendBlock(drawing.legend, width),
  ]);
  const placed = movePart(block, bounds.minX, bounds.minY - drawingGap);
  return { ...drawing, ...merge(drawing, placed), legend: { notes: [], tables: [] } };
}

function titledTable(table: Table, width: number): Block {
  return stack([paragraphs([table.title], heights.heading, width), ruledTable(table, width)], 1.5);
}

/** Each text starts on a line of its own and is wrapped to the width. */
function paragraphs(texts: readonly string[], height: number, width: number): Block {
  const lines = texts.filter((text) => text !== '').flatMap((text) => wrap(text, height, width));
  const pitch = (ascenderPart + descenderPart) * height;
  const parts = lines.map((text, i) =>
    label(text, { x: 0, y: -ascenderPart * height - i * pitch }, { height }),
  );
  const widths = lines.map((text) => textWidth(text, height));
  return { ...merge(...parts), width: Math.max(0, ...widths), height: lines.length * pitch };
}

function stack(blocks: readonly Block[], gap = blockGap): Block {
  return blocks
    .filter((block) => block.height > 0)
    .reduce((above, block) => {
      const top = above.height === 0 ? 0 : above.height + gap;
      return {
        ...merge(above, movePart(block, 0, -top)),
        width: Math.max(above.width, block.width),
        height: top + block.height,
      };
    }, empty);
}

/** The same part elsewhere. */
export function movePart(part: Part, dx: number, dy: number): Part {
  return {
    strokes: part.strokes.map(({ layer, curve }) => ({ layer, curve: translate(curve, dx, dy) })),
    letterings: part.letterings.map((lettering) => moveLettering(lettering, dx, dy)),
  };
}

function moveLettering(lettering: Lettering, dx: number, dy: number): Lettering {
  const at = { x: lettering.at.x + dx, y: lettering.at.y + dy };
  const moved = { ...lettering, at };
  return lettering.leader ? { ...moved, leader: translate(lettering.leader, dx, dy) } : moved;
}

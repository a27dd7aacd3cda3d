/** The foot of a tile: its mark, what it belongs to, and lines of known length. */
import type { Bounds } from '../geometry/measure.js';
import { scaleText } from '../drawing/scale.js';
import { fitText } from './fit-text.js';
import { inkTogether, moveInk, words } from './ink.js';
import type { Units } from './proof.js';
import { proofLines } from './proof.js';
import type { Ink } from './sheet.js';
import type { SheetNumber, TitleBlockFields } from './title-block.js';
import type { SheetWords } from './words.js';

/** Between the window and the foot. */
const gapAbove = 2;
const markRoom = 16;
const gap = 4;
/** Some letters, a J for one, reach to the left of where they start, mm. */
const overhang = 0.5;

/** Room for two lines of text at least. */
export function footHeight(units: Units): number {
  return units === 'mm' ? 11 : 15;
}

/**
 * Along the lower edge of `area`: mark on the left, words in the middle, lines to measure on the right. All but mark and
 * number is the same on every tile of a piece, and set once.
 */
export function footSetter(
  fields: TitleBlockFields,
  area: Bounds,
  isMarked: boolean,
  terms: SheetWords,
): (mark: string, number: SheetNumber) => Ink {
  const lines = proofLines(fields.units, terms);
  const left = area.minX + overhang;
  const from = left + (isMarked ? markRoom : 0);
  const room = area.maxX - lines.width - gap - from;
  const name = fitText(titleOf(fields), room, 2.5);
  const middle = area.minY + (footHeight(fields.units) - gapAbove) / 2;
  const nameInk = words(name.text, { x: from, y: middle + 1 }, name.height);
  const linesInk = moveInk(lines.ink, area.maxX - lines.width, area.minY + 0.5);
  const scale = scaleText(fields.scale);
  return (mark, { sheet, sheets }) => {
    const number = fitText(terms.tile.identification(sheet, sheets, scale), room, 2.5);
    const large = fitText(mark, markRoom - 1, 5);
    return inkTogether(
      words(large.text, { x: left, y: middle - large.height / 2 }, large.height),
      nameInk,
      words(number.text, { x: from, y: middle - 3.4 }, number.height),
      linesInk,
    );
  };
}

/** `Stave. Wine cask, 225 litres`, each said once. */
function titleOf({ title, subtitle }: TitleBlockFields): string {
  return [...new Set([title, subtitle])].filter((part) => part.trim() !== '').join('. ');
}

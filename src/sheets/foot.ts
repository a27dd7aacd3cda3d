/** The foot of a tile: its mark, what it belongs to, and lines of known length. */
import type { Bounds } from '../geometry/measure.js';
import { scaleText } from '../drawing/scale.js';
import { fitText } from './fit-text.js';
import { inkTogether, moveInk, words } from './ink.js';
import type { Units } from './proof.js';
import { proofLines } from './proof.js';
import type { Ink } from './sheet.js';
import type { TitleBlockEntry } from './title-block.js';
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

/** Along the lower edge of `area`: mark on the left, words in the middle, lines to measure on the right. */
export function footInk(
  mark: string,
  entry: TitleBlockEntry,
  area: Bounds,
  terms: SheetWords,
): Ink {
  const lines = proofLines(entry.units, terms);
  const left = area.minX + overhang;
  const from = left + (mark === '' ? 0 : markRoom);
  const room = area.maxX - lines.width - gap - from;
  const name = fitText(titleOf(entry), room, 2.5);
  const sheet = fitText(
    terms.tile.identification(entry.sheet, entry.sheets, scaleText(entry.scale)),
    room,
    2.5,
  );
  const large = fitText(mark, markRoom - 1, 5);
  const middle = area.minY + (footHeight(entry.units) - gapAbove) / 2;
  return inkTogether(
    words(large.text, { x: left, y: middle - large.height / 2 }, large.height),
    words(name.text, { x: from, y: middle + 1 }, name.height),
    words(sheet.text, { x: from, y: middle - 3.4 }, sheet.height),
    moveInk(lines.ink, area.maxX - lines.width, area.minY + 0.5),
  );
}

/** `Stave. Wine cask, 225 litres`, each said once. */
function titleOf({ title, subtitle }: TitleBlockEntry): string {
  return [...new Set([title, subtitle])].filter((part) => part.trim() !== '').join('. ');
}

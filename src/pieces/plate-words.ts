/** What is written on a plate: inside it where it fits, else beside it. */
import { label, merge, type Part } from '../drawing/build.js';
import { heights } from '../drawing/heights.js';
import { ascenderPart, descenderPart, textWidth } from '../drawing/lettering.js';

/** The clear part of a plate, and how far its right edge is from there. */
export interface ClearSpace {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** where the words start that do not fit, at the same height */
  readonly beside: number;
}

const lineHeight = ascenderPart + descenderPart;

/** The name in normal height, what it is held against in small, from the top of the space downwards. */
export function plateWords(name: string, lines: readonly string[], space: ClearSpace): Part {
  const texts = [
    { text: name, height: heights.normal },
    ...lines.map((text) => ({ text, height: heights.small })),
  ];
  const width = Math.max(...texts.map(({ text, height }) => textWidth(text, height)));
  const x = width <= space.right - space.left ? space.left : space.beside;
  let y = space.top;
  const parts = texts.map(({ text, height }) => {
    const at = { x, y: y - ascenderPart * height };
    y -= lineHeight * height + 1.5;
    return label(text, at, { height });
  });
  return merge(...parts);
}

/** Height that a name and a number of small lines take up. */
export function wordsHeight(lines: number): number {
  return lineHeight * (heights.normal + lines * heights.small) + 1.5 * lines;
}

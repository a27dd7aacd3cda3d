/** Sizes of paper in mm, upright: the short edge is the width. */

export const paperNames = [
  'a4',
  'a3',
  'a2',
  'a1',
  'a0',
  'letter',
  'legal',
  'tabloid',
  'full',
] as const;

/** `full` is no size of its own: one sheet as large as the piece asks for. */
export type PaperName = (typeof paperNames)[number];

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A series: ISO 216:2007, table 1. The others are whole and half inches of North American office paper. */
export const paperSizes: Readonly<Record<Exclude<PaperName, 'full'>, Size>> = {
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
  a2: { width: 420, height: 594 },
  a1: { width: 594, height: 841 },
  a0: { width: 841, height: 1189 },
  letter: { width: 215.9, height: 279.4 },
  legal: { width: 215.9, height: 355.6 },
  tabloid: { width: 279.4, height: 431.8 },
};

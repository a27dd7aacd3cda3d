/** The layers of every drawing, named for what a line means, with its ISO 128 line type and width. */

export const layerNames = [
  'outline',
  'hidden',
  'joint',
  'bevel',
  'centre',
  'station',
  'bore',
  'dimension',
  'lettering',
] as const;

export type LayerName = (typeof layerNames)[number];

export type LineType = 'continuous' | 'dashed' | 'dashed-spaced' | 'long-dash-dot';

export interface LayerStyle {
  readonly lineType: LineType;
  /** mm; ISO 128 series, wide to narrow 2:1 */
  readonly width: number;
  readonly meaning: string;
}

export const layerStyles: Readonly<Record<LayerName, LayerStyle>> = {
  outline: { lineType: 'continuous', width: 0.5, meaning: 'edge that is cut through' },
  hidden: { lineType: 'dashed', width: 0.25, meaning: 'edge of the far face' },
  joint: { lineType: 'continuous', width: 0.35, meaning: 'joint between boards' },
  bevel: { lineType: 'dashed-spaced', width: 0.25, meaning: 'where a bevel meets a face' },
  centre: { lineType: 'long-dash-dot', width: 0.25, meaning: 'centre line' },
  station: { lineType: 'continuous', width: 0.18, meaning: 'place along the piece' },
  bore: { lineType: 'dashed', width: 0.18, meaning: 'drilled hole' },
  dimension: { lineType: 'continuous', width: 0.13, meaning: 'dimension or leader' },
  lettering: { lineType: 'continuous', width: 0.25, meaning: 'lettering' },
};

/**
 * Dash patterns in multiples of the line's width, mark and gap by turns, after ISO 128 (types 02, 03, 04;
 * dash 12, gap 3, spaced gap 18, long dash 24, dot 0.5; values from memory).
 */
export const dashPattern: Readonly<Record<LineType, readonly number[]>> = {
  continuous: [],
  dashed: [12, 3],
  'dashed-spaced': [12, 18],
  'long-dash-dot': [24, 3, 0.5, 3],
};

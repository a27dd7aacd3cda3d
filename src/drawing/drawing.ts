/** A drawing as a value: curves on layers, lettering, and a legend; millimetres, full size unless it says otherwise, y up. Knows nothing of files. */
import type { Curve, Point } from '../geometry/curve.js';
import type { LayerName } from './layers.js';

/** A line of the drawing. */
export interface Stroke {
  readonly layer: Exclude<LayerName, 'lettering'>;
  readonly curve: Curve;
}

/** One line of lettering. It may carry its own leader, which the rule against overlaps leaves out. */
export interface Lettering {
  readonly text: string;
  /** where the text is anchored: on its baseline, at the end or middle that `align` names */
  readonly at: Point;
  /** height of capitals in mm, from the ISO 3098 series */
  readonly height: number;
  readonly align: 'left' | 'centre' | 'right';
  /** direction of the baseline, radians counter-clockwise from +x */
  readonly angle: number;
  /** drawn on the layer `dimension` */
  readonly leader?: Curve;
}

/** A table of the legend; every row has as many cells as there are headings. */
export interface Table {
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** rows closer together than usual, for a long list that should stay on one sheet */
  readonly close?: boolean;
}

/** What belongs with a drawing but not on its lines: set below it, or on a page of its own. */
export interface Legend {
  readonly notes: readonly string[];
  readonly tables: readonly Table[];
}

export interface Drawing {
  /** stem of its files: lower case letters, digits and hyphens */
  readonly name: string;
  readonly title: string;
  /** what it belongs to: the vessel's title; may be empty */
  readonly subject: string;
  readonly strokes: readonly Stroke[];
  readonly letterings: readonly Lettering[];
  readonly legend: Legend;
  /** of a picture: its size on paper as a part of full size, 0.2 for 1:5; a drawing without it is full size, 1:1 */
  readonly scale?: number;
  /** a shorter view for paper, such as a long strap with its middle broken out; routers get the drawing itself */
  readonly forPaper?: Pick<Drawing, 'strokes' | 'letterings' | 'legend'>;
}

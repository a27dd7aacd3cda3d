/** The checked spec: every default filled in, lengths in millimetres, angles in radians. Types only. */

export type Units = 'mm' | 'in';
export type End = 'top' | 'bottom';
export type CaskProfile = 'arc' | 'parabola' | 'ellipse';

export interface Spec {
  readonly vessel: 'cask' | 'tub';
  readonly title: string;
  /** the units that the file was written in and that people are shown */
  readonly units: Units;
  /** overall, end plane to end plane */
  readonly height: number;
  readonly outside: CaskOutside | TubOutside;
  readonly staves: StaveSpec;
  readonly chime: ChimeSpec;
  readonly howel: HowelSpec;
  /** a tub has a bottom only */
  readonly heads: { readonly top: HeadSpec | null; readonly bottom: HeadSpec };
  readonly hoops: readonly HoopSpec[];
  readonly bung: { readonly diameter: number } | null;
  readonly sheet: SheetSpec;
}

/** Outside diameters. */
export interface CaskOutside {
  readonly kind: 'cask';
  readonly bilge: number;
  readonly ends: number;
  readonly profile: CaskProfile;
}

/** Outside diameters. */
export interface TubOutside {
  readonly kind: 'tub';
  readonly top: number;
  readonly bottom: number;
}

export interface StaveSpec {
  readonly count: number;
  /** widths across the flat outer face at the bilge (tub: at the wider end) of a mixed set, in ring order; null for equal staves */
  readonly widths: readonly number[] | null;
  /** finished, at the middle of the stave */
  readonly thickness: number;
  /** finished, at both ends */
  readonly endThickness: number;
  readonly inside: 'hollowed' | 'flat';
  readonly outside: 'rounded' | 'flat';
  /** depth of the unstretched line inside the outer face, as a share of the finished thickness */
  readonly neutral: number;
  readonly ends: 'overlong' | 'cut';
  readonly trim: number;
}

/** The slope on the inside of the stave ends. `bevel` is its angle from the end plane, in radians. */
export interface ChimeSpec {
  readonly bevel: number;
  /** what is left of the end, from the outer face inwards, square to the axis */
  readonly flat: number;
}

export interface HowelSpec {
  readonly depth: number;
  /** how far the band runs past the groove's inner lip, along the axis */
  readonly beyondGroove: number;
}

export interface HeadSpec {
  readonly thickness: number;
  readonly boards: number;
  /** board widths from the lowest board upwards; null for equal boards */
  readonly widths: readonly number[] | null;
  readonly clearance: number;
  /** signed, added to the diameter across the boards */
  readonly crossGrain: number;
  readonly croze: { readonly inset: number; readonly depth: number; readonly width: number };
  readonly edge: {
    readonly thickness: number;
    readonly fromInside: number;
    readonly outerBevel: number;
    readonly innerBevel: number;
  };
  readonly dowels: {
    readonly diameter: number;
    readonly length: number;
    readonly spacing: number;
    readonly margin: number;
  };
}

export interface HoopSpec {
  readonly name: string;
  readonly end: 'both' | End;
  /** axial, from the end plane to the hoop's near edge */
  readonly offset: number;
  /** the strap's width: the chord from profile point to profile point */
  readonly width: number;
  readonly thickness: number;
  readonly lap: number;
}

/** Fields of ISO 7200 that the user fills in. */
export interface SheetSpec {
  readonly owner: string;
  readonly number: string;
  readonly date: string;
  readonly creator: string;
  readonly approved: string;
}

/** What a file says, key by key, in millimetres and degrees, before defaults: everything may be absent. Types only. */
import type { CaskProfile, End, StaveSpec, Units } from './spec.js';

type Optional<T> = { readonly [K in keyof T]?: T[K] | undefined };
/** A section that is absent, or opened and left empty. */
export type Section<T> = Optional<T> | null;

export interface Given {
  readonly vessel?: 'cask' | 'tub' | undefined;
  readonly title?: string | undefined;
  readonly units?: Units | undefined;
  readonly height?: number | undefined;
  readonly bilge?: number | undefined;
  readonly ends?: number | undefined;
  readonly profile?: CaskProfile | 'measured' | undefined;
  readonly top?: number | undefined;
  readonly bottom?: number | undefined;
  readonly staves?: Section<Omit<StaveSpec, 'widths'> & { widths: number[] }> | undefined;
  readonly chime?: Section<{ bevelDegrees: number; flat: number }> | undefined;
  readonly howel?: Section<{ depth: number; beyondGroove: number }> | undefined;
  readonly heads?: GivenHeads | null | undefined;
  readonly hoops?: readonly GivenHoop[] | undefined;
  readonly bung?: Section<{ diameter: number }> | 'none' | undefined;
  readonly sheet?:
    Section<Record<'owner' | 'number' | 'date' | 'creator' | 'approved', string>> | undefined;
}

export interface GivenHead {
  readonly thickness?: number | undefined;
  readonly boards?: number | undefined;
  readonly widths?: readonly number[] | undefined;
  readonly clearance?: number | undefined;
  readonly crossGrain?: number | undefined;
  readonly croze?: Section<{ inset: number; depth: number; width: number }> | undefined;
  readonly edge?:
    Section<Record<'thickness' | 'fromInside' | 'outerBevel' | 'innerBevel', number>> | undefined;
  readonly dowels?:
    Section<Record<'diameter' | 'length' | 'spacing' | 'margin', number>> | undefined;
}

export interface GivenHeads extends GivenHead {
  readonly top?: GivenHead | null | undefined;
  readonly bottom?: GivenHead | null | undefined;
}

export interface GivenHoop {
  readonly name: string;
  readonly end?: 'both' | End | undefined;
  readonly offset: number;
  readonly width: number;
  readonly thickness?: number | undefined;
  readonly lap?: number | undefined;
}

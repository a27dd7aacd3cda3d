/** What is asked of a rack, and what comes back. Lengths in mm, angles in radians. */

import type { Measured } from './closing.js';
import type { RingMeasure } from './ring-measure.js';

export interface MatchRequest {
  /** the spec's outside diameter at the bilge (tub: at the wider end) */
  readonly diameter: number;
  readonly measured: Measured;
  readonly vessels: number | 'max';
  /** how many staves a set may have, inclusive */
  readonly count: { readonly min: number; readonly max: number };
  /** how far from `diameter` a set may close */
  readonly tolerance: number;
  /** the most that may be planed off the widths of one set together */
  readonly plane: number;
  /** least width of the bung stave that each set needs; null: no bung stave is needed */
  readonly bung: number | null;
  /** least length of a stave; staves of unstated length are taken to reach it */
  readonly length?: number;
  /** least blank thickness of a stave of this width; staves of unstated thickness are taken to reach it */
  readonly thicknessFor?: (width: number) => number;
  /** azimuths, from the middle of the bung stave in setting order, where head-board joints meet the groove */
  readonly headJoints?: readonly number[];
  /** marks of staves already standing, in the order they stand; they belong to the first set */
  readonly standing?: readonly string[];
  readonly seed?: number;
}

/** All that the search wants from outside; each may be left out. */
export interface MatchHooks {
  /** seconds from any fixed moment */
  readonly now?: () => number;
  /** true: stop, and answer with the best so far */
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (progress: MatchProgress) => void;
  /** awaited now and then, so that the caller's key presses and signals get their turn */
  readonly breathe?: () => Promise<void>;
}

export interface MatchProgress {
  readonly stage: 'choosing' | 'ordering';
  readonly done: number;
  readonly of: number;
}

export interface MatchedStave {
  readonly mark: string;
  /** as measured */
  readonly width: number;
  /** to be taken off the width */
  readonly planeOff: number;
}

/** A swap that brings a ring back that closes large or small by about two standard deviations. */
export interface Cure {
  readonly closes: 'large' | 'small';
  readonly takeOut: string;
  readonly putIn: string;
  /** what the swap does to the closing diameter */
  readonly changesBy: number;
}

export interface MatchedSet {
  /** in setting order, from the bung stave */
  readonly staves: readonly MatchedStave[];
  /** outside diameter, after planing */
  readonly closesAt: number;
  readonly count: number;
  /** mark; null when no bung stave is asked for */
  readonly bungStave: string | null;
  /** lower is better; `ring` has its parts */
  readonly ringMeasure: number;
  readonly ring: RingMeasure;
  /** all staves edge to edge on the bench, after planing */
  readonly laidWidth: number;
  /** of `closesAt`, from the step that the widths were read to */
  readonly standardDeviation: number;
  readonly cures: readonly Cure[];
}

/** Why there are fewer sets than were asked for. */
export interface Shortfall {
  /** `noBung`: no stave of the rack can take the bung; `bung`: none of those that can is left */
  readonly reason:
    'wood' | 'counts' | 'noBung' | 'bung' | 'widths' | 'search' | 'stopped' | 'standing';
  /** girth (mm) that the whole rack lacks for one set more; 0 unless the reason is `wood` */
  readonly girthMissing: number;
}

/** Staves that would make one set more, shown by solving again with them. */
export interface Help {
  readonly staves: number;
  readonly fromWidth: number;
  readonly toWidth: number;
  /** which set they would make: 4 for the fourth */
  readonly makesSet: number;
}

export interface UnfitStave {
  readonly mark: string;
  readonly because: 'length' | 'thickness' | 'width';
}

export interface MatchResult {
  readonly sets: readonly MatchedSet[];
  /** marks left on the rack, by width */
  readonly left: readonly string[];
  /** staves that could not be used at all; they are in `left` too */
  readonly unfit: readonly UnfitStave[];
  /** no method can make more sets than this, of the number asked for */
  readonly upperBound: number;
  /** whether no method can make more sets, of the number asked for */
  readonly proven: boolean;
  /** whether no choice is better by any of the aims (see `aims.ts`) */
  readonly provenBest: boolean;
  readonly seconds: number;
  readonly shortfall: Shortfall | null;
  readonly help: Help | null;
}

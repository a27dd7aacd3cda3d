/** What the proof finds: each thing that was judged, in which file, what it measured and what it should. Data only. */
import type { End } from '../spec/spec.js';

export type Face = 'outer' | 'inner';

/** The side of a stave as it is drawn: above or below its centre line. */
export type Side = 'upper' | 'lower';

export type Check =
  | 'file-there'
  | 'file-belongs'
  | 'file-readable'
  | 'units'
  | 'scale'
  | 'known-lines'
  | 'closed-contours'
  | 'doubled-lines'
  | 'stave-contour'
  | 'blank-end'
  | 'stave-edge'
  | 'end-plane'
  | 'end-cut'
  | 'station-line'
  | 'hoop-line'
  | 'groove-line'
  | 'howel-line'
  | 'end-line'
  | 'extra-line'
  | 'joint-gap'
  | 'girth'
  | 'closure'
  | 'groove-height'
  | 'groove-width'
  | 'head-contour'
  | 'head-rim'
  | 'head-fit'
  | 'head-joint'
  | 'head-bevel'
  | 'head-dowel'
  | 'board-outline'
  | 'board-dowel'
  | 'edge-stave'
  | 'edge-groove-depth'
  | 'edge-head'
  | 'hoop-height'
  | 'hoop-cover'
  | 'strap-count'
  | 'strap-width'
  | 'strap-length'
  | 'strap-lap'
  | 'strap-girth'
  | 'sheet-edge'
  | 'sheet-width'
  | 'capacity';

export type FindingUnit = 'mm' | 'degrees' | 'litres' | 'count' | '';

/** Where in the file, or on the vessel, as far as it applies. */
export interface Place {
  /** mm along the flat blank */
  readonly station?: number;
  readonly face?: Face;
  readonly side?: Side;
  readonly end?: End;
  /** number in the ring; a joint lies between this stave and the next */
  readonly stave?: number;
  /** number of a board, a joint of boards, a strap or a dowel */
  readonly number?: number;
  readonly hoop?: string;
  readonly edge?: 'near' | 'far' | 'short' | 'long';
  /** name of a part, of those in the words */
  readonly part?: string;
  /** a point of the drawing, mm */
  readonly x?: number;
  readonly y?: number;
  readonly layer?: string;
}

export interface Finding {
  readonly check: Check;
  readonly passed: boolean;
  /** the files that carry what was judged, by name */
  readonly files: readonly string[];
  readonly place: Place;
  readonly unit: FindingUnit;
  /** null where it could not be measured, or is not a number */
  readonly measured: number | null;
  readonly expected: number | null;
  /** either way; null where nothing is allowed to differ */
  readonly tolerance: number | null;
  /** why, where numbers do not say it: one of the reasons in the words */
  readonly reason?: string;
}

export interface Proof {
  readonly passed: boolean;
  readonly findings: readonly Finding[];
}

interface Judged {
  readonly measured: number | null;
  readonly expected: number;
  readonly tolerance: number;
  readonly unit?: FindingUnit;
}

/** A number held against what it should be. What could not be measured has not passed. */
export function judged(
  check: Check,
  files: string | readonly string[],
  place: Place,
  { measured, expected, tolerance, unit = 'mm' }: Judged,
): Finding {
  const known = measured !== null && Number.isFinite(measured);
  return {
    check,
    passed: known && Math.abs(measured - expected) <= tolerance * (1 + 1e-9),
    files: typeof files === 'string' ? [files] : files,
    place,
    unit,
    measured: known ? measured : null,
    expected: Number.isFinite(expected) ? expected : null,
    tolerance,
  };
}

/** What is so or is not, without a number. */
export function stated(
  check: Check,
  passed: boolean,
  files: string | readonly string[],
  reason?: string,
  place: Place = {},
): Finding {
  return {
    check,
    passed,
    files: typeof files === 'string' ? [files] : files,
    place,
    unit: '',
    measured: null,
    expected: null,
    tolerance: null,
    ...(reason !== undefined && { reason }),
  };
}

/** The finding that is furthest out, of several of one kind. */
export function worst(findings: readonly Finding[]): Finding {
  const share = ({ measured, expected, tolerance }: Finding): number =>
    measured === null ? Infinity : Math.abs(measured - (expected ?? NaN)) / (tolerance ?? NaN);
  return findings.reduce((a, b) => (share(b) > share(a) ? b : a));
}

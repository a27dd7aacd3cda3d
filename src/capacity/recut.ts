/** A worn vessel made new: cut shorter, its outside shaved, with grooves at the new ends. Pure; lengths in mm. */
import type { Issue } from '../spec/issue.js';
import type { Spec } from '../spec/spec.js';
import { solveVessel } from '../vessel/solve.js';
import type { Vessel } from '../vessel/vessel.js';
import { recutHoops } from './recut-hoops.js';
import { recutOutside } from './recut-outside.js';
import { asItCloses, shapeOf } from './shape.js';
import { changesBetween, type Change } from './size-dimensions.js';

export interface Recutting {
  /** taken off each end of a cask, off the bottom of a tub */
  readonly shorten: number;
  /** taken off the rim of a tub */
  readonly rim?: number;
  /** taken off the outside, square to it */
  readonly shave?: number;
}

export interface Recut {
  readonly spec: Spec;
  readonly vessel: Vessel;
  readonly changes: readonly Change[];
  /**
   * How far the new spec's surfaces lie from the old ones at most, cut and shaved: a shaved parabola or ellipse isn't one itself,
   * and an arc, a straight wall, or anything that is only cut comes out exact.
   */
  readonly residual: { readonly outside: number; readonly inside: number };
  /**
   * Where the old groove lies: its middle from the new end plane, and whether it is cut off altogether, or the new groove would
   * run into it. One for each end that has a head.
   */
  readonly oldGrooves: readonly OldGroove[];
}

/** The recut spec, and why it cannot be built. */
export interface NotBuildable {
  readonly spec: Spec;
  readonly issues: readonly Issue[];
}

export interface OldGroove {
  readonly end: 'top' | 'bottom';
  readonly fromEnd: number;
  readonly state: 'gone' | 'beside' | 'meets' | 'same';
}

/** Wood that two grooves must leave between them to be two (mm; our judgement). */
const betweenGrooves = 3;

/** The groove's inset, the chime and the howel are the spec's, at the new ends. Issues where that cannot be built. */
export function recut(
  given: Spec,
  { shorten, rim = 0, shave = 0 }: Recutting,
): Recut | NotBuildable {
  const old = asItCloses(given);
  const off = { top: old.vessel === 'cask' ? shorten : rim, bottom: shorten };
  const surface = recutOutside(old, off, shave);
  const spec: Spec = { ...surface.spec, hoops: recutHoops(old.hoops, off) };
  const solved = solveVessel(spec);
  if ('issues' in solved) return { spec, issues: solved.issues };
  return {
    spec,
    vessel: solved.vessel,
    changes: changesBetween(given, spec),
    residual: surface.residual(shapeOf(old), solved.vessel),
    oldGrooves: oldGrooves(old, off),
  };
}

function oldGrooves(spec: Spec, off: { readonly top: number; readonly bottom: number }) {
  return (['top', 'bottom'] as const).flatMap((end): OldGroove[] => {
    const croze = spec.heads[end]?.croze;
    if (!croze) return [];
    const fromEnd = croze.inset - off[end];
    return [{ end, fromEnd, state: stateOf(croze.width, fromEnd, off[end]) }];
  });
}

/** The new groove lies where the old one did from its own end: as far from the old one as the end has moved. */
function stateOf(width: number, fromEnd: number, off: number): OldGroove['state'] {
  if (off === 0) return 'same';
  if (fromEnd <= -width / 2) return 'gone';
  return off < width + betweenGrooves ? 'meets' : 'beside';
}

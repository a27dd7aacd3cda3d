/** The solved vessel: every part of the model as data and functions. Types only; `solve.ts` makes it. */
import type { Issue } from '../spec/issue.js';
import type { Spec } from '../spec/spec.js';
import type { Bend } from './bend.js';
import type { Head } from './head.js';
import type { Hoop } from './hoop.js';
import type { Profile } from './profile.js';
import type { Ring } from './ring.js';
import type { Stave } from './stave.js';
import type { Wall } from './wall.js';

export interface Vessel {
  readonly spec: Spec;
  readonly ring: Ring;
  readonly profile: Profile;
  readonly wall: Wall;
  readonly bend: Bend;
  /** in ring order; equal staves share one object */
  readonly staves: readonly Stave[];
  /** the stave of the mean half-angle: each of equal staves, and what a mixed set would be if evened out */
  readonly meanStave: Stave;
  /** a stave of any width, measured across the flat outer face at the bilge */
  staveOfWidth(width: number): Stave;
  /** a tub has no top */
  readonly heads: { readonly top: Head | null; readonly bottom: Head };
  readonly hoops: readonly Hoop[];
  readonly warnings: readonly Issue[];
}

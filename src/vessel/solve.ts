/** Spec -> solved Vessel: the one place where the parts of the model meet. */
import type { Issue } from '../spec/issue.js';
import type { End, HeadSpec, Spec } from '../spec/spec.js';
import { bendOf } from './bend.js';
import { checkFrame, checkRing } from './check-frame.js';
import { checkParts } from './checks.js';
import { grooveOf } from './groove.js';
import { headOf, type Head } from './head.js';
import { hoopsOf } from './hoop.js';
import { insideAt } from './inside.js';
import { greatestDiameter, profileOf, type Profile } from './profile.js';
import { ringOf, type Ring } from './ring.js';
import { staveOf, type Stave } from './stave.js';
import type { Vessel } from './vessel.js';
import { wallOf, type Wall } from './wall.js';

export type Solved = { readonly vessel: Vessel } | { readonly issues: readonly Issue[] };

/** Solves a spec. What cannot be built comes back as issues with the key that is to blame; nothing throws. */
export function solveVessel(spec: Spec): Solved {
  const ring = ringOf(spec);
  const profile = profileOf(spec, ring.closesAt / greatestDiameter(spec));
  const closing = checkRing(spec, ring);
  if (closing.some(isError)) return { issues: closing };
  const early = [...closing, ...checkFrame(spec, profile, ring)];
  if (early.some(isError)) return { issues: early };
  const vessel = assemble(spec, ring, profile);
  const issues = [...early, ...checkParts(vessel)];
  if (issues.some(isError)) return { issues };
  return { vessel: { ...vessel, warnings: issues } };
}

const isError = (issue: Issue): boolean => issue.severity === 'error';

function assemble(spec: Spec, ring: Ring, profile: Profile): Omit<Vessel, 'warnings'> {
  const wall = wallOf(spec, profile);
  const bend = bendOf(spec, profile, wall);
  const make = (alpha: number): Stave => staveOf(spec, profile, wall, bend, alpha);
  const staves = stavesOf(ring, make);
  return {
    spec,
    ring,
    profile,
    wall,
    bend,
    staves,
    staveOfWidth: (width) => make(Math.atan(width / ring.closesAt)),
    meanStave: spec.staves.widths ? make(Math.PI / ring.alphas.length) : staves[0]!,
    heads: {
      top: spec.heads.top && headAt('top', spec.heads.top, spec, ring, profile, wall),
      bottom: headAt('bottom', spec.heads.bottom, spec, ring, profile, wall),
    },
    hoops: hoopsOf(spec, profile, ring),
  };
}

/** One object for each width, however many staves have it. */
function stavesOf(ring: Ring, make: (alpha: number) => Stave): Stave[] {
  const made = new Map<number, Stave>();
  return ring.alphas.map((alpha) => {
    const stave = made.get(alpha) ?? make(alpha);
    made.set(alpha, stave);
    return stave;
  });
}

function headAt(
  end: End,
  head: HeadSpec,
  spec: Spec,
  ring: Ring,
  profile: Profile,
  wall: Wall,
): Head {
  const inside = insideAt(end, spec, ring, profile, wall);
  return headOf(head, grooveOf(end, inside, spec.howel, head, spec.chime));
}

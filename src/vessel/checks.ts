/** What cannot be built, and what a cooper should be warned of. Lengths in the values are mm, angles degrees. */
import type { Issue, SpecPath } from '../spec/issue.js';
import type { End, Spec } from '../spec/spec.js';
import { checkGroove } from './check-groove.js';
import { checkHead } from './check-head.js';
import { checkHoops } from './check-hoops.js';
import { error, warning } from './issues.js';
import { greatestDiameter, lean, widestHeight, type Profile } from './profile.js';
import type { Ring } from './ring.js';
import type { Stave } from './stave.js';
import type { Vessel } from './vessel.js';
import { insideAt } from './inside.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Steeper walls are dishes, not vessels of staves; the groove and hoops would not hold. */
const steepestLeanDegrees = 45;
/** The ring of a mixed set may miss the spec's diameter by this share before it is another vessel. */
const closingShare = 0.05;
const closingTolerance = 1.5;
const stretchLimitPercent = 1.5;

/** Whether the staves close at all, and near the diameter that the spec asks for. */
export function checkRing(spec: Spec, ring: Ring): Issue[] {
  const wanted = greatestDiameter(spec);
  const values = { closesAt: ring.closesAt, wanted };
  if (!(Math.abs(ring.closesAt - wanted) <= closingShare * wanted)) {
    return [error('staves-do-not-close', ['staves', 'widths'], values)];
  }
  if (Math.abs(ring.closesAt - wanted) > closingTolerance) {
    return [warning('staves-close-elsewhere', ['staves', 'widths'], values)];
  }
  return [];
}

/** Whether the profile reaches far enough, leans little enough and bends gently enough for staves of this thickness. */
export function checkFrame(spec: Spec, profile: Profile, ring: Ring): Issue[] {
  const plane = spec.height / 2;
  const blame: SpecPath = [spec.vessel === 'cask' ? 'ends' : 'bottom'];
  const steepest = Math.abs(lean(profile, plane));
  const needed =
    plane + (spec.staves.ends === 'overlong' ? spec.staves.trim : 0) + thickest(spec, ring);
  if (!(degrees(steepest) <= steepestLeanDegrees)) {
    return [
      error('wall-too-steep', blame, {
        leanDegrees: degrees(steepest),
        allowed: steepestLeanDegrees,
      }),
    ];
  }
  if (profile.reach < needed || profile.radius(needed) <= 0 || profile.radius(-needed) <= 0) {
    return [error('profile-ends-early', blame, { reach: profile.reach, needed })];
  }
  const least = Math.min(profile.radius(plane), profile.radius(-plane));
  if (thickest(spec, ring) > 0.6 * least) {
    return [
      error('wall-too-thick', ['staves', 'thickness'], {
        thickness: thickest(spec, ring),
        radius: least,
      }),
    ];
  }
  const tightest = Math.max(profile.curvature(0), profile.curvature(plane));
  if (tightest * thickest(spec, ring) > 0.2) {
    return [
      error('bend-too-tight', ['staves', 'thickness'], {
        thickness: thickest(spec, ring),
        bendRadius: 1 / tightest,
      }),
    ];
  }
  return [];
}

/** An upper estimate of the blank's thickness, before staves are made. */
function thickest(spec: Spec, ring: Ring): number {
  const hollow = spec.staves.inside === 'hollowed' ? 1 - Math.cos(ring.widestAlpha) : 0;
  const leaning = 1.5;
  return (
    Math.max(spec.staves.thickness, spec.staves.endThickness) +
    leaning * hollow * (ring.closesAt / 2)
  );
}

/** Everything that needs the finished parts. */
export function checkParts(vessel: Omit<Vessel, 'warnings'>): Issue[] {
  const { heads, spec } = vessel;
  const ends: End[] = heads.top ? ['top', 'bottom'] : ['bottom'];
  const issues = ends.flatMap((end) => {
    const head = heads[end]!;
    const inside = insideAt(end, spec, vessel.ring, vessel.profile, vessel.wall);
    const groove = checkGroove(head, inside, spec, vessel.wall, vessel.profile);
    return groove.some((issue) => issue.severity === 'error')
      ? groove
      : [...groove, ...checkHead(head, inside)];
  });
  return [
    ...issues,
    ...checkHeadsApart(vessel),
    ...checkStaves(vessel),
    ...checkBung(vessel),
    ...checkHoops(vessel),
  ];
}

function checkHeadsApart({ heads }: Omit<Vessel, 'warnings'>): Issue[] {
  if (!heads.top || heads.top.insideFace > heads.bottom.insideFace) return [];
  return [error('heads-meet', ['heads', 'croze', 'inset'])];
}

function checkStaves({ spec, staves, bend, profile, ring }: Omit<Vessel, 'warnings'>): Issue[] {
  const issues: Issue[] = [];
  const stretch = bend.outerStretch * 100;
  if (stretch > stretchLimitPercent) {
    issues.push(
      warning('outer-face-stretches', ['staves', 'thickness'], {
        percent: stretch,
        allowed: stretchLimitPercent,
      }),
    );
  }
  const { thickness, inside, outside } = spec.staves;
  if (inside === 'flat' && outside === 'rounded') {
    const left = thickness - profile.radius(widestHeight(spec)) * (1 - Math.cos(ring.widestAlpha));
    if (left <= 0)
      issues.push(error('joint-vanishes', ['staves', 'thickness'], { left, thickness }));
    else if (left < 0.8 * thickness)
      issues.push(warning('joint-thin', ['staves', 'thickness'], { left, thickness }));
  }
  const thinned = Math.min(...staves.map((stave) => stave.blankThicknessAt(spec.height / 2)));
  if (thinned <= 0)
    issues.push(error('ends-too-thin', ['staves', 'endThickness'], { left: thinned }));
  const step = outside === 'flat' ? unlikeStep(staves, profile.radius(widestHeight(spec))) : 0;
  if (step > 0.5) issues.push(warning('neighbours-step', ['staves', 'outside'], { step }));
  return issues;
}

/** With flat outsides a wide stave's corner stands further out than a narrow neighbour's: `R (1/cos a - 1/cos b)`. */
function unlikeStep(staves: readonly Stave[], radius: number): number {
  return staves.reduce((worst, stave, i) => {
    const next = staves[(i + 1) % staves.length]!;
    const step = Math.abs(1 / Math.cos(stave.alpha) - 1 / Math.cos(next.alpha)) * radius;
    return Math.max(worst, step);
  }, 0);
}

/** Wood must be left on both sides of the bung hole (a quarter of the stave each side: common practice, no source). */
function checkBung({ spec, staves }: Omit<Vessel, 'warnings'>): Issue[] {
  if (!spec.bung) return [];
  const width = Math.max(...staves.map((stave) => stave.width));
  if (spec.bung.diameter >= width) {
    return [
      error('bung-wider-than-stave', ['bung', 'diameter'], { diameter: spec.bung.diameter, width }),
    ];
  }
  if (spec.bung.diameter > 0.75 * width) {
    return [
      warning('bung-leaves-little', ['bung', 'diameter'], { diameter: spec.bung.diameter, width }),
    ];
  }
  return [];
}

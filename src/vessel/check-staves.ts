/** Whether bent staves stand it, meet each other well, and leave room for the bung. */
import type { Issue } from '../spec/issue.js';
import { error, warning } from './issues.js';
import { widestHeight } from './profile.js';
import type { Stave } from './stave.js';
import type { Vessel } from './vessel.js';

type Parts = Omit<Vessel, 'warnings'>;

const stretchLimitPercent = 1.5;
/** What backing must leave of the thickness at the joints without a warning. */
const jointShare = 0.8;
/** Steps between unlike neighbours smaller than this vanish under the plane (mm). */
const noticedStep = 0.5;

export function checkStaves(vessel: Parts): Issue[] {
  return [
    ...checkStretch(vessel),
    ...checkJoints(vessel),
    ...checkEnds(vessel),
    ...checkStep(vessel),
  ];
}

function checkStretch({ bend }: Parts): Issue[] {
  const percent = bend.outerStretch * 100;
  if (percent <= stretchLimitPercent) return [];
  const values = { percent, allowed: stretchLimitPercent };
  return [warning('outer-face-stretches', ['staves', 'thickness'], values)];
}

/** Rounding the outside of a stave that keeps a flat inside takes `R (1 - cos alpha)` off its joints. */
function checkJoints({ spec, profile, ring }: Parts): Issue[] {
  const { thickness, inside, outside } = spec.staves;
  if (inside !== 'flat' || outside !== 'rounded') return [];
  const left = thickness - profile.radius(widestHeight(spec)) * (1 - Math.cos(ring.widestAlpha));
  const values = { left, thickness };
  if (left <= 0) return [error('joint-vanishes', ['staves', 'thickness'], values)];
  return left < jointShare * thickness
    ? [warning('joint-thin', ['staves', 'thickness'], values)]
    : [];
}

/** Thinning goes on past the end planes, and must leave wood to the ends of every blank. */
function checkEnds({ spec, staves, bend, wall }: Parts): Issue[] {
  if (spec.staves.endThickness >= spec.staves.thickness) return [];
  const blank = (stave: Stave, station: number): number =>
    stave.blankThicknessAt(bend.sectionAtStation(station));
  const atEnds = [...new Set(staves)].flatMap((stave) =>
    [stave.blankEnds.top, stave.blankEnds.bottom].flatMap(({ outer, inner }) => [
      blank(stave, outer),
      blank(stave, inner),
    ]),
  );
  const left = Math.min(wall.thickness(spec.height / 2), ...atEnds);
  if (left > 0) return [];
  // NaN: the thinning runs out before an inner face has reached the end plane
  const values = { left: Number.isNaN(left) ? 0 : left };
  return [error('ends-too-thin', ['staves', 'endThickness'], values)];
}

function checkStep({ spec, staves, profile }: Parts): Issue[] {
  if (spec.staves.outside !== 'flat') return [];
  const step = unlikeStep(staves, profile.radius(widestHeight(spec)));
  return step > noticedStep ? [warning('neighbours-step', ['staves', 'outside'], { step })] : [];
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
export function checkBung({ spec, staves }: Parts): Issue[] {
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

/** The steps that make staves: bolts and billets, planing, jointing, hollowing. */
import { backingRadius, hollowingRadius } from '../vessel/stave-round.js';
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import {
  boltAllowance,
  dryingAllowance,
  jointingAllowance,
  planingAllowance,
  spareStaves,
} from './allowances.js';
import { blankLength } from './cut-list.js';
import type { Step } from './steps.js';
import type { Texts } from './texts.js';
import type { JobWords } from './words/job-words.js';

export const woodStep: Step = (vessel, { steps: { wood } }, texts) => {
  const { staves, meanStave } = vessel;
  const width = Math.max(...staves.map((stave) => stave.width)) + jointingAllowance;
  const thickness = thickestBlank(vessel) + planingAllowance;
  const text = wood.text(
    texts.atLeast(blankLength(meanStave) + boltAllowance),
    staves.length + spareStaves,
    texts.atLeast(width * (1 + dryingAllowance.width)),
    texts.atLeast(thickness * (1 + dryingAllowance.thickness)),
  );
  return { title: wood.title, text, measures: [], caution: wood.caution };
};

export const planeStep: Step = (vessel, { steps: { plane } }, texts) => ({
  title: plane.title,
  text: plane.text(texts.length(blankLength(vessel.meanStave))),
  measures: [{ name: plane.thickness, value: texts.measure(thickestBlank(vessel)) }],
  caution: plane.caution,
});

/** Widths, bevels, and what the staves add up to: before jointing with what jointing takes off. */
export const jointStep: Step = (vessel, words, texts) => {
  const { joint } = words.steps;
  const { spec, staves } = vessel;
  const laid = staves.reduce((sum, { width }) => sum + width, 0);
  const rough = laid + jointingAllowance * staves.length;
  return {
    title: joint.title,
    text: spec.staves.widths === null ? evenText(vessel, words, texts) : joint.mixed,
    measures: [
      { name: joint.before, value: `≥ ${texts.measure(rough)}` },
      { name: joint.laid, value: texts.measure(laid) },
    ],
    caution: joint.caution,
  };
};

function evenText(vessel: Vessel, { steps: { joint } }: JobWords, texts: Texts): string {
  const { spec, meanStave } = vessel;
  const [top, bottom] = [spec.height / 2, -spec.height / 2];
  const width = (z: number): string => texts.length(2 * meanStave.halfWidth(z, 0));
  const bevel = (z: number): string => texts.angle(meanStave.bevel(z));
  return spec.vessel === 'cask'
    ? joint.cask(width(0), width(top), bevel(0), bevel(top))
    : joint.tub(width(top), width(bottom), bevel(0), texts.angle(meanStave.sawTilt(0)));
}

export const hollowStep: Step = (vessel, { steps: { hollow } }, texts) => {
  const { spec } = vessel;
  if (spec.staves.inside === 'flat') return null;
  return {
    title: hollow.title,
    text: hollow.text(texts.length(hollowingRadius(vessel, widestHeight(spec)))),
    measures: [{ name: hollow.thickness, value: texts.measure(spec.staves.thickness) }],
    caution: '',
  };
};

/** Rounding the outside comes after the fire; a flat outside stays. */
export const roundStep: Step = (vessel, { steps: { round } }, texts) => {
  const { spec, profile } = vessel;
  if (spec.staves.outside === 'flat') return null;
  const z = widestHeight(spec);
  return {
    title: round.title,
    text: round.text(texts.length(backingRadius(vessel, z))),
    measures: [{ name: round.girth, value: texts.measure(2 * Math.PI * profile.radius(z)) }],
    caution: '',
  };
};

function thickestBlank({ staves }: Vessel): number {
  return Math.max(...staves.map(({ blankThickness }) => blankThickness));
}

/** The steps that make the ring: raising, firing, trimming its ends, howel and groove. */
import type { FormEntry } from '../drawing/form.js';
import type { Head } from '../vessel/head.js';
import { raisingOf } from '../vessel/raising.js';
import type { Vessel } from '../vessel/vessel.js';
import { workingHoopsOf } from '../vessel/working-hoops.js';
import type { Step } from './steps.js';
import type { JobWords } from './words/job-words.js';

/**
 * In the raising hoop, outer faces still flat: the girth before fire is that of the polygon there. Its place is measured
 * down a stave as it was sawn, trim included.
 */
export const raiseStep: Step = (vessel, { steps: { raise } }, texts) => {
  const { hoop, raisedStation, hoopStation } = raisingOf(vessel);
  const girth = vessel.spec.vessel === 'cask' ? raise.beforeFire : raise.inHoop;
  const down = texts.length(raisedStation - hoopStation);
  const isMixed = vessel.spec.staves.widths !== null;
  const text = [
    raise.text(vessel.staves.length),
    ...(isMixed && vessel.spec.bung ? [raise.bung] : []),
  ];
  return {
    title: raise.title,
    text: text.join(' '),
    measures: [{ name: girth(down), value: texts.measure(hoop.flatGirth) }],
    caution: raise.caution,
  };
};

/** A cask only: a tub's staves are straight. */
export const fireStep: Step = (vessel, { steps: { fire } }, texts) => {
  const { spec, bend, ring, profile } = vessel;
  if (spec.vessel === 'tub') return null;
  const [, quarter] = workingHoopsOf(vessel);
  return {
    title: fire.title,
    text: fire.text((100 * bend.outerStretch).toFixed(2), texts.length(quarter!.flatGirth)),
    measures: [
      { name: fire.girth, value: texts.measure(2 * profile.radius(0) * ring.sumOfTangents) },
    ],
    caution: fire.caution,
  };
};

export const trimStep: Step = ({ spec, heads }, { steps: { trim } }, texts) => {
  const { bevel, flat } = spec.chime;
  const hasChime = heads.bottom.groove.chime !== null;
  return {
    title: hasChime ? trim.title : trim.titlePlain,
    text: hasChime ? trim.text(texts.angle(bevel), texts.length(flat)) : trim.plain,
    measures: [{ name: trim.height, value: texts.measure(spec.height) }],
    caution: '',
  };
};

export const grooveStep: Step = (vessel, words, texts) => {
  const { groove } = words.steps;
  const sentence = ({ spec: { croze } }: Head): string =>
    groove.text(texts.length(croze.inset), texts.length(croze.width), texts.length(croze.depth));
  return {
    title: groove.title,
    text: [
      groove.howel(texts.length(vessel.spec.howel.depth)),
      ...ofHeads(vessel, words, sentence),
      groove.compass,
    ].join(' '),
    measures: atHeads(vessel, groove.radius, words, ({ groove: { radius } }) =>
      texts.measure(radius),
    ),
    caution: '',
  };
};

/** A sentence that is the same for both heads is said once. */
export function ofHeads(
  { heads: { top, bottom } }: Vessel,
  { ends, atEnd }: JobWords,
  sentence: (head: Head) => string,
): string[] {
  const lower = sentence(bottom);
  const upper = top ? sentence(top) : lower;
  return upper === lower ? [lower] : [atEnd(ends.top, upper), atEnd(ends.bottom, lower)];
}

/** A box for each head there is. */
export function atHeads(
  { heads: { top, bottom } }: Vessel,
  name: (end: string) => string,
  { ends }: JobWords,
  value: (head: Head) => string,
): FormEntry[] {
  const lower = { name: name(ends.bottom), value: value(bottom) };
  return top ? [{ name: name(ends.top), value: value(top) }, lower] : [lower];
}

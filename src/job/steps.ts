/** The order of work from bolt to test, each step with its numbers, the boxes to write in, and its caution. */
import type { FormStep } from '../drawing/form.js';
import type { Vessel } from '../vessel/vessel.js';
import {
  bungStep,
  handOverStep,
  headStep,
  hoopStep,
  setHeadStep,
  testStep,
} from './steps-close.js';
import { fireStep, grooveStep, raiseStep, trimStep } from './steps-ring.js';
import { hollowStep, jointStep, planeStep, roundStep, woodStep } from './steps-stave.js';
import type { Texts } from './texts.js';
import type { JobWords } from './words/job-words.js';

/** A step, or null where the vessel doesn't have it. */
export type Step = (vessel: Vessel, words: JobWords, texts: Texts) => FormStep | null;

const order: readonly Step[] = [
  woodStep,
  planeStep,
  jointStep,
  hollowStep,
  raiseStep,
  fireStep,
  trimStep,
  grooveStep,
  roundStep,
  headStep,
  setHeadStep,
  hoopStep,
  bungStep,
  testStep,
  handOverStep,
];

export function stepsOf(vessel: Vessel, words: JobWords, texts: Texts): FormStep[] {
  const steps = order.map((step) => step(vessel, words, texts)).filter((step) => step !== null);
  return steps.map((step) => ({
    ...step,
    caution: step.caution && words.takeCare(step.caution),
  }));
}

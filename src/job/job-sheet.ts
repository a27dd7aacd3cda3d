/** The job sheet: what a cooper takes to the bench, from the vessel's numbers to the steps in their order. */
import type { Form } from '../drawing/form.js';
import { typesetForm } from '../drawing/typeset.js';
import { asWritten, type Typeset } from '../language.js';
import type { Vessel } from '../vessel/vessel.js';
import { cutList } from './cut-list.js';
import { entriesOf } from './entries.js';
import { labelTexts } from './labels.js';
import { stepsOf } from './steps.js';
import { textsIn } from './texts.js';
import type { JobWords } from './words/job-words.js';

export const jobSheetName = 'job-sheet';
/** one line for the list of pieces */
export const aboutJobSheet = 'numbers, cut list, steps with boxes to fill in, labels (PDF, HTML)';

/** What a language has besides the words of the job sheet. */
interface Speech {
  readonly typeset: Typeset;
  hoopName(name: string): string;
}

const english: Speech = { typeset: asWritten, hoopName: (name) => name };

export function jobSheet(
  vessel: Vessel,
  words: JobWords,
  { typeset, hoopName }: Speech = english,
): Form {
  const texts = textsIn(vessel.spec.units, hoopName);
  const form: Form = {
    name: jobSheetName,
    language: words.language,
    title: words.title,
    subject: vessel.spec.title,
    numbers: {
      heading: words.numbers.heading(texts.unit),
      entries: entriesOf(vessel, words, texts),
    },
    list: cutList(vessel, words, texts),
    steps: { heading: words.steps.heading, steps: stepsOf(vessel, words, texts) },
    labels: {
      heading: words.labels,
      texts: labelTexts(vessel, texts),
    },
  };
  return typeset === asWritten ? form : typesetForm(form, typeset);
}

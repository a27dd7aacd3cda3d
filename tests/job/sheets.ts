/** The job sheet of a vessel, and how to find what it says. */
import { readFileSync } from 'node:fs';
import type { Form } from '../../src/drawing/form.js';
import { jobSheet } from '../../src/job/job-sheet.js';
import { en } from '../../src/job/words/en.js';
import { planVessel } from '../../src/plan.js';
import type { Vessel } from '../../src/vessel/vessel.js';

export function vesselOf(yaml: string): Vessel {
  const { vessel, messages } = planVessel(yaml, 'test.yaml');
  if (!vessel) throw new Error(JSON.stringify(messages));
  return vessel;
}

export const templateText = (name: string): string =>
  readFileSync(new URL(`../../templates/${name}.yaml`, import.meta.url), 'utf8');

export class Said {
  readonly form: Form;

  constructor(yaml: string) {
    this.form = jobSheet(vesselOf(yaml), en);
  }

  step(title: string) {
    const step = this.form.steps.steps.find((each) => each.title === title);
    if (!step) throw new Error(`no step ${title}`);
    return step;
  }

  titles(): string[] {
    return this.form.steps.steps.map(({ title }) => title);
  }

  /** The value beside a box whose name begins like that. */
  aim(title: string, name: string): string {
    const found = this.step(title).measures.find((measure) => measure.name.startsWith(name));
    if (!found) throw new Error(`no box ${name} at ${title}`);
    return found.value;
  }

  number(name: string): string {
    return this.form.numbers.entries.find((each) => each.name === name)!.value;
  }

  row(piece: string): readonly string[] {
    return this.form.list.rows.find(([first]) => first === piece)!;
  }
}

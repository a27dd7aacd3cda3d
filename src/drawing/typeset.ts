/** Drawings and forms with all that they say set as a language sets it. The subject is the user's own words and stays. */
import type { Typeset } from '../language.js';
import type { Drawing, Table } from './drawing.js';
import type { Form, FormEntry } from './form.js';

/** Its title, lettering and legends, on paper too. */
export function typesetDrawing(drawing: Drawing, typeset: Typeset): Drawing {
  const { forPaper } = drawing;
  return {
    ...drawing,
    title: typeset(drawing.title),
    ...spoken(drawing, typeset),
    ...(forPaper && { forPaper: { ...forPaper, ...spoken(forPaper, typeset) } }),
  };
}

type Spoken = Pick<Drawing, 'letterings' | 'legend'>;

function spoken({ letterings, legend }: Spoken, typeset: Typeset): Spoken {
  return {
    letterings: letterings.map((each) => ({ ...each, text: typeset(each.text) })),
    legend: {
      notes: legend.notes.map(typeset),
      tables: legend.tables.map((table) => typesetTable(table, typeset)),
    },
  };
}

function typesetTable({ title, headings, rows }: Table, typeset: Typeset): Table {
  return {
    title: typeset(title),
    headings: headings.map(typeset),
    rows: rows.map((row) => row.map(typeset)),
  };
}

/** Its name and language are not said. */
export function typesetForm(form: Form, typeset: Typeset): Form {
  const { numbers, list, steps, labels } = form;
  const entry = ({ name, value }: FormEntry): FormEntry => ({
    name: typeset(name),
    value: typeset(value),
  });
  return {
    ...form,
    title: typeset(form.title),
    numbers: { heading: typeset(numbers.heading), entries: numbers.entries.map(entry) },
    list: typesetTable(list, typeset),
    steps: {
      heading: typeset(steps.heading),
      steps: steps.steps.map(({ title, text, measures, caution }) => ({
        title: typeset(title),
        text: typeset(text),
        measures: measures.map(entry),
        caution: typeset(caution),
      })),
    },
    labels: {
      heading: typeset(labels.heading),
      texts: labels.texts.map(typeset),
    },
  };
}

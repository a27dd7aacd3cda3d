/** A drawing with all that it says set as a language sets it. */
import type { Typeset } from '../language.js';
import type { Drawing } from './drawing.js';

/** Its title, lettering and legends, on paper too; the subject is the user's own words and stays. */
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
      tables: legend.tables.map(({ title, headings, rows }) => ({
        title: typeset(title),
        headings: headings.map(typeset),
        rows: rows.map((row) => row.map(typeset)),
      })),
    },
  };
}

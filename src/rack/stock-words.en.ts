import { ORDINARY_WIDTH } from './stock.js';
import type { StockWords } from './stock-words.js';

export const english: StockWords = {
  severity: { error: 'error', warning: 'warning' },
  sentences: {
    empty: () =>
      'The list is empty: it needs a heading with mark and width, then a line for each stave.',
    'quote-open': () => 'A quotation mark is opened here and never closed.',
    'quote-followed': () =>
      'Text follows a closing quotation mark: put the whole field in quotes and double any quote inside it.',
    'heading-missing': (_found, heading) => `The first line names no column "${heading}".`,
    'heading-doubled': (_found, heading) => `The column "${heading}" is there twice: keep one.`,
    'heading-unknown': (found) =>
      `The column "${found}" is not read. Known: mark, width, length, thickness, bung, note.`,
    'fields-extra': (found, _heading, detail) =>
      `"${found}" stands beyond the last column.` +
      (detail === ',' ? ' A decimal comma needs quotes, or semicolons between the columns.' : ''),
    'mark-missing': () => 'This stave has no mark.',
    'mark-unprintable': () =>
      'The mark has a line break or another character that cannot be printed.',
    'mark-doubled': (found, _heading, detail) =>
      `The mark "${found}" is already on line ${detail}: every stave needs its own.`,
    'width-missing': () => 'This stave has no width.',
    'length-unreadable': (found, heading, detail) =>
      `"${found}" is no ${heading}. Write ${detail === 'in' ? '2.8 or 2 13/16' : '71.5 or 71,5'}` +
      (heading === 'width' ? ', or two readings with a stroke between them' : '') +
      (detail === 'mm' ? `; for inches head the column "${heading} (in)".` : '.'),
    'width-absurd': (found) =>
      `A width of ${found} is not a stave's: between ${ORDINARY_WIDTH.least} and ${ORDINARY_WIDTH.most} mm is taken.`,
    'length-absurd': (found, heading) => `A ${heading} of ${found} is not a stave's.`,
    'unit-mistaken': (found, _heading, detail) => {
      const [read, meant] = detail.endsWith('(mm)')
        ? ['inches', 'millimetres']
        : ['millimetres', 'inches'];
      return (
        `"${found}" and nearly all of this column were read as ${read} and are not a stave's; as ${meant} they would be: ` +
        `head the column "${detail}", and likewise others that are in ${meant}.`
      );
    },
    'readings-apart': (found, _heading, detail) =>
      `The two readings ${found} lie ${detail} mm apart: measure this stave again? Their mean is used.`,
    'bung-unreadable': (found) => `"${found}" is neither yes nor no.`,
  },
};

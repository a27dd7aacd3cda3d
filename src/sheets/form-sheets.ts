/**
 * A form on sheets of paper, upright: its title block at the foot of the first sheet, a line that says which sheet it is at the
 * foot of the others. Blocks run on from sheet to sheet; none is cut.
 */
import type { Form } from '../drawing/form.js';
import type { Bounds } from '../geometry/measure.js';
import { fitText } from './fit-text.js';
import { headingBlock, labelRows, numbersBlock, stacked, type FormBlock } from './form-block.js';
import { listRows } from './form-list.js';
import { stepBlock } from './form-step.js';
import { inkTogether, moveInk, words } from './ink.js';
import { plainPage, trulyPrinted } from './page.js';
import { paperSizes, type PaperName } from './paper.js';
import type { Units } from './proof.js';
import { widthOf } from './rectangle.js';
import type { Ink, Sheet } from './sheet.js';
import type { TitleBlock } from './title-block.js';
import { titleBlockBox, titleBlockInk } from './title-block.js';
import type { SheetWords } from './words.js';

export interface FormOptions {
  /** of the patterns: a form is set on the ordinary sheet nearest to it */
  readonly paper: PaperName;
  readonly titleBlock: TitleBlock;
  readonly units: Units;
  readonly words: SheetWords;
}

const footHeight = 7;
const aboveTitleBlock = 2;
/** So that the rule of their heading isn't taken for a line to cut along. */
const aboveLabels = 1.5;

/** A block with the space above it, which a sheet's first block does without. */
interface Spaced extends FormBlock {
  readonly above: number;
}

export function formSheets(form: Form, options: FormOptions): Sheet[] {
  const page = plainPage(paperSizes[officePaper(options)], 'upright', trulyPrinted);
  const { area } = page;
  const first = { ...area, minY: titleBlockBox(area).maxY + aboveTitleBlock };
  const rest = { ...area, minY: area.minY + footHeight };
  const pages = flow(blocksOf(form, widthOf(area)), first, rest);
  return pages.map((blocks, i) => ({
    width: page.width,
    height: page.height,
    correction: page.correction,
    content: [],
    furniture: inkTogether(blocks, footOf(form, options, i, pages.length, area)),
  }));
}

/** No office printer takes a sheet of any length, and few take A3 or tabloid. */
function officePaper({ paper, units }: FormOptions): 'a4' | 'letter' {
  if (paper === 'full') return units === 'in' ? 'letter' : 'a4';
  return ['letter', 'legal', 'tabloid'].includes(paper) ? 'letter' : 'a4';
}

function blocksOf(form: Form, width: number): Spaced[] {
  const { numbers, list, steps, labels } = form;
  const [listHead, ...listRest] = listRows(list, width);
  const [stepHead, ...stepRest] = steps.steps.map((step, i) => stepBlock(step, i + 1, width));
  const [labelHead, ...labelRest] = labelRows(labels.texts, width);
  const under = (heading: string): FormBlock => headingBlock(heading, width);
  const headed = (text: string, ...first: (FormBlock | undefined)[]): FormBlock =>
    stacked([under(text), ...first.filter((block) => block !== undefined)]);
  const spaced = (above: number) => (block: FormBlock) => ({ ...block, above });
  return [
    spaced(0)(headed(numbers.heading, numbersBlock(numbers.entries, width))),
    spaced(1)(headed(list.title, listHead, listRest[0])),
    ...listRest.slice(1).map(spaced(0)),
    spaced(2)(headed(steps.heading, stepHead)),
    ...stepRest.map(spaced(0.8)),
    spaced(2)(stacked([under(labels.heading), labelHead!], aboveLabels)),
    ...labelRest.map(spaced(0)),
  ];
}

/** The blocks from the top of each sheet downwards: the first sheet's space differs from that of the rest. */
function flow(blocks: readonly Spaced[], first: Bounds, rest: Bounds): Ink[] {
  const pages: Ink[][] = [[]];
  let space = first;
  let y = space.maxY;
  for (const { ink, height, above } of blocks) {
    const isFirst = pages.at(-1)!.length === 0;
    if (!isFirst && y - above - height < space.minY) {
      pages.push([]);
      space = rest;
      y = space.maxY;
    } else if (!isFirst) y -= above;
    pages.at(-1)!.push(moveInk(ink, space.minX, y));
    y -= height;
  }
  return pages.map((inks) => inkTogether(...inks));
}

function footOf(
  form: Form,
  { titleBlock: fields, units, words: terms }: FormOptions,
  index: number,
  sheets: number,
  area: Bounds,
): Ink {
  const sheet = index + 1;
  if (index === 0)
    return titleBlockInk(
      { ...fields, units, sheet, sheets, documentType: form.title },
      area,
      terms,
    );
  const sheetOf = `${terms.titleBlock.sheet} ${terms.titleBlock.sheetOf(sheet, sheets)}`;
  const text = [sheetOf, form.title, form.subject, fields.number].filter((part) => part !== '');
  const foot = fitText(text.join(' · '), widthOf(area) - 1, 3.5);
  return words(foot.text, { x: area.minX + 0.5, y: area.minY + 1.4 }, foot.height);
}

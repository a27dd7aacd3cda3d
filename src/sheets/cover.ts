/** The first pages of a set of sheets: what it is, how to prove its scale and join it, and the legend. */
import type { Legend } from '../drawing/drawing.js';
import { legendBlock } from '../drawing/legend.js';
import { wrap } from '../drawing/wrap.js';
import type { Bounds } from '../geometry/measure.js';
import { assemblyPlan } from './assembly-plan.js';
import type { Composition } from './compose.js';
import { inset } from './compose.js';
import { fitText } from './fit-text.js';
import { inkOf, inkTogether, moveInk, noInk, words } from './ink.js';
import { keeper } from './kept.js';
import { heightOfLegend, isEmpty, legendPages } from './legend-pages.js';
import type { Page } from './page.js';
import type { PaperName } from './paper.js';
import { proofBlock } from './proof.js';
import { grown, heightOf, widthOf } from './rectangle.js';
import type { Ink } from './sheet.js';
import type { Tiling } from './tile.js';
import type { TitleBlock } from './title-block.js';
import { titleBlockBox } from './title-block.js';
import type { SheetWords } from './words.js';

const gap = 8;
const headingRoom = 8;
const widestLegend = 200;
/** The plan is no smaller than this for the sake of the legend, and no larger than this in any case, mm. */
const planHeights = { least: 40, most: 140 };

interface CoverOptions {
  readonly legend: Legend;
  readonly titleBlock: TitleBlock;
  readonly page: Page;
  readonly paper: PaperName;
  /** null when the piece is on one sheet */
  readonly tiling: Tiling | null;
  readonly terms: SheetWords;
  /** such as `1:1` */
  readonly scale: string;
}

/** The cover, and as many pages after it as the legend needs. */
export function coverPages(options: CoverOptions): Composition[] {
  const { legend, page, tiling } = options;
  const space = spaceOf(page);
  const head = coverHead(options, space);
  const below = { ...space, maxY: head.bottom - gap };
  const leastPlan = tiling ? planHeights.least + gap : 0;
  const notes = legendFor(legend, { ...below, minY: below.minY + leastPlan });
  const planSpace = { ...below, minY: below.minY + (notes ? notes.height + gap : 0) };
  const plan = planInk(options, planSpace);
  const legendTop = plan.height > 0 ? below.maxY - plan.height - gap : below.maxY;
  const cover = inkTogether(
    head.ink,
    plan.ink,
    notes ? inkOf(notes, below.minX, legendTop) : noInk,
  );
  const rest = notes ? [] : legendPages(legend, space);
  return [cover, ...rest].map((blocks) => ({ page, content: [], blocks }));
}

/** Pages with nothing but a legend. */
export function legendSheets(legend: Legend, page: Page): Composition[] {
  return legendPages(legend, spaceOf(page)).map((blocks) => ({ page, content: [], blocks }));
}

/** Inside the frame and above the title block. */
function spaceOf({ area }: Page): Bounds {
  return { ...grown(area, -inset), minY: titleBlockBox(area).maxY + inset };
}

/** Titles, and below them the proof of scale on the left and the steps on the right. */
function coverHead(options: CoverOptions, space: Bounds): { ink: Ink; bottom: number } {
  const { titleBlock, tiling, paper, terms, scale } = options;
  const { cover } = terms;
  const tiles = tiling?.places.length ?? 1;
  const title = fitText(titleBlock.title, widthOf(space), 7);
  const about = [titleBlock.subtitle, cover.subtitle(tiles, cover.paperNames[paper], scale)];
  const subtitle = fitText(
    about.filter((part) => part.trim() !== '').join('. '),
    widthOf(space),
    3.5,
  );
  const proofAndSteps = belowTitles(options, { ...space, maxY: space.maxY - 20 });
  return {
    ink: inkTogether(
      words(title.text, { x: space.minX, y: space.maxY - 9.5 }, title.height),
      words(subtitle.text, { x: space.minX, y: space.maxY - 17 }, subtitle.height),
      proofAndSteps.ink,
    ),
    bottom: proofAndSteps.bottom,
  };
}

const keptBelowTitles = keeper<{ ink: Ink; bottom: number }>();

/** The same for all pieces: it hangs on nothing but the paper, and on whether there is something to join. */
function belowTitles(
  { tiling, page, terms }: CoverOptions,
  { minX, maxX, maxY }: Bounds,
): { ink: Ink; bottom: number } {
  const isTiled = tiling !== null;
  return keptBelowTitles(terms, [isTiled, page.across, minX, maxX, maxY].join(' '), () => {
    const proof = proofBlock(page, terms);
    const steps = stepsInk(isTiled, terms, maxX - minX - proof.width - gap);
    return {
      ink: inkTogether(
        moveInk(proof.ink, minX, maxY - proof.height),
        moveInk(steps.ink, minX + proof.width + gap, maxY),
      ),
      bottom: maxY - Math.max(proof.height, steps.height),
    };
  });
}

/** Heading and wrapped steps; origin at the upper left. */
function stepsInk(
  isTiled: boolean,
  terms: SheetWords,
  width: number,
): { ink: Ink; height: number } {
  const { howToUse, steps, single } = terms.cover;
  const [height, pitch, between] = [2.5, 4.6, 2];
  let y = -headingRoom;
  const inks = (isTiled ? steps : single).flatMap((step) => {
    y -= between;
    return wrap(step, height, width).map((text) => {
      y -= pitch;
      return words(text, { x: 0, y }, height);
    });
  });
  return { ink: inkTogether(...headingInk(howToUse, width), ...inks), height: -y };
}

function headingInk(text: string, width: number): Ink[] {
  const heading = fitText(text, width, 3.5);
  return [words(heading.text, { x: 0, y: -6 }, heading.height)];
}

/** The plan under its heading, if there is something to join. */
function planInk({ tiling, terms }: CoverOptions, space: Bounds): { ink: Ink; height: number } {
  if (!tiling) return { ink: noInk, height: 0 };
  const { plan, planLeftOut } = terms.cover;
  const { columns, rows } = tiling.grid;
  const isWhole = tiling.places.length === columns * rows;
  const text = isWhole ? plan : `${plan} (${planLeftOut})`;
  const most = Math.min(planHeights.most, heightOf(space)) - headingRoom;
  const picture = assemblyPlan(tiling, { width: widthOf(space), height: most });
  const height = headingRoom + picture.height;
  const heading = inkTogether(...headingInk(text, widthOf(space)));
  return {
    ink: inkTogether(
      moveInk(heading, space.minX, space.maxY),
      moveInk(picture.ink, space.minX, space.maxY - height),
    ),
    height,
  };
}

/** The whole legend if it fits into a space; null when there is none or it doesn't fit. */
function legendFor(legend: Legend, space: Bounds): ReturnType<typeof legendBlock> | null {
  if (isEmpty(legend)) return null;
  const width = Math.min(widthOf(space), widestLegend);
  return heightOfLegend(legend, width) <= heightOf(space) ? legendBlock(legend, width) : null;
}

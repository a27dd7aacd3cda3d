/** One sheet as large as the piece asks for, with everything on it. */
import type { Drawing } from '../drawing/drawing.js';
import type { Composition } from './compose.js';
import { compose, inset, legendSetter } from './compose.js';
import { lay } from './lay.js';
import type { Page, Printed } from './page.js';
import { framedPage, framedPaper } from './page.js';
import type { Size } from './paper.js';
import { proofBlock } from './proof.js';
import { heightOf, widthOf } from './rectangle.js';
import { titleBlockHeight, titleBlockWidth } from './title-block.js';
import type { SheetWords } from './words.js';

/** Heights are tried in steps of this, mm. */
const step = 10;
/** Beside the piece there may be room for one block or more, mm. */
const besides = [0, 130, 200, 320];

/** No sheet is made higher than this for what stands beside and below the piece, mm. */
const highest = 20_000;

/** Of the sheets that hold it all, the one of the least area among a few widths. Throws a RangeError where none does. */
export function fullSheet(drawing: Drawing, printed: Printed, terms: SheetWords): Composition {
  const laid = lay(drawing);
  const legend = legendSetter(drawing.legend);
  const attempt = (area: Size): Composition | null => {
    const page = pageAround(area, printed);
    const proof = drawing.scale ? null : proofBlock(page, terms);
    return compose(page, laid, proof, legend);
  };
  const width = Math.max(widthOf(laid.bounds) + 2 * inset, titleBlockWidth);
  const height = heightOf(laid.bounds) + titleBlockHeight + 3 * inset;
  const found = besides
    .map((beside) => lowest(width + beside, height, attempt))
    .filter((each) => each !== null);
  if (found.length === 0) throw new RangeError(`no sheet holds ${drawing.name} with its legend`);
  return found.reduce((best, each) => (areaOf(each.page) < areaOf(best.page) ? each : best));
}

/** The lowest sheet of a width, to the next step; `from` is too low or just right. Null where a higher one is no help either. */
function lowest(
  width: number,
  from: number,
  attempt: (area: Size) => Composition | null,
): Composition | null {
  let [tooLow, steps] = [-1, 1];
  let best = attempt({ width, height: from + step });
  while (!best) {
    tooLow = steps;
    steps *= 2;
    if (steps * step > highest) return null;
    best = attempt({ width, height: from + steps * step });
  }
  while (steps - tooLow > 1) {
    const middle = Math.floor((tooLow + steps) / 2);
    const tried = attempt({ width, height: from + middle * step });
    if (tried) [best, steps] = [tried, middle];
    else tooLow = middle;
  }
  return best;
}

/** A page whose area is at least so large, in whole millimetres. */
function pageAround({ width, height }: Size, printed: Printed): Page {
  const shrunk = Math.max(1, 100 / printed.across, 100 / printed.along);
  return framedPage(
    framedPaper({ width: width * shrunk, height: height * shrunk }),
    'upright',
    printed,
  );
}

function areaOf({ width, height }: Size): number {
  return width * height;
}

/**
 * The bed of a saw carriage for the tapered edges of a tub's staves, full size: `x` along the blade, 0 at the stave's
 * mid-height; the lower edge is the blade's line on the bed. Two lines say where the fence stands for the two cuts.
 */
import type { Point } from '../geometry/curve.js';
import { line, polygon } from '../geometry/curve.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, lengthText, per100Text, shortLengthText } from '../drawing/length-text.js';
import { ascenderPart } from '../drawing/lettering.js';
import { leftForSecondCut, listingOf, type Listing } from '../vessel/listing.js';
import type { Vessel } from '../vessel/vessel.js';
import { ordinaryRange, widthSteps } from './stave-widths.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** Bed behind the fence, and distance between the dimension lines beside it. */
const behindFence = 40;
const column = 12;
const clear = 2;
const small = { height: heights.small, align: 'centre' as const };

/** One drawing for a tub; none for a cask, whose staves have curved edges that no straight fence can guide. */
export function listingJig(vessel: Vessel, words: Words, range = ordinaryRange(vessel)): Drawing[] {
  const listing = listingOf(vessel, vessel.meanStave);
  if (!listing) return [];
  const { title } = words.gauges.listing;
  const part = merge(bed(listing), fences(listing, vessel, words), endMarks(listing, words));
  return [drawingOf('listing-jig', title, part, legend(vessel, listing, words, range))];
}

function bed({ reach, firstFence, secondFence }: Listing): Part {
  const furthest = [-reach, reach].flatMap((x) => [firstFence(x), secondFence(x)]);
  const top = Math.max(...furthest) + behindFence;
  const corner = (x: number, y: number): Point => ({ x, y });
  return strokes(
    'outline',
    polygon([corner(-reach, 0), corner(reach, 0), corner(reach, top), corner(-reach, top)]),
  );
}

/** Each fence with its distance from the blade at both ends, and its words where the first one stands further out. */
function fences(listing: Listing, { spec }: Vessel, words: Words): Part {
  const { first, second } = words.gauges.listing;
  const { reach, taper } = listing;
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const middle = taper < 0 ? -reach / 2 : reach / 2;
  const fence = (distance: (along: number) => number, order: 1 | 2, name: string): Part => {
    const at = (x: number): Point => ({ x, y: distance(x) });
    const angle = Math.atan2(distance(reach) - distance(-reach), 2 * reach);
    const above = order === 1 ? clear : -clear - ascenderPart * heights.small;
    const beside = (side: 1 | -1): Part => {
      const x = side * reach;
      const through = { x: x + side * column * order, y: 0 };
      return dimensionLine(text(distance(x)), { x, y: 0 }, at(x), through, { angle: Math.PI / 2 });
    };
    return merge(
      strokes('station', line(at(-reach), at(reach))),
      label(name, leftOf(at(middle), angle, above), { ...small, angle }),
      beside(-1),
      beside(1),
    );
  };
  return merge(fence(listing.firstFence, 1, first), fence(listing.secondFence, 2, second));
}

/** A point a little to the left of a direction through another. */
const leftOf = ({ x, y }: Point, angle: number, by: number): Point => ({
  x: x - by * Math.sin(angle),
  y: y + by * Math.cos(angle),
});

/** Where the end planes come to lie along the blade: the stave is turned end for end between the cuts. */
function endMarks({ ends }: Listing, words: Words): Part {
  const { blade, ends: say } = words.gauges.listing;
  const { top, bottom } = words.ends;
  const mark = (x: number, text: string): Part =>
    merge(strokes('station', line({ x, y: 0 }, { x, y: -3 })), label(text, { x, y: -8 }, small));
  return merge(
    mark(ends.bottom, say(bottom, top)),
    mark(ends.top, say(top, bottom)),
    label(blade, { x: 0, y: -14 }, small),
  );
}

function legend(
  vessel: Vessel,
  listing: Listing,
  words: Words,
  range: { readonly from: number; readonly to: number },
): Legend {
  const { units } = vessel.spec;
  const { notes, table } = words.gauges.listing;
  const { meanStave } = vessel;
  const text = (mm: number): string => withUnit(mm, units, words);
  const needed = listing.widestWidth + 2 * leftForSecondCut;
  return {
    notes: [
      notes.tilt(angleText(meanStave.sawTilt(0))),
      notes.first(text(needed)),
      notes.second,
      notes.taper(angleText(Math.abs(listing.taper)), per100Text(Math.abs(listing.taper))),
      notes.width(text(meanStave.width)),
      words.caution.machines,
    ],
    tables: [
      {
        title: table.title,
        headings: table.headings(words.unitNames[units]),
        rows: widthSteps(range, units).map((width) => row(vessel, width)),
      },
    ],
  };
}

/** The settings for another width, on a carriage of the same length. */
function row(vessel: Vessel, width: number): string[] {
  const { units } = vessel.spec;
  const stave = vessel.staveOfWidth(width);
  const { taper, firstFence, secondFence, reach } = listingOf(vessel, stave)!;
  const text = (mm: number): string => shortLengthText(mm, units);
  return [
    lengthText(width, units),
    angleText(Math.abs(taper)),
    angleText(stave.sawTilt(0)),
    text(firstFence(-reach)),
    text(firstFence(reach)),
    text(secondFence(-reach)),
    text(secondFence(reach)),
  ];
}

/**
 * The bed of a saw carriage for the tapered edges of a tub's staves, full size: `x` along the blade, 0 at the stave's
 * mid-height; the lower edge is the blade's line on the bed. Two lines say where the fence stands for the two cuts.
 */
import type { Point } from '../geometry/curve.js';
import { line, polygon } from '../geometry/curve.js';
import { drawingOf, label, leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, lengthText, per100Text, shortLengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';
import { leftForSecondCut, listingOf, type Listing } from '../vessel/listing.js';
import type { Vessel } from '../vessel/vessel.js';
import { spread } from './spread.js';
import { ordinaryRange, widthSteps } from './stave-widths.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** Bed behind the fence, and distance between lines of words beside it. */
const behindFence = 40;
const pitch = 6;
const small = { height: heights.small, align: 'centre' as const };

/** One drawing for a tub; none for a cask, whose staves have curved edges that no straight fence can guide. */
export function listingJig(vessel: Vessel, words: Words, range = ordinaryRange(vessel)): Drawing[] {
  const listing = listingOf(vessel, vessel.meanStave);
  if (!listing) return [];
  const { title } = words.gauges.listing;
  const { units } = vessel.spec;
  const part = merge(
    bed(listing),
    fences(listing, words),
    distances(listing, -1, units, words),
    distances(listing, 1, units, words),
    endMarks(listing, words),
  );
  return [drawingOf('listing-jig', title, part, legend(vessel, listing, words, range))];
}

function bed(listing: Listing): Part {
  const { reach } = listing;
  const top = bedTop(listing);
  const corner = (x: number, y: number): Point => ({ x, y });
  return strokes(
    'outline',
    polygon([corner(-reach, 0), corner(reach, 0), corner(reach, top), corner(-reach, top)]),
  );
}

function bedTop({ reach, firstFence, secondFence }: Listing): number {
  return Math.max(...[-reach, reach].flatMap((x) => [firstFence(x), secondFence(x)])) + behindFence;
}

/** Both fences from end to end of the bed, each with its words above the bed. */
function fences(listing: Listing, words: Words): Part {
  const { first, second } = words.gauges.listing;
  const { reach, firstFence, secondFence } = listing;
  const above = bedTop(listing) + 5;
  const fence = (distance: (along: number) => number, x: number, name: string): Part =>
    merge(
      strokes(
        'station',
        line({ x: -reach, y: distance(-reach) }, { x: reach, y: distance(reach) }),
      ),
      leaderLabel(name, { x, y: above }, { x, y: distance(x) }, small),
    );
  return merge(fence(firstFence, -reach / 2, first), fence(secondFence, reach / 2, second));
}

/** Beside one end of the bed: how far each fence stands from the blade there. */
function distances(listing: Listing, side: 1 | -1, units: Units, words: Words): Part {
  const { firstAway, secondAway } = words.gauges.listing;
  const x = side * listing.reach;
  const text = (mm: number): string => shortLengthText(mm, units);
  const [first, second] = [listing.firstFence(x), listing.secondFence(x)];
  const ordered = [
    { y: first, words: firstAway(text(first)) },
    { y: second, words: secondAway(text(second)) },
  ].sort((p, q) => p.y - q.y);
  const ys = spread(
    ordered.map(({ y }) => y),
    pitch,
  );
  const align = side > 0 ? 'left' : 'right';
  return merge(
    ...ordered.map((each, i) =>
      label(each.words, { x: x + side * 4, y: ys[i]! - heights.small / 2 }, { ...small, align }),
    ),
  );
}

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

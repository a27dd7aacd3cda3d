/**
 * Hoops cut from sheet: each a ring sector with lap and rivet holes, its long edge up; the origin is the middle of the
 * short edge. On paper its two ends only, each turned upright.
 */
import type { Curve, Point } from '../geometry/curve.js';
import { arc, circle, line } from '../geometry/curve.js';
import { closedFrom, joinCurves } from '../geometry/join.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, shortLengthText } from '../drawing/length-text.js';
import { ascenderPart, textWidth } from '../drawing/lettering.js';
import { sheetHoopOf, type SheetHoop } from '../vessel/hoop-sheet.js';
import { rivetsOf } from '../vessel/rivets.js';
import { strapsOf, type Strap } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** Of each end on paper: how far it runs past the lap, and the gap between the two. */
const pastLap = 15;
const endGap = 8;
const upright = Math.PI / 2;

interface View {
  readonly vessel: Vessel;
  readonly strap: Strap;
  readonly sheet: SheetHoop;
  readonly words: Words;
}

/** One drawing for each hoop with a slope: `hoop-sheet-1` ...; a plain strip needs none. */
export function hoopSheets(vessel: Vessel, words: Words): Drawing[] {
  return strapsOf(vessel.hoops).flatMap((strap) => {
    const sheet = sheetHoopOf(strap.hoop);
    return sheet ? [sheetDrawing({ vessel, strap, sheet, words })] : [];
  });
}

function sheetDrawing(view: View): Drawing {
  const { strap, words } = view;
  const title = words.hoops.sheet.title(strap.number, words.hoopName(strap.spec.name));
  const legend = legendOf(view);
  const drawing = drawingOf(`hoop-sheet-${strap.number}`, title, wholePart(view), legend);
  const ends = endsPart(view);
  if (!ends) return drawing;
  const notes = [words.hoops.sheet.notes.broken, ...legend.notes];
  return { ...drawing, forPaper: { ...ends, legend: { ...legend, notes } } };
}

function wholePart(view: View): Part {
  const { sheet } = view;
  const centre = { x: 0, y: -sheet.shortRadius };
  const [from, to] = [upright + sheet.sweep / 2, upright - sheet.sweep / 2];
  return merge(
    strokes('outline', sector(sheet, centre, from, to)),
    endMarks(view, centre, from, -1),
    endMarks(view, centre, to, 1),
    wordsBelow(view),
  );
}

/** Both ends side by side, broken off past their laps; null where the whole is as short. */
function endsPart(view: View): Part | null {
  const { sheet } = view;
  const shown = overlapOf(view) + pastLap / sheet.shortRadius;
  const width = sheet.longRadius * shown;
  if (2 * width + endGap > sheet.shortRadius * sheet.sweep) return null;
  const centres = [0, 2 * width + endGap].map((x) => ({ x, y: -sheet.shortRadius }));
  const ends = centres.map((centre, i) => {
    const side = i === 0 ? -1 : 1;
    const broken = upright + side * shown;
    return merge(
      strokes('outline', openSector(sheet, centre, broken, upright)),
      strokes('dimension', radial(sheet, centre, broken)),
      endMarks(view, centre, upright, side),
    );
  });
  const drop = sheet.shortRadius * (1 - Math.cos(shown));
  const words = sheetWords(view).map((text, i) => label(text, { x: 0, y: -drop - 12 - 7 * i }));
  return merge(...ends, ...words);
}

const polar = (centre: Point, radius: number, angle: number): Point => ({
  x: centre.x + radius * Math.cos(angle),
  y: centre.y + radius * Math.sin(angle),
});

function radial({ shortRadius, longRadius }: SheetHoop, centre: Point, angle: number): Curve {
  return line(polar(centre, shortRadius, angle), polar(centre, longRadius, angle));
}

function sector(sheet: SheetHoop, centre: Point, from: number, to: number): Curve {
  return closedFrom([
    arc(centre, sheet.shortRadius, from, to).vertices,
    arc(centre, sheet.longRadius, to, from).vertices,
  ]);
}

/** The same without the end at `broken`. */
function openSector(sheet: SheetHoop, centre: Point, broken: number, end: number): Curve {
  return joinCurves([
    arc(centre, sheet.shortRadius, broken, end).vertices,
    arc(centre, sheet.longRadius, end, broken).vertices,
  ]);
}

const overlapOf = ({ sheet }: Pick<View, 'sheet'>): number =>
  sheet.sweep - sheet.roundSweep + sheet.drivingSweep;

/** Where the other end comes to lie, and the rivet holes; `side` 1 when the piece lies on the side of greater angles. */
function endMarks(view: View, centre: Point, end: number, side: 1 | -1): Part {
  const { sheet, strap, vessel } = view;
  const { places, holeDiameter } = rivetsOf(strap.spec, vessel.spec.units);
  const overlap = overlapOf(view);
  const meanRadius = (sheet.shortRadius + sheet.longRadius) / 2;
  const at = (share: number): number => end + side * share * overlap;
  const bores = places.map((_, i) => {
    const angle = at((i + 0.5) / places.length);
    return circle(polar(centre, meanRadius, angle), holeDiameter / 2);
  });
  const lap = overlap > 0 ? [radial(sheet, centre, at(1))] : [];
  return merge(strokes('station', ...lap), strokes('bore', ...bores));
}

function sheetWords({ sheet, strap, vessel, words }: View): string[] {
  const text = (mm: number): string => shortLengthText(mm, vessel.spec.units);
  const { short, long, sweep, title } = words.hoops.sheet;
  return [
    title(strap.number, words.hoopName(strap.spec.name)),
    `${short(text(sheet.shortRadius))} · ${long(text(sheet.longRadius))} · ${sweep(angleText(sheet.sweep))}`,
  ];
}

/** In the hollow below the short edge, as far down as its ends need. */
function wordsBelow(view: View): Part {
  const texts = sheetWords(view);
  const halfWidth = Math.max(...texts.map((text) => textWidth(text, heights.normal))) / 2 + 2;
  const radius = view.sheet.shortRadius;
  const drop = radius - Math.sqrt(Math.max(0, radius ** 2 - Math.min(halfWidth, radius) ** 2));
  const top = -drop - 3 - ascenderPart * heights.normal;
  return merge(
    ...texts.map((text, i) => label(text, { x: 0, y: top - 7 * i }, { align: 'centre' })),
  );
}

function legendOf(view: View): Legend {
  const { vessel, strap, sheet, words } = view;
  const { notes } = words.hoops.sheet;
  const text = (mm: number): string => withUnit(mm, vessel.spec.units, words);
  const { shortRadius, longRadius, sweep } = sheet;
  const overlap = overlapOf(view) * ((shortRadius + longRadius) / 2);
  return {
    notes: [
      notes.use(strap.hoops.length),
      notes.strike(text(shortRadius), text(longRadius)),
      notes.mark(
        text(2 * shortRadius * Math.sin(sweep / 2)),
        text(shortRadius * (1 - Math.cos(sweep / 2))),
      ),
      notes.overlap(text(overlap)),
      notes.edges,
    ],
    tables: [],
  };
}

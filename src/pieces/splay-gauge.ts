/**
 * One plate for each hoop with a slope. Its round edge fits the short edge of the splayed strap lying flat; its sloping
 * end fits the outside of the riveted hoop standing on its long edge.
 */
import type { Point } from '../geometry/curve.js';
import { arc } from '../geometry/curve.js';
import { closedFrom } from '../geometry/join.js';
import { drawingOf, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing, Table } from '../drawing/drawing.js';
import { angleText, per100Text, shortLengthText } from '../drawing/length-text.js';
import { splayPer100 } from '../vessel/hoop.js';
import { sheetHoopOf } from '../vessel/hoop-sheet.js';
import { strapsOf, type Strap } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { plateWords } from './plate-words.js';
import type { Words } from './words/index.js';

/** Length of the round edge, at most, and as a share of its radius; least height of the sloping end. */
const longest = 230;
const perRadius = 0.8;
const height = 50;
const gap = 14;

interface Plate {
  readonly strap: Strap;
  /** of the strap's short edge when it lies flat */
  readonly radius: number;
  readonly slope: number;
  readonly chord: number;
  readonly rise: number;
}

/** One drawing with all plates, or none where no hoop slopes. */
export function splayGauge(vessel: Vessel, words: Words): Drawing[] {
  const plates = strapsOf(vessel.hoops).flatMap(plateOf);
  if (plates.length === 0) return [];
  let top = 0;
  const parts = plates.map((plate) => {
    const part = plateAt({ x: 0, y: top - plate.rise - height }, plate, words);
    top -= plate.rise + height + gap;
    return part;
  });
  const { title, notes } = words.hoops.splay;
  const legend = {
    notes: [notes.curve, notes.standing, notes.rise],
    tables: [table(plates, vessel, words)],
  };
  return [drawingOf('splay-gauge', title, merge(...parts), legend)];
}

function plateOf(strap: Strap): Plate[] {
  const sheet = sheetHoopOf(strap.hoop);
  if (!sheet) return [];
  const radius = sheet.shortRadius;
  const chord = Math.min(longest, perRadius * radius);
  const rise = radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2);
  return [{ strap, radius, slope: Math.abs(strap.hoop.slope), chord, rise }];
}

/** The bench edge runs from `at` to the right; the left end leans outwards, over the hoop that it stands beside. */
function plateAt(at: Point, { strap, radius, slope, chord, rise }: Plate, words: Words): Part {
  const overhang = height * Math.tan(slope);
  const corner = (x: number, y: number): Point => ({ x: at.x + x, y: at.y + y });
  const vertex = (x: number, y: number) => ({ ...corner(x, y), bulge: 0 });
  const right = chord - overhang;
  const half = Math.asin(chord / 2 / radius);
  const centre = corner(chord / 2 - overhang, height + rise - radius);
  const round = arc(centre, radius, Math.PI / 2 - half, Math.PI / 2 + half);
  const outline = closedFrom([[vertex(0, 0), vertex(right, 0)], round.vertices]);
  const { name, short, bench, slope: slopeText } = words.hoops.splay;
  return merge(
    strokes('outline', outline),
    plateWords(
      name(strap.number, strap.spec.name),
      [short, slopeText(angleText(slope), per100Text(slope)), bench],
      {
        left: at.x + 6,
        right: at.x + right - 5,
        top: at.y + height - 6,
        beside: at.x + right + 5,
      },
    ),
  );
}

function table(plates: readonly Plate[], { spec }: Vessel, words: Words): Table {
  const { title, headings } = words.hoops.splay.table;
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const rows = plates.map(({ strap, radius, slope, chord, rise }) => [
    String(strap.number),
    words.hoopName(strap.spec.name),
    angleText(slope),
    per100Text(slope),
    splayPer100(strap.hoop).toFixed(2),
    text(radius),
    text(chord),
    text(rise),
  ]);
  return { title, headings: headings(words.unitNames[spec.units]), rows };
}

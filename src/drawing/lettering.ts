/** How wide a line of lettering is, the box it fills and the outlines it is drawn with: one layout for all three. */
import type { Curve, Point } from '../geometry/curve.js';
import { polygon } from '../geometry/curve.js';
import type { Lettering } from './drawing.js';
import type { Glyph, GlyphContour, GlyphSegment, Reach } from './glyphs.js';
import { keptByText } from './kept.js';
import { ascent, capHeight, contoursOf, descent, glyphAt, furthest, reachOf } from './glyphs.js';

export type { GlyphContour } from './glyphs.js';

/** How far below its baseline, and above its capitals, lettering may reach, in parts of its height. */
export const descenderPart = descent / capHeight;
export const ascenderPart = ascent / capHeight;

/** Outlines as `Curve`s keep within this of the letters' true curves, mm. */
const flatness = 0.02;

/** Nearly all text: nothing in it to compose, drop or replace. */
const plain =
  /^[ -~\u00a0-\u00ac\u00ae-\u02ff\u2010-\u2027\u2030-\u205e\u2190-\u21ff\u2200-\u22ff]*$/;

/**
 * The text as it is drawn and written to files: composed characters (NFC), no control or formatting characters, no
 * line or paragraph separators, and U+FFFD for what is no character at all (half a surrogate pair, U+FFFE, U+FFFF).
 */
export function printable(text: string): string {
  if (plain.test(text)) return text;
  return text
    .normalize('NFC')
    .replaceAll(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '')
    .replaceAll(/[\p{Cs}\uFFFE\uFFFF]/gu, '\uFFFD');
}

/** Width in mm of a line of text whose capitals are `height` mm high, kerning included. */
export function textWidth(text: string, height: number): number {
  return inMillimetres(layOut(text).width, height);
}

/** Font units as mm, in lettering whose capitals are `height` mm high. */
export function inMillimetres(units: number, height: number): number {
  return (units * height) / capHeight;
}

/** How wide a part of a `printable` text is in font units; what is measured is not kept, as it is by `textWidth`. */
export function unitsBetween(text: string, from: number, to: number): number {
  let width = 0;
  let previous: Glyph | null = null;
  for (let i = from; i < to;) {
    const glyph = glyphAt(text, i);
    const { character } = glyph;
    if (previous?.kerns) width += previous.kerning.get(character) ?? 0;
    width += glyph.advance;
    i += character.length;
    previous = glyph;
  }
  return width;
}

/**
 * The box round a lettering, counter-clockwise from the start of its lower edge: as wide as its text, with room above
 * for accented capitals and below for descenders whether or not the text has any, so that another font fits too.
 */
export function letteringBox(lettering: Lettering): [Point, Point, Point, Point] {
  const layout = layOut(lettering.text);
  const { left, right } = (layout.ink ??= inkAlong(layout));
  const { height, angle, at } = lettering;
  const scale = height / capHeight;
  const shift = shiftOf(lettering, layout.width);
  // `placer` for four points at once
  const cos = Math.cos(angle) * scale;
  const sin = Math.sin(angle) * scale;
  const leftX = at.x + (left - shift) * cos;
  const leftY = at.y + (left - shift) * sin;
  const rightX = at.x + (right - shift) * cos;
  const rightY = at.y + (right - shift) * sin;
  return [
    { x: leftX + descent * sin, y: leftY - descent * cos },
    { x: rightX + descent * sin, y: rightY - descent * cos },
    { x: rightX - ascent * sin, y: rightY + ascent * cos },
    { x: leftX - ascent * sin, y: leftY + ascent * cos },
  ];
}

/** How far the letters reach along the baseline: some of the first and last reach beyond the width of the text. */
function inkAlong({ letters, places, width }: Layout): Reach {
  let [left, right] = [0, width];
  for (let i = 0; i < letters.length; i++) {
    const x = places[i]!;
    // most letters stand too far from both ends to matter, however far they reach
    if (x + furthest.left >= left && x + furthest.right <= right) continue;
    const reach = reachOf(letters[i]!.character);
    left = Math.min(left, x + reach.left);
    right = Math.max(right, x + reach.right);
  }
  return { left, right };
}

/** The outlines of a lettering in the drawing's own coordinates, to be filled by the non-zero winding rule. */
export function letteringOutlines(lettering: Lettering): GlyphContour[] {
  const { letters, places, width } = layOut(lettering.text);
  const place = placer(lettering, width);
  return letters.flatMap(({ character }, i) => {
    const shift = (point: Point) => place({ x: point.x + places[i]!, y: point.y });
    return contoursOf(character).map((contour) => ({
      start: shift(contour.start),
      segments: contour.segments.map(({ control, to }) =>
        control ? { control: shift(control), to: shift(to) } : { to: shift(to) },
      ),
    }));
  });
}

/** A lettering in font units, and how it is set down: scaled, turned, then moved to `origin`. */
export interface SetText {
  /** path commands as in SVG, but y up; M starts each letter, the rest are relative */
  readonly path: string;
  readonly scale: number;
  readonly angle: number;
  readonly origin: Point;
}

/** The outlines once more, for formats that can scale a path themselves: whole numbers, and nothing to work out. */
export function letteringPath(lettering: Lettering): SetText {
  const layout = layOut(lettering.text);
  layout.path ??= pathOf(layout);
  const { height, angle, at } = lettering;
  const scale = height / capHeight;
  const shift = shiftOf(lettering, layout.width) * scale;
  const origin = { x: at.x - shift * Math.cos(angle), y: at.y - shift * Math.sin(angle) };
  return { path: layout.path, scale, angle, origin };
}

function pathOf({ letters, places }: Layout): string {
  const parts: string[] = [];
  for (let i = 0; i < letters.length; i++) {
    const { outline } = letters[i]!;
    if (outline !== '') parts.push(`M${places[i]!} 0`, outline);
  }
  // joined, not added up: it is copied into every drawing that has the text
  return parts.join('');
}

/** The same outlines as closed curves of straight segments within 0.02 mm, for formats without Bézier curves. */
export function letteringCurves(lettering: Lettering): Curve[] {
  return letteringOutlines(lettering).map(flatten);
}

interface Layout {
  readonly letters: readonly Glyph[];
  /** where the origin of each stands on the baseline, in font units */
  readonly places: readonly number[];
  readonly width: number;
  /** what `letteringPath` answers, once it has been asked for */
  path: string | null;
  /** likewise, for `letteringBox` */
  ink: Reach | null;
}

/** Far more than the texts of one vessel's drawings. */
const mostLayouts = 4000;

/** A text's letters along the baseline. The same texts are measured, set and drawn again. */
const layOut = keptByText(mostLayouts, (text): Layout => layOutAnew(printable(text)));

function layOutAnew(text: string): Layout {
  const letters: Glyph[] = [];
  const places: number[] = [];
  let x = 0;
  let previous: Glyph | null = null;
  for (let i = 0; i < text.length;) {
    const glyph = glyphAt(text, i);
    const { character } = glyph;
    if (previous?.kerns) x += previous.kerning.get(character) ?? 0;
    letters.push(glyph);
    places.push(x);
    x += glyph.advance;
    i += character.length;
    previous = glyph;
  }
  return { letters, places, width: x, path: null, ink: null };
}

/** Takes a point of the laid out text, in font units, to its place in the drawing. */
function placer(lettering: Lettering, width: number): (point: Point) => Point {
  const scale = lettering.height / capHeight;
  const shift = shiftOf(lettering, width);
  const cos = Math.cos(lettering.angle) * scale;
  const sin = Math.sin(lettering.angle) * scale;
  return ({ x, y }) => ({
    x: lettering.at.x + (x - shift) * cos - y * sin,
    y: lettering.at.y + (x - shift) * sin + y * cos,
  });
}

/** How far along the text its anchor stands, in font units. */
function shiftOf({ align }: Lettering, width: number): number {
  if (align === 'left') return 0;
  return align === 'centre' ? width / 2 : width;
}

function flatten(contour: GlyphContour): Curve {
  const points: Point[] = [];
  let from = contour.start;
  for (const segment of contour.segments) {
    points.push(...pointsTo(from, segment));
    from = segment.to;
  }
  const start = contour.start;
  const last = points.at(-1);
  if (!last || last.x !== start.x || last.y !== start.y) points.unshift(start);
  return polygon(points);
}

/**
 * Points on a segment after its start. A chord over a part h of a quadratic B strays by |B''| h^2 / 8, and
 * B'' = 2 (P0 - 2 P1 + P2): so n equal parts stray by |P0 - 2 P1 + P2| / (4 n^2).
 */
function pointsTo(from: Point, { control, to }: GlyphSegment): Point[] {
  if (!control) return [to];
  const turn = Math.hypot(from.x - 2 * control.x + to.x, from.y - 2 * control.y + to.y);
  const parts = Math.max(1, Math.ceil(Math.sqrt(turn / (4 * flatness))));
  const between = Array.from({ length: parts - 1 }, (_, i) => (i + 1) / parts);
  const mix = (t: number, a: number, b: number, c: number) =>
    (1 - t) ** 2 * a + 2 * t * (1 - t) * b + t ** 2 * c;
  return [
    ...between.map((t) => ({
      x: mix(t, from.x, control.x, to.x),
      y: mix(t, from.y, control.y, to.y),
    })),
    to,
  ];
}

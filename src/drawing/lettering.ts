/** How wide a line of lettering is, the box it fills and the outlines it is drawn with: one layout for all three. */
import type { Curve, Point } from '../geometry/curve.js';
import { polygon } from '../geometry/curve.js';
import type { Lettering } from './drawing.js';
import type { Glyph, GlyphContour, GlyphSegment } from './glyphs.js';
import { ascent, capHeight, contoursOf, descent, glyphOf } from './glyphs.js';

export type { GlyphContour } from './glyphs.js';

/** How far below its baseline, and above its capitals, lettering may reach, in parts of its height. */
export const descenderPart = descent / capHeight;
export const ascenderPart = ascent / capHeight;

/** Outlines as `Curve`s keep within this of the letters' true curves, mm. */
const flatness = 0.02;

/** Most text: nothing in it to compose, drop or replace. */
const plain = /^[ -~]*$/;

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
  return (layOut(text).width * height) / capHeight;
}

/**
 * The box round a lettering, counter-clockwise from the start of its lower edge: as wide as its text, with room above
 * for accented capitals and below for descenders whether or not the text has any, so that another font fits too.
 */
export function letteringBox(lettering: Lettering): [Point, Point, Point, Point] {
  const layout = layOut(lettering.text);
  const { width } = layout;
  const { left, right } = (layout.ink ??= inkAlong(layout));
  const place = placer(lettering, width);
  return [
    place({ x: left, y: -descent }),
    place({ x: right, y: -descent }),
    place({ x: right, y: ascent }),
    place({ x: left, y: ascent }),
  ];
}

/** How far the letters reach along the baseline: some reach beyond their own width. */
function inkAlong({ letters, width }: Layout): Reach {
  const reach = { left: 0, right: width };
  for (const { character, x } of letters) {
    const ink = inkOf(character);
    reach.left = Math.min(reach.left, x + ink.left);
    reach.right = Math.max(reach.right, x + ink.right);
  }
  return reach;
}

/** The outlines of a lettering in the drawing's own coordinates, to be filled by the non-zero winding rule. */
export function letteringOutlines(lettering: Lettering): GlyphContour[] {
  const { letters, width } = layOut(lettering.text);
  const place = placer(lettering, width);
  return letters.flatMap(({ character, x }) => {
    const shift = (point: Point) => place({ x: point.x + x, y: point.y });
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
  const { path, width } = layout;
  return {
    path,
    scale: lettering.height / capHeight,
    angle: lettering.angle,
    origin: placer(lettering, width)({ x: 0, y: 0 }),
  };
}

function pathOf({ letters }: Layout): string {
  const parts: string[] = [];
  for (const { character, x } of letters) {
    const { outline } = glyphOf(character);
    if (outline !== '') parts.push('M', String(x), ' 0', outline);
  }
  // joined, not added up: it is copied into every drawing that has the text
  return parts.join('');
}

/** The same outlines as closed curves of straight segments within 0.02 mm, for formats without Bézier curves. */
export function letteringCurves(lettering: Lettering): Curve[] {
  return letteringOutlines(lettering).map(flatten);
}

interface Layout {
  readonly letters: readonly { readonly character: string; readonly x: number }[];
  readonly width: number;
  /** what `letteringPath` answers, once it has been asked for */
  path?: string;
  /** likewise, for `letteringBox` */
  ink?: Reach;
}

interface Reach {
  readonly left: number;
  readonly right: number;
}

const layouts = new Map<string, Layout>();
/** Far more than the texts of one vessel's drawings; past it the store starts anew. */
const mostLayouts = 4000;

/** Where each letter's origin stands on the baseline, in font units. The same texts are measured, set and drawn again. */
function layOut(text: string): Layout {
  const known = layouts.get(text);
  if (known) return known;
  if (layouts.size >= mostLayouts) layouts.clear();
  const layout = layOutAnew(text);
  layouts.set(text, layout);
  return layout;
}

function layOutAnew(text: string): Layout {
  const letters: { character: string; x: number }[] = [];
  let x = 0;
  let previous: Glyph | undefined;
  for (const character of printable(text)) {
    const glyph = glyphOf(character);
    x += previous?.kerning.get(character) ?? 0;
    letters.push({ character, x });
    x += glyph.advance;
    previous = glyph;
  }
  return { letters, width: x };
}

/** Takes a point of the laid out text, in font units, to its place in the drawing. */
function placer(lettering: Lettering, width: number): (point: Point) => Point {
  const scale = lettering.height / capHeight;
  const shift = { left: 0, centre: width / 2, right: width }[lettering.align];
  const cos = Math.cos(lettering.angle) * scale;
  const sin = Math.sin(lettering.angle) * scale;
  return ({ x, y }) => ({
    x: lettering.at.x + (x - shift) * cos - y * sin,
    y: lettering.at.y + (x - shift) * sin + y * cos,
  });
}

const inks = new Map<string, { left: number; right: number }>();

/** How far a letter's outline reaches to either side of its origin; some reach beyond their own advance width. */
function inkOf(character: string): { left: number; right: number } {
  const known = inks.get(character);
  if (known) return known;
  const xs = contoursOf(character).flatMap(({ start, segments }) => [
    start.x,
    ...segments.flatMap(({ control, to }) => (control ? [control.x, to.x] : [to.x])),
  ]);
  const ink = { left: Math.min(0, ...xs), right: Math.max(0, ...xs) };
  inks.set(character, ink);
  return ink;
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

/** The letters that drawings can show: widths, kerning and outlines in font units, each read when it is first asked for. */
import type { Point } from '../geometry/curve.js';
import { glyphData } from './glyphs.generated.js';

/** A straight line to `to`, or a quadratic Bézier curve when it has a `control` point. */
export interface GlyphSegment {
  readonly control?: Point;
  readonly to: Point;
}

/** A closed path that ends on its `start`; a letter is filled by the non-zero winding rule. */
export interface GlyphContour {
  readonly start: Point;
  readonly segments: readonly GlyphSegment[];
}

/** A letter in font units, y up, its origin at the left end of its baseline. */
export interface Glyph {
  readonly character: string;
  readonly advance: number;
  /** by how much a following character is moved */
  readonly kerning: ReadonlyMap<string, number>;
  /** whether there is any */
  readonly kerns: boolean;
  /** relative path commands as in SVG, but y up */
  readonly outline: string;
}

/** How far a letter reaches to either side of its origin, in font units. */
export interface Reach {
  readonly left: number;
  readonly right: number;
}

/** Height of the capitals (H and E) in font units. */
export const capHeight = 1493;
/** The highest and lowest point of any letter in the table, in font units: accented capitals, and g with a cedilla. */
export const ascent = 2002;
export const descent = 511;
/** The furthest that any letter reaches to either side of its origin. */
export const furthest: Reach = { left: -375, right: 2636 };

const missing = '';
const lines = new Map<string, string>();
const glyphs = new Map<string, Glyph>();
const contours = new Map<string, GlyphContour[]>();
const reaches = new Map<string, Reach>();

/** The letter for one character; a box for a character that the table lacks. */
export function glyphOf(character: string): Glyph {
  return glyphs.get(character) ?? remember(glyphs, character, parse(character));
}

/** The letters of Latin-1 by their code points: most text is made of them, and a number is found sooner than a text. */
const latin: (Glyph | undefined)[] = Array.from({ length: 256 }, () => undefined);

/** The letter that starts at a place of a text; beyond the first 65,536 characters it takes two places. */
export function glyphAt(text: string, place: number): Glyph {
  const unit = text.charCodeAt(place);
  if (unit < 256) return (latin[unit] ??= glyphOf(text.charAt(place)));
  const pair = unit >= 0xd800 && unit <= 0xdbff;
  return glyphOf(pair ? text.slice(place, place + 2) : text.charAt(place));
}

/** Its outline, taken apart. */
export function contoursOf(character: string): readonly GlyphContour[] {
  const known = contours.get(character);
  return known ?? remember(contours, character, parseOutline(glyphOf(character).outline));
}

/** How far its outline reaches; some reach beyond their own advance width. */
export function reachOf(character: string): Reach {
  return reaches.get(character) ?? remember(reaches, character, measure(contoursOf(character)));
}

function measure(all: readonly GlyphContour[]): Reach {
  let [left, right] = [0, 0];
  const takeIn = ({ x }: Point): void => {
    if (x < left) left = x;
    if (x > right) right = x;
  };
  for (const { start, segments } of all) {
    takeIn(start);
    for (const { control, to } of segments) {
      if (control) takeIn(control);
      takeIn(to);
    }
  }
  return { left, right };
}

function remember<T>(known: Map<string, T>, key: string, value: T): T {
  known.set(key, value);
  return value;
}

/** The characters that are drawn as themselves, in order of their code points. */
export function drawable(): string[] {
  indexLines();
  return [...lines.keys()].filter((character) => character !== missing);
}

function lineOf(character: string): string {
  indexLines();
  return lines.get(character) ?? lines.get(missing)!;
}

function indexLines(): void {
  if (lines.size > 0) return;
  for (const line of glyphData.slice(1, -1).split('\n')) {
    const code = line.slice(0, line.indexOf('\t'));
    lines.set(code === '' ? missing : String.fromCodePoint(parseInt(code, 16)), line);
  }
}

function parse(character: string): Glyph {
  const [, advance = '', kerning = '', outline = ''] = lineOf(character).split('\t');
  return {
    character,
    advance: Number(advance),
    kerning: parseKerning(kerning),
    kerns: kerning !== '',
    outline,
  };
}

function parseKerning(text: string): Map<string, number> {
  const kerning = new Map<string, number>();
  for (const group of text === '' ? [] : text.split(' ')) {
    const colon = group.indexOf(':');
    const value = Number(group.slice(0, colon));
    for (const code of group.slice(colon + 1).split(',')) {
      kerning.set(String.fromCodePoint(parseInt(code, 16)), value);
    }
  }
  return kerning;
}

function parseOutline(text: string): GlyphContour[] {
  const all: { start: Point; segments: GlyphSegment[] }[] = [];
  let at: Point = { x: 0, y: 0 };
  const step = (dx = 0, dy = 0): Point => ({ x: at.x + dx, y: at.y + dy });
  for (const [, command, values = ''] of text.matchAll(/([a-z])([^a-z]*)/g)) {
    const [a, b, c, d] = (values.match(/-?[\d.]+/g) ?? []).map(Number);
    if (command === 'm') {
      at = step(a, b);
      all.push({ start: at, segments: [] });
      continue;
    }
    const { start, segments } = all.at(-1)!;
    if (command === 'z') {
      at = start;
      continue;
    }
    const to = command === 'q' ? step(c, d) : command === 'v' ? step(0, a) : step(a, b);
    segments.push(command === 'q' ? { control: step(a, b), to } : { to });
    at = to;
  }
  return all;
}

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
interface Glyph {
  readonly advance: number;
  /** by how much a following character is moved */
  readonly kerning: ReadonlyMap<string, number>;
  readonly contours: readonly GlyphContour[];
}

/** Height of the capitals (H and E) in font units. */
export const capHeight = 1493;
/** The highest and lowest point of any letter in the table, in font units: accented capitals, and g with a cedilla. */
export const ascent = 2002;
export const descent = 511;

const missing = '';
const lines = new Map<string, string>();
const read = new Map<string, Glyph>();

/** The letter for one character; a box for a character that the table lacks. */
export function glyphOf(character: string): Glyph {
  const known = read.get(character);
  if (known) return known;
  const glyph = parse(lineOf(character));
  read.set(character, glyph);
  return glyph;
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

function parse(line: string): Glyph {
  const [, advance = '', kerning = '', outline = ''] = line.split('\t');
  return {
    advance: Number(advance),
    kerning: parseKerning(kerning),
    contours: parseOutline(outline),
  };
}

function parseKerning(text: string): Map<string, number> {
  const kerning = new Map<string, number>();
  for (const group of text === '' ? [] : text.split(' ')) {
    const colon = group.indexOf(':');
    const value = Number(group.slice(0, colon));
    for (const character of group.slice(colon + 1)) kerning.set(character, value);
  }
  return kerning;
}

function parseOutline(text: string): GlyphContour[] {
  const contours: { start: Point; segments: GlyphSegment[] }[] = [];
  let at: Point = { x: 0, y: 0 };
  const step = (dx = 0, dy = 0): Point => ({ x: at.x + dx, y: at.y + dy });
  for (const [, command, values = ''] of text.matchAll(/([a-z])([^a-z]*)/g)) {
    const [a, b, c, d] = (values.match(/-?[\d.]+/g) ?? []).map(Number);
    const to = command === 'q' ? step(c, d) : command === 'v' ? step(0, a) : step(a, b);
    if (command === 'm') contours.push({ start: to, segments: [] });
    else contours.at(-1)!.segments.push(command === 'q' ? { control: step(a, b), to } : { to });
    at = to;
  }
  return contours;
}

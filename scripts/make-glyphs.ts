/**
 * Writes src/drawing/glyphs.generated.ts: the letters that drawings can show, taken from the font DejaVu Sans.
 * Run `npx tsx scripts/make-glyphs.ts`; a test fails when the file is out of date.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import opentype from 'opentype.js';
import type { Font, Glyph, PathCommand } from 'opentype.js';

const target = fileURLToPath(new URL('../src/drawing/glyphs.generated.ts', import.meta.url));

/** First and last code point of each run of characters; the soft hyphen and unassigned places fall out below. */
const ranges: readonly (readonly [number, number])[] = [
  [0x0020, 0x007e], // Basic Latin
  [0x00a0, 0x00ff], // Latin-1
  [0x0100, 0x017f], // Latin Extended-A
  [0x0218, 0x021b], // Romanian comma-below letters
  [0x0384, 0x03ce], // Greek
  [0x0400, 0x045f], // Cyrillic
  [0x0490, 0x0491], // Ukrainian ghe
  [0x1e9e, 0x1e9e], // capital sharp s
  [0x2010, 0x2015], // dashes
  [0x2018, 0x201f], // quotation marks
  [0x2020, 0x2022], // dagger, double dagger, bullet
  [0x2026, 0x2026], // ellipsis
  [0x2030, 0x2030], // per mille
  [0x2032, 0x2033], // prime, double prime
  [0x2039, 0x203a], // single guillemets
  [0x2044, 0x2044], // fraction slash
  [0x20ac, 0x20ac], // euro
  [0x2190, 0x2193], // arrows
  [0x2153, 0x2154], // thirds
  [0x215b, 0x215e], // eighths
];
const singles = '⌀√Σ−≈≠≤≥∠⊥';

const invisible = /\p{Cc}|\p{Cf}|\p{Cn}/u;

export function drawableCharacters(font: Font): string[] {
  const all = ranges.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  );
  return [...all, ...singles]
    .filter((character) => !invisible.test(character) && font.charToGlyphIndex(character) > 0)
    .sort((a, b) => a.codePointAt(0)! - b.codePointAt(0)!)
    .filter((character, i, sorted) => character !== sorted[i - 1]);
}

export function readFont(): Font {
  const file = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
  const bytes = readFileSync(file);
  return opentype.parse(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  );
}

/** The text of the generated module. */
export function generate(font: Font): string {
  const characters = drawableCharacters(font);
  const glyphs = characters.map((character) => font.charToGlyph(character));
  const lines = glyphs.map((glyph, i) => {
    const code = characters[i]!.codePointAt(0)!.toString(16);
    return [
      code,
      glyph.advanceWidth,
      kerning(font, glyph, glyphs, characters),
      outline(glyph),
    ].join('\t');
  });
  const missing = font.glyphs.get(0);
  lines.unshift(['', missing.advanceWidth, '', outline(missing)].join('\t'));
  const escaped = lines.map((text) => text.replaceAll(/[\\`$]/g, (character) => `\\${character}`));
  return `${header}export const glyphData = \`\n${escaped.join('\n')}\n\`;\n`;
}

const header = `/**
 * Letters of DejaVu Sans 2.37, 2048 units to the em. Written by scripts/make-glyphs.ts: do not edit.
 * The font is (c) 2003 Bitstream, (c) 2006 Tavmjong Bah, DejaVu changes in the public domain; its licence is in
 * FONT-LICENSE.txt beside this file.
 *
 * A line is: code point (hexadecimal; none for the box that stands for every other character), advance width,
 * kerning (groups of a value and the code points that it applies to when they follow), outline (relative path
 * commands m, l, h, v, q and z as in SVG, but y up), parted by tabs.
 */
`;

/** `-100:41,61 -50:78`: the values by which the characters that follow this one are moved. */
function kerning(font: Font, left: Glyph, rights: Glyph[], characters: string[]): string {
  const groups = new Map<number, string[]>();
  rights.forEach((right, i) => {
    // The font's positioning table holds the same values; opentype.js 2.0.0 reads only this one right.
    const value = font.kerningPairs[`${left.index},${right.index}`] ?? 0;
    if (value === 0) return;
    const code = characters[i]!.codePointAt(0)!.toString(16);
    groups.set(value, [...(groups.get(value) ?? []), code]);
  });
  // as code points, so that all is plain ASCII: then so is every SVG, which takes half the memory
  return [...groups].map(([value, codes]) => `${value}:${codes.join(',')}`).join(' ');
}

/** The outline as relative path commands; `y` is turned up again, as opentype.js hands it out downwards. */
function outline(glyph: Glyph): string {
  let at = { x: 0, y: 0 };
  const step = (x: number, y: number) => `${x - at.x} ${y - at.y}`;
  const encode = (command: Command): string => {
    const to = { x: command.x, y: 0 - command.y };
    let text = straight(to.x - at.x, to.y - at.y);
    if (command.type === 'M') text = `m${step(to.x, to.y)}`;
    if (command.type === 'Q') text = `q${step(command.x1, 0 - command.y1)} ${step(to.x, to.y)}`;
    at = to;
    return text;
  };
  const encodeContour = (contour: Command[]): string => {
    const text = contour.map(encode).join('');
    at = { x: contour[0]!.x, y: 0 - contour[0]!.y };
    return `${text}z`;
  };
  return contours(glyph)
    .map(encodeContour)
    .join('')
    .replaceAll(' -', '-')
    .replaceAll(/(?<=[ a-z-])0\./g, '.');
}

type Command = Exclude<PathCommand, { type: 'C' } | { type: 'Z' }>;

/** The closed paths of a letter. The font has a few of a single point, marks for placing accents: they draw nothing. */
function contours(glyph: Glyph): Command[][] {
  const all: Command[][] = [];
  for (const command of glyph.getPath(0, 0, 2048).commands) {
    if (command.type === 'C' || command.type === 'Z') throw new Error(`unexpected ${command.type}`);
    if (command.type === 'M') all.push([]);
    all.at(-1)!.push(command);
  }
  return all.filter(
    (contour) => new Set(contour.map((command) => `${command.x} ${command.y}`)).size > 1,
  );
}

/** opentype.js closes a contour with a line even where it ends on its first point: that one is left out. */
function straight(dx: number, dy: number): string {
  if (dx === 0 && dy === 0) return '';
  if (dy === 0) return `h${dx}`;
  return dx === 0 ? `v${dy}` : `l${dx} ${dy}`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(target, generate(readFont()));
}

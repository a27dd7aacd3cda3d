/**
 * Reads a DXF as a router would: its unit, and every line of it as a curve on a layer. Any text gives a drawing or the
 * reason why it is none; nothing throws.
 */
import { arc, circle, line, type Curve, type Vertex } from '../geometry/curve.js';

export interface DxfEntity {
  readonly type: string;
  readonly layer: string;
  /** null for lettering, and for what has no curve that this reader knows */
  readonly curve: Curve | null;
  /** of lettering */
  readonly textHeight: number | null;
}

export interface DxfDrawing {
  /** `$INSUNITS`: 4 is the millimetre; null when the header does not say */
  readonly unit: number | null;
  readonly entities: readonly DxfEntity[];
}

export type DxfFault = 'empty' | 'binary' | 'not-dxf' | 'cut-short' | 'bad-number';

/** Group codes and their values, side by side, in the order of the file. */
interface Tags {
  readonly codes: readonly number[];
  readonly values: readonly string[];
}

/** A stretch of the tags, `to` left out. */
interface Stretch extends Tags {
  readonly from: number;
  readonly to: number;
}

class Unreadable extends Error {
  constructor(readonly fault: DxfFault) {
    super(fault);
  }
}

export function readDxf(text: string): DxfDrawing | DxfFault {
  try {
    return drawingOf(tagsOf(text));
  } catch (error) {
    if (error instanceof Unreadable) return error.fault;
    throw error;
  }
}

/** Pairs of a group code and a value, each on a line of its own, up to the end that the file must have. */
function tagsOf(text: string): Tags {
  if (text.trim() === '') throw new Unreadable('empty');
  if (text.includes('\0')) throw new Unreadable('binary');
  const lines = text.includes('\n') ? text : text.replaceAll('\r', '\n');
  const codes: number[] = [];
  const values: string[] = [];
  const endFrom = (at: number): number => {
    const end = lines.indexOf('\n', at);
    return end < 0 ? lines.length : end;
  };
  for (let at = 0; at < lines.length;) {
    const codeEnd = endFrom(at);
    const code = codeIn(lines, at, codeEnd);
    if (Number.isNaN(code)) throw new Unreadable(codes.length === 0 ? 'not-dxf' : 'cut-short');
    const valueEnd = endFrom(codeEnd + 1);
    const value = trimmed(lines, codeEnd + 1, valueEnd);
    if (code === 0 && value === 'EOF') return { codes, values };
    codes.push(code);
    values.push(value);
    const isSection = code === 2 && values.at(-2) === 'SECTION';
    at = (isSection && !sections.has(value) ? endOfSection(lines, valueEnd) : valueEnd) + 1;
  }
  throw new Unreadable(values.includes('SECTION') ? 'cut-short' : 'not-dxf');
}

/** The sections that are read. The others, such as tables of line types, are passed over. */
const sections: ReadonlySet<string> = new Set(['HEADER', 'ENTITIES']);

/** Where the line ends that closes the section. */
function endOfSection(text: string, start: number): number {
  const last = text.indexOf('ENDSEC', start);
  const end = last < 0 ? -1 : text.indexOf('\n', last);
  if (end < 0) throw new Unreadable('cut-short');
  return end;
}

const isSpace = (code: number): boolean => code <= 32;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const minus = 45;

/** One to four digits, perhaps below zero, between spaces; otherwise not a number. */
function codeIn(text: string, start: number, end: number): number {
  let [from, to] = [start, end];
  while (from < to && isSpace(text.charCodeAt(from))) from++;
  while (to > from && isSpace(text.charCodeAt(to - 1))) to--;
  const below = from < to && text.charCodeAt(from) === minus;
  if (below) from++;
  if (to - from < 1 || to - from > 4) return NaN;
  let code = 0;
  for (let i = from; i < to; i++) {
    const digit = text.charCodeAt(i);
    if (!isDigit(digit)) return NaN;
    code = 10 * code + digit - 48;
  }
  return below ? -code : code;
}

function trimmed(text: string, start: number, end: number): string {
  let [from, to] = [start, end];
  while (from < to && isSpace(text.charCodeAt(from))) from++;
  while (to > from && isSpace(text.charCodeAt(to - 1))) to--;
  return text.slice(from, to);
}

function drawingOf(tags: Tags): DxfDrawing {
  const header = sectionOf(tags, 'HEADER');
  const entities = sectionOf(tags, 'ENTITIES');
  if (!entities) throw new Unreadable('not-dxf');
  return { unit: header && unitOf(header), entities: grouped(entities).map(entityOf) };
}

function unitOf({ codes, values, from, to }: Stretch): number | null {
  for (let i = from; i + 1 < to; i++)
    if (codes[i] === 9 && values[i] === '$INSUNITS') return numberOf(values[i + 1]!);
  return null;
}

function sectionOf({ codes, values }: Tags, name: string): Stretch | null {
  const begins = (i: number): boolean =>
    codes[i] === 2 && values[i] === name && values[i - 1] === 'SECTION';
  let from = 0;
  while (from < codes.length && !begins(from)) from++;
  if (from === codes.length) return null;
  let to = ++from;
  while (to < codes.length && !(codes[to] === 0 && values[to] === 'ENDSEC')) to++;
  if (to === codes.length) throw new Unreadable('cut-short');
  return { codes, values, from, to };
}

/** Each entity begins with its type, under the code 0. */
function grouped({ codes, values, from, to }: Stretch): Stretch[] {
  const groups: Stretch[] = [];
  let start = -1;
  for (let i = from; i <= to; i++) {
    if (i < to && codes[i] !== 0) continue;
    if (start >= 0) groups.push({ codes, values, from: start, to: i });
    start = i;
  }
  return groups;
}

function entityOf(tags: Stretch): DxfEntity {
  const type = tags.values[tags.from]!;
  const layer = textOf(tags, 8) ?? '0';
  const curve = isTurned(tags) ? null : (curves[type]?.(tags) ?? null);
  const isText = type === 'TEXT' || type === 'MTEXT';
  return { type, layer, curve, textHeight: isText ? valueOf(tags, 40) : null };
}

/** An entity may lie in a plane of its own: seen from below, its `x` runs the other way. */
function isTurned({ codes, values, from, to }: Stretch): boolean {
  for (let i = from; i < to; i++) if (codes[i] === 230 && numberOf(values[i]!) !== 1) return true;
  return false;
}

const curves: Readonly<Record<string, (tags: Stretch) => Curve>> = {
  LWPOLYLINE: polylineOf,
  LINE: (tags) =>
    line(
      { x: valueOf(tags, 10), y: valueOf(tags, 20) },
      { x: valueOf(tags, 11), y: valueOf(tags, 21) },
    ),
  CIRCLE: (tags) => circle({ x: valueOf(tags, 10), y: valueOf(tags, 20) }, valueOf(tags, 40)),
  ARC: (tags) => {
    const [from, to] = [50, 51].map((code) => (valueOf(tags, code) * Math.PI) / 180) as [
      number,
      number,
    ];
    const turn = 2 * Math.PI;
    const sweep = (((to - from) % turn) + turn) % turn || turn;
    const centre = { x: valueOf(tags, 10), y: valueOf(tags, 20) };
    return arc(centre, valueOf(tags, 40), from, from + sweep);
  },
};

function polylineOf(tags: Stretch): Curve {
  const closed = (valueOf(tags, 70) & 1) === 1;
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (let i = tags.from; i < tags.to; i++) {
    const code = tags.codes[i];
    if (code !== 10 && code !== 20 && code !== 42) continue;
    const value = numberOf(tags.values[i]!);
    const last = vertices.at(-1);
    if (code === 10) vertices.push({ x: value, y: NaN, bulge: 0 });
    else if (!last) throw new Unreadable('bad-number');
    else if (code === 20) last.y = value;
    else last.bulge = value;
  }
  if (vertices.some(({ y }) => Number.isNaN(y))) throw new Unreadable('bad-number');
  return { closed, vertices: vertices satisfies Vertex[] };
}

function textOf({ codes, values, from, to }: Stretch, code: number): string | null {
  for (let i = from; i < to; i++) if (codes[i] === code) return values[i]!;
  return null;
}

function valueOf(tags: Stretch, code: number): number {
  const text = textOf(tags, code);
  if (text === null) throw new Unreadable('bad-number');
  return numberOf(text);
}

/** Larger numbers are no lengths of a vessel, and would overflow in products. */
const largest = 1e9;

/** Decimals as a drawing has them; `Number` alone would take nothing for 0, and other notations. */
function numberOf(text: string): number {
  const number = /^[-+]?[\d.]+(e[-+]?\d{1,3})?$/i.test(text) ? Number(text) : NaN;
  if (!(Math.abs(number) <= largest)) throw new Unreadable('bad-number');
  return number;
}

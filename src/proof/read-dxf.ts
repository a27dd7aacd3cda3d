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

type Tag = readonly [code: number, value: string];

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
function tagsOf(text: string): Tag[] {
  if (text.trim() === '') throw new Unreadable('empty');
  if (text.includes('\0')) throw new Unreadable('binary');
  const lines = text.split(/\r\n|\n|\r/);
  const tags: Tag[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const code = lines[i]!.trim();
    if (!/^-?\d{1,4}$/.test(code))
      throw new Unreadable(tags.length === 0 ? 'not-dxf' : 'cut-short');
    const tag = [Number(code), lines[i + 1]!.trim()] as const;
    if (tag[0] === 0 && tag[1] === 'EOF') return tags;
    tags.push(tag);
  }
  const begins = tags.some(([code, value]) => code === 0 && value === 'SECTION');
  throw new Unreadable(begins ? 'cut-short' : 'not-dxf');
}

function drawingOf(tags: readonly Tag[]): DxfDrawing {
  const header = sectionOf(tags, 'HEADER') ?? [];
  const entities = sectionOf(tags, 'ENTITIES');
  if (!entities) throw new Unreadable('not-dxf');
  const at = header.findIndex(([code, value]) => code === 9 && value === '$INSUNITS');
  const unit = at < 0 ? undefined : header[at + 1];
  return { unit: unit ? numberOf(unit[1]) : null, entities: grouped(entities).map(entityOf) };
}

function sectionOf(tags: readonly Tag[], name: string): readonly Tag[] | null {
  const start = tags.findIndex(
    ([code, value], i) => code === 2 && value === name && tags[i - 1]?.[1] === 'SECTION',
  );
  if (start < 0) return null;
  const end = tags.findIndex(([code, value], i) => i > start && code === 0 && value === 'ENDSEC');
  if (end < 0) throw new Unreadable('cut-short');
  return tags.slice(start + 1, end);
}

/** Each entity begins with its type, under the code 0. */
function grouped(tags: readonly Tag[]): Tag[][] {
  const groups: Tag[][] = [];
  for (const tag of tags) {
    if (tag[0] === 0) groups.push([tag]);
    else groups.at(-1)?.push(tag);
  }
  return groups;
}

function entityOf(tags: readonly Tag[]): DxfEntity {
  const type = tags[0]![1];
  const layer = tags.find(([code]) => code === 8)?.[1] ?? '0';
  const curve = isTurned(tags) ? null : (curves[type]?.(tags) ?? null);
  const isText = type === 'TEXT' || type === 'MTEXT';
  return { type, layer, curve, textHeight: isText ? valueOf(tags, 40) : null };
}

/** An entity may lie in a plane of its own: seen from below, its `x` runs the other way. */
const isTurned = (tags: readonly Tag[]): boolean =>
  tags.some(([code, value]) => code === 230 && numberOf(value) !== 1);

const curves: Readonly<Record<string, (tags: readonly Tag[]) => Curve>> = {
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

function polylineOf(tags: readonly Tag[]): Curve {
  const closed = (valueOf(tags, 70) & 1) === 1;
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const [code, value] of tags) {
    const last = vertices.at(-1);
    if (code === 10) vertices.push({ x: numberOf(value), y: NaN, bulge: 0 });
    else if (code === 20 && last) last.y = numberOf(value);
    else if (code === 42 && last) last.bulge = numberOf(value);
  }
  if (vertices.some(({ y }) => Number.isNaN(y))) throw new Unreadable('bad-number');
  return { closed, vertices: vertices satisfies Vertex[] };
}

function valueOf(tags: readonly Tag[], code: number): number {
  const tag = tags.find(([each]) => each === code);
  if (!tag) throw new Unreadable('bad-number');
  return numberOf(tag[1]);
}

/** Larger numbers are no lengths of a vessel, and would overflow in products. */
const largest = 1e9;

function numberOf(text: string): number {
  const number = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d{1,3})?$/i.test(text) ? Number(text) : NaN;
  if (!(Math.abs(number) <= largest)) throw new Unreadable('bad-number');
  return number;
}

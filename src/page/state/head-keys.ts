/** Keys of heads: what the spec says of one head goes before what it says of both. */
import type { Document } from 'yaml';
import { has, textAt, type Path } from './edit-spec.js';

export type End = 'top' | 'bottom';

const ends: readonly End[] = ['top', 'bottom'];
const isEnd = (step: string | number | undefined): step is End =>
  step === 'top' || step === 'bottom';

/** Which head a key is about; null where it is about both, or about something else. */
export function endOf([first, second]: Path): End | null {
  return first === 'heads' && isEnd(second) ? second : null;
}

/** The key for one head, or with null for both. */
export function forHead(path: Path, end: End | null): Path {
  if (path[0] !== 'heads') return path;
  const rest = path.slice(endOf(path) ? 2 : 1);
  return end ? ['heads', end, ...rest] : ['heads', ...rest];
}

/** Whether the spec says anything of one head alone. */
export function saysOfOneHead(document: Document.Parsed | null): boolean {
  return ends.some((end) => has(document, ['heads', end]));
}

/** All keys that mean the same number in one of the heads, the key itself first. */
export function sameNumber(path: Path): Path[] {
  if (path[0] !== 'heads') return [path];
  const others = endOf(path) ? [null] : ends;
  return [path, ...others.map((end) => forHead(path, end))];
}

export interface Found {
  readonly text: string;
  /** what stands there is not said in the file, or not of this head alone */
  readonly byDefault: boolean;
  /** whether it is the file's own writing */
  readonly isOwn: boolean;
}

/** The text of a key in a spec, or what it comes to in `whole`, the same spec with every key in it. */
export function findText(
  spec: Document.Parsed | null,
  whole: Readonly<Record<string, unknown>> | null,
  path: Path,
): Found {
  const own = textAt(spec, path);
  if (own !== null) return { text: own, byDefault: false, isOwn: true };
  const shared = endOf(path) ? textAt(spec, forHead(path, null)) : null;
  if (shared !== null) return { text: shared, byDefault: true, isOwn: true };
  // heads that are alike are written once there, others each by itself
  const places = [path, forHead(path, null), forHead(path, 'bottom')];
  const text = places.flatMap((place) => plainAt(whole, place) ?? [])[0] ?? '';
  return { text, byDefault: true, isOwn: false };
}

function plainAt(whole: unknown, path: Path): string | null {
  let value = whole;
  for (const step of path) {
    if (typeof value !== 'object' || value === null) return null;
    value = (value as Readonly<Record<string | number, unknown>>)[step];
  }
  if (Array.isArray(value)) return value.join(', ');
  return typeof value === 'string' || typeof value === 'number' ? String(value) : null;
}

/**
 * Keys of which a spec has one or the other: a count or widths, for staves and for boards, and a bung hole or none. The vessel
 * stays what it is as far as it can. From text to text, in one step; null where the text is not YAML.
 */
import type { Vessel } from '../../index.js';
import { parseSpec, removeFromSpec, replaceInSpec, setInSpec, type Path } from './edit-spec.js';
import { forHead, type End } from './head-keys.js';
import type { Units } from './read-length.js';

/** `even`: a count of them, all of one width; `uneven`: each with a width of its own. */
export type Way = 'even' | 'uneven';
export const ways: readonly Way[] = ['even', 'uneven'];

/** Uneven staves begin as the even ones were, in setting order, so that the ring closes where it did. */
export function stavesIn(text: string, way: Way, { staves, ring, spec }: Vessel): string | null {
  const [count, widths]: Path[] = [
    ['staves', 'count'],
    ['staves', 'widths'],
  ];
  if (way === 'even') return exchanged(text, widths!, count!, staves.length);
  const wide = staves.map(({ alpha }) =>
    written(ring.closesAt * Math.tan(alpha), spec.units, Math.round),
  );
  return exchanged(text, count!, widths!, wide);
}

/** Of one head, or with `end` null of both. Uneven boards begin as wide as they were, or a hair wider: the head stays covered. */
export function boardsIn(text: string, way: Way, end: End | null, vessel: Vessel): string | null {
  const [boards, widths] = ['boards', 'widths'].map((key) => forHead(['heads', key], end));
  const head = vessel.heads[end ?? 'bottom'];
  if (!head) return text;
  if (way === 'even') return exchanged(text, widths!, boards!, head.boards.length);
  const { units } = vessel.spec;
  const wide = head.boards.map(({ width }) => written(width, units, Math.ceil));
  return exchanged(text, boards!, widths!, wide);
}

/** A cask has a bung hole unless it is told to have none; a tub has none unless it is told. */
export function bungIn(text: string, bored: boolean, kind: 'cask' | 'tub'): string | null {
  if (!bored)
    return kind === 'cask' ? setInSpec(text, ['bung'], 'none') : removeFromSpec(text, ['bung']);
  if (kind === 'cask') return removeFromSpec(text, ['bung']);
  const group = parseSpec(text)?.createNode({}, { flow: true });
  return group ? replaceInSpec(text, ['bung'], group) : null;
}

function exchanged(
  text: string,
  gone: Path,
  come: Path,
  value: number | readonly number[],
): string | null {
  const changed = setInSpec(text, come, value);
  return changed === null ? null : removeFromSpec(changed, gone);
}

/** To a hundredth of a millimetre or half a thousandth of an inch: 28 such staves close within a tenth of a millimetre. */
function written(mm: number, units: Units, round: (n: number) => number): number {
  const [length, parts] = units === 'mm' ? [mm, 100] : [mm / 25.4, 2000];
  return round(length * parts) / parts;
}

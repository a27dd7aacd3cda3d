/** A spec's text in the other units: every length is exchanged where it stands, comments stay. */
import { isScalar, visit } from 'yaml';
import { millimetresOf, writtenLength } from '../../index.js';
import { parseSpec } from './edit-spec.js';
import type { Units } from './read-length.js';

/** Keys whose numbers are no lengths, and keys of text. */
const otherKeys = new Set([
  'count',
  'boards',
  'neutral',
  'bevelDegrees',
  'title',
  'name',
  'owner',
  'number',
  'date',
  'creator',
  'approved',
]);

/** Null where the text is not YAML. */
export function inOtherUnits(text: string, from: Units): string | null {
  const document = parseSpec(text);
  if (!document) return null;
  const to: Units = from === 'mm' ? 'in' : 'mm';
  const cuts: { start: number; end: number; text: string }[] = [];
  visit(document, {
    Pair(_, { key, value }) {
      const name = isScalar(key) ? String(key.value) : '';
      if (otherKeys.has(name)) return visit.SKIP;
      if (name === 'units' && isScalar(value) && value.range)
        cuts.push({ start: value.range[0], end: value.range[1], text: to });
      return undefined;
    },
    Scalar(key, { value, range }) {
      const length = key === 'key' || !range ? null : converted(String(value), from, to);
      if (length !== null && range) cuts.push({ start: range[0], end: range[1], text: length });
    },
  });
  return cuts
    .sort((a, b) => b.start - a.start)
    .reduce((all, cut) => all.slice(0, cut.start) + cut.text + all.slice(cut.end), text);
}

/** To a micrometre: what is finer is the noise of the conversion. */
function converted(value: string, from: Units, to: Units): string | null {
  const number = value.trim() === '' ? NaN : Number(value);
  const mm = millimetresOf(from === 'mm' ? number : value, from);
  if (mm === null || Number.isNaN(mm)) return null;
  const written = writtenLength(to === 'mm' ? Math.round(mm * 1000) / 1000 : mm, to);
  return String(typeof written === 'number' ? Number(written.toFixed(6)) : written);
}

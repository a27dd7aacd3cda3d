/** Lettering of the setting plan: numbers outside the ring, mark and width of each stave inside it. */
import { polyline } from '../geometry/curve.js';
import { label, merge, type Part } from '../drawing/build.js';
import type { Lettering } from '../drawing/drawing.js';
import { readable } from '../drawing/frame.js';
import { heights } from '../drawing/heights.js';
import { ascenderPart, descenderPart, textWidth } from '../drawing/lettering.js';
import { markedOutside, ringPoint, type RingView } from './setting-view.js';
import { spread } from './spread.js';

const height = heights.small;
const boxHeight = (ascenderPart + descenderPart) * height;
/** Clear space between two texts, and between text and ring, mm. */
const apart = 0.4;
const clear = 2;
/** Space on the axis for the diameter and the count, mm. */
const middleRadius = 14;
/** A text that had to move by more than this gets a leader, mm. */
const leastMove = 0.4;

/** Level, just outside the marks of the head's joints: every stave's number, or every fifth where they are crowded. */
export function settingNumbers(view: RingView): Part {
  const { middles, plan, words } = view;
  const from = markedOutside(view) + clear / 2;
  const widest = textWidth('8'.repeat(String(middles.length).length), height);
  // level boxes that meet at any angle keep their diagonal apart
  const gap = Math.hypot(widest, boxHeight) + apart;
  const all = middles.map((_, i) => i);
  // none just before the first
  const most = middles.length - 3;
  const fifths = all.filter((i) => i === 0 || ((i + 1) % everyFew === 0 && i < most));
  const fitting = [all, fifths].find((numbers) => numberPlaces(view, numbers, from, gap)) ?? [0];
  const azimuths = numberPlaces(view, fitting, from, gap) ?? [0];
  const numbers = fitting.map((i, k) => numberAt(view, i, azimuths[k]!, from));
  if (plan.set.bungStave === null) return { strokes: [], letterings: numbers };
  const above = { x: 0, y: from + boxHeight + apart + descenderPart * height };
  const bung = label(words.setting.bung, above, { height, align: 'centre' });
  return { strokes: [], letterings: [...numbers, ...bung.letterings] };
}

const everyFew = 5;

const numberPlaces = (
  { middles }: RingView,
  numbers: readonly number[],
  from: number,
  gap: number,
): readonly number[] | null =>
  places(
    numbers.map((i) => middles[i]!),
    from + boxHeight / 2,
    gap,
  );

function numberAt(view: RingView, i: number, azimuth: number, from: number): Lettering {
  const text = String(i + 1);
  const middle = view.middles[i]!;
  const across = Math.abs(Math.sin(azimuth)) * textWidth(text, height);
  const reach = (across + Math.abs(Math.cos(azimuth)) * boxHeight) / 2;
  const centre = ringPoint(from + reach, azimuth);
  const at = { x: centre.x, y: centre.y - boxHeight / 2 + descenderPart * height };
  const moved = Math.abs(azimuth - middle) * from > leastMove;
  const ends = [ringPoint(view.outside + 0.3, middle), ringPoint(from - 0.4, azimuth)];
  return {
    ...{ text, at, height, align: 'centre', angle: 0 },
    ...(moved && { leader: polyline(ends) }),
  };
}

/** Along the radius, read from the bottom or the right; as much of it as there is room for. */
export function settingLabels(view: RingView): Part {
  const { plan, middles } = view;
  const outer = view.inside - clear;
  const room = roomInside(middles, outer);
  if (!room) return merge();
  const { inner, azimuths } = room;
  const letterings = plan.set.staves.flatMap((stave, i): Lettering[] => {
    const azimuth = azimuths[i]!;
    const text = fitting(stave.mark, view.text(stave.width), view, outer - inner);
    if (text === '') return [];
    const along = Math.PI / 2 - azimuth;
    const angle = readable(along);
    const outwards = Math.cos(angle - along) > 0;
    // the middle of the capitals, not the baseline, lies on the radius
    const sink = height / 2;
    const start = ringPoint(outer, azimuth);
    const at = { x: start.x + sink * Math.sin(angle), y: start.y - sink * Math.cos(angle) };
    const moved = Math.abs(azimuth - middles[i]!) * view.inside > leastMove;
    const ends = [ringPoint(view.inside - 0.3, middles[i]!), ringPoint(outer + 0.6, azimuth)];
    return [
      {
        ...{ text, at, height, align: outwards ? 'right' : 'left', angle },
        ...(moved && { leader: polyline(ends) }),
      },
    ];
  });
  return { strokes: [], letterings };
}

/** How near to the axis the texts may run without meeting, and their azimuths; null where there is no room for a word. */
function roomInside(
  middles: readonly number[],
  outer: number,
): { readonly inner: number; readonly azimuths: readonly number[] } | null {
  for (let inner = middleRadius; inner <= outer - boxHeight; inner += 0.5) {
    const azimuths = places(middles, inner, boxHeight + apart);
    if (azimuths) return { inner, azimuths };
  }
  return null;
}

/** Azimuths near the staves' middles, `gap` mm apart at `radius`; null where the ring has no room for them all. */
function places(middles: readonly number[], radius: number, gap: number): number[] | null {
  if (middles.length * gap > 2 * Math.PI * radius) return null;
  const moved = spread(middles, gap / radius);
  const turn = moved[0]! + 2 * Math.PI - moved.at(-1)!;
  return turn * radius < gap - 1e-6 ? null : moved;
}

/** Mark and width; the mark alone; or the beginning of a long mark, with dots. */
function fitting(mark: string, width: string, { words }: RingView, room: number): string {
  const fits = (text: string): boolean => textWidth(text, height) <= room;
  const whole = [words.setting.label(mark, width), mark].find(fits);
  if (whole !== undefined) return whole;
  const letters = [...mark];
  for (let n = letters.length - 1; n > 0; n--) {
    const text = `${letters.slice(0, n).join('')}…`;
    if (fits(text)) return text;
  }
  return '';
}

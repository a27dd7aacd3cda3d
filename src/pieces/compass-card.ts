/** A card to set a compass by, for the check in which it steps six times round the groove. */
import { line, polygon } from '../geometry/curve.js';
import {
  cross,
  drawingOf,
  label,
  leaderLabel,
  merge,
  strokes,
  type Part,
} from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, fractionText, shortLengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';
import { radiusFromMiss, sixStepOverrun } from '../vessel/compass.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { namedHeads } from './head-names.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** The card reaches this far past the cross, past the scale, above the line and below it, mm. */
const margin = { left: 14, right: 12, above: 22, below: 25 };
/** Ticks each way from 0, and how many make a longer one. */
const scales: Record<Units, { step: number; count: number; long: number; numbered: number }> = {
  mm: { step: 1, count: 8, long: 1, numbered: 5 },
  in: { step: 25.4 / 32, count: 8, long: 2, numbered: 8 },
};
const tick = { short: 4, long: 6, numbered: 8, zero: 12 };

/** One for each head that differs. */
export function compassCards(vessel: Vessel, words: Words): Drawing[] {
  return namedHeads(vessel, words).map(({ head, name }) => {
    const end = name === 'head' ? 'both' : head.groove.end;
    const stem = name.replace('head', 'compass-card');
    const { units } = vessel.spec;
    const title = words.jigs.compass.title[end];
    return drawingOf(stem, title, cardPart(head, units, words), legendOf(head, units, words));
  });
}

function cardPart({ groove: { radius } }: Head, units: Units, words: Words): Part {
  const reach = scales[units].step * scales[units].count;
  const [left, right] = [-margin.left, radius + reach + margin.right];
  const card = polygon([
    { x: left, y: -margin.below },
    { x: right, y: -margin.below },
    { x: right, y: margin.above },
    { x: left, y: margin.above },
  ]);
  return merge(
    strokes('outline', card),
    cross({ x: 0, y: 0 }, 10),
    strokes('station', line({ x: radius - reach - 4, y: 0 }, { x: radius + reach + 4, y: 0 })),
    scalePart(radius, units),
    wordsPart(radius, reach, units, words),
  );
}

function scalePart(radius: number, units: Units): Part {
  const { step, count, long, numbered } = scales[units];
  const counts = Array.from({ length: 2 * count + 1 }, (_, i) => i - count);
  const length = (k: number): number => {
    if (k === 0) return tick.zero;
    if (k % numbered === 0) return tick.numbered;
    return k % long === 0 ? tick.long : tick.short;
  };
  const at = (k: number): number => radius + k * step;
  const ticks = counts.map((k) => line({ x: at(k), y: 0 }, { x: at(k), y: length(k) }));
  const numbers = counts
    .filter((k) => k !== 0 && k % numbered === 0)
    .map((k) => {
      const text = units === 'mm' ? String(k) : fractionText(k / 32);
      const signed = k > 0 ? `+${text}` : text.replace('-', '\u2212');
      const place = { x: at(k), y: tick.zero + 1.5 };
      return label(signed, place, { height: heights.small, align: 'centre' });
    });
  const zero = label('0', { x: at(0), y: tick.zero + 1.5 }, { align: 'centre' });
  return merge(strokes('station', ...ticks), zero, ...numbers);
}

/** What to set on what; and below the line where a compass 1 % too wide stands. */
function wordsPart(radius: number, reach: number, units: Units, words: Words): Part {
  const { point, zero, wide } = words.jigs.compass;
  const small = { height: heights.small };
  const overrun = angleText(sixStepOverrun(1.01, 1));
  const text = zero(withUnit(radius, units, words));
  const target = { x: 1.01 * radius, y: -tick.long };
  return merge(
    strokes('station', line({ x: target.x, y: 0 }, target)),
    label(point, { x: 8, y: 4 }, small),
    leaderLabel(
      text,
      { x: radius - reach - 12, y: -10 },
      { x: radius, y: -0.5 },
      { ...small, align: 'right' },
    ),
    leaderLabel(
      wide(overrun),
      { x: radius - reach - 12, y: -19 },
      { x: target.x, y: target.y - 0.5 },
      { ...small, align: 'right' },
    ),
  );
}

const misses: Record<Units, readonly number[]> = {
  mm: [10, 5, 2, 0, -2, -5, -10],
  in: [12.7, 6.35, 3.175, 0, -3.175, -6.35, -12.7],
};

function legendOf({ groove, spec }: Head, units: Units, words: Words): Legend {
  const { notes, table } = words.jigs.compass;
  const unit = words.unitNames[units];
  const text = (mm: number): string => shortLengthText(mm, units);
  const rows = misses[units].map((miss) => {
    const radius = radiusFromMiss(groove.radius, miss);
    const how = miss === 0 ? table.meets : miss > 0 ? table.past : table.short;
    return [how, text(Math.abs(miss)), text(radius), text(2 * radius - spec.clearance)];
  });
  return {
    notes: [
      notes.use(withUnit(groove.radius, units, words)),
      notes.step,
      notes.scale(unit),
      notes.miss,
      notes.head,
    ],
    tables: [{ title: table.title, headings: table.headings(unit), rows }],
  };
}

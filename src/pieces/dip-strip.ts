/** One face of a dip rod: a strip with a scale along each edge, its foot at the origin, upright. */
import { circle, line, polygon } from '../geometry/curve.js';
import { label, lettering, merge, strokes, type Part } from '../drawing/build.js';
import { ascenderPart, descenderPart, textWidth } from '../drawing/lettering.js';
import type { DipAmount, DipMark } from '../capacity/dip-marks.js';

export interface RodScale<Mark extends DipAmount = DipMark> {
  readonly heading: string;
  readonly marks: readonly Mark[];
}

/** Lettering and ticks of a rod, in proportion. */
export interface RodStyle {
  readonly height: number;
  readonly tick: Readonly<Record<DipMark['rank'], number>>;
  readonly gap: number;
  /** what a number takes up along the rod, with its accents and tails and a hair */
  readonly numberRoom: number;
}

/** `height` is that of the lettering, from the series of ISO 3098. */
export function rodStyle(height: number): RodStyle {
  const tick = { short: 0.85 * height, long: 1.4 * height, numbered: 2 * height };
  return {
    height,
    tick,
    gap: 0.3 * height,
    numberRoom: (ascenderPart + descenderPart) * height + 0.3,
  };
}

export interface Strip {
  readonly name: string;
  readonly left: RodScale;
  readonly right: RodScale;
  /** heights of lines right across, such as full; numbers keep clear of them */
  readonly lines: readonly number[];
  readonly width: number;
  readonly height: number;
  readonly style: RodStyle;
}

/** What stands above the highest line: the headings, and a hole for a cord. */
export const handle = 48;
const cordHole = 3;

/** As wide as its numbers ask, side by side, and each heading by itself. */
export function stripWidth(scales: readonly RodScale<DipAmount>[], style: RodStyle): number {
  const { height, tick, gap } = style;
  const numbers = Math.max(...scales.map(({ marks }) => numberWidth(marks, height)));
  const headings = scales.map(({ heading }) => textWidth(heading, height) + 4 * gap);
  return Math.ceil(Math.max(2 * (tick.numbered + 2 * gap + numbers), ...headings));
}

function numberWidth(marks: readonly DipAmount[], height: number): number {
  const numbered = marks.filter(({ rank }) => rank === 'numbered');
  return Math.max(0, ...numbered.map(({ amount }) => textWidth(amountText(amount), height)));
}

export function stripPart(strip: Strip, x: number): Part {
  const { width, height: top, lines } = strip;
  const body = polygon([
    { x, y: 0 },
    { x: x + width, y: 0 },
    { x: x + width, y: top },
    { x, y: top },
  ]);
  const middle = x + width / 2;
  const cross = lines.map((y) => line({ x, y }, { x: x + width, y }));
  const centred = { align: 'centre', height: strip.style.height } as const;
  return merge(
    strokes('outline', body),
    strokes('bore', circle({ x: middle, y: top - 10 }, cordHole)),
    strokes('station', ...cross),
    scalePart(strip.left, strip, x, 1),
    scalePart(strip.right, strip, x + width, -1),
    label(strip.name, { x: middle, y: top - 24 }, centred),
  );
}

/** From the edge at `x` inwards: `side` 1 to the right, -1 to the left. */
function scalePart(scale: RodScale, strip: Strip, x: number, side: 1 | -1): Part {
  const { height, tick, gap, numberRoom } = strip.style;
  const options = { height, align: side > 0 ? 'left' : 'right' } as const;
  const lines = [0, ...strip.lines];
  const clear = (dip: number, room: number): boolean =>
    lines.every((y) => Math.abs(y - dip) > room);
  const drawn = scale.marks.filter(({ dip }) => clear(dip, 0.5));
  const ticks = drawn.map(({ dip, rank }) =>
    line({ x, y: dip }, { x: x + side * tick[rank], y: dip }),
  );
  const numbers = drawn.filter(
    ({ dip, rank }) => rank === 'numbered' && clear(dip, numberRoom / 2 + 0.3),
  );
  // the headings of the two edges stand one above the other
  const heading = strip.height - handle + 6 + (side > 0 ? numberRoom + 1 : 0);
  const beside = x + side * (tick.numbered + gap);
  return merge(
    strokes('station', ...ticks),
    {
      strokes: [],
      letterings: numbers.map(({ dip, amount }) =>
        lettering(amountText(amount), { x: beside, y: dip - height / 2 }, options),
      ),
    },
    label(scale.heading, { x: x + side * 2 * gap, y: heading }, options),
  );
}

export const amountText = (amount: number): string => String(Number(amount.toFixed(6)));

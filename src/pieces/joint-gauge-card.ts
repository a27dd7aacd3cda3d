/** A card that a sliding bevel is set by: its stock on the lower edge, its blade along the line of the stave's width. */
import { line, polygon, polyline } from '../geometry/curve.js';
import { label, merge, strokes, type Part } from '../drawing/build.js';
import type { Lettering } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, shortLengthText } from '../drawing/length-text.js';
import { textWidth } from '../drawing/lettering.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import type { GaugePlace } from './gauge-places.js';
import { spread } from './spread.js';
import type { Words } from './words/index.js';

/** Heights between which the lines run; all of them aim at the middle of the lower edge. */
const low = 50;
const high = 120;
const fanOut = 8;
const pitch = 4.5;
const margin = 6;
const height = heights.small;

export function jointCard(
  { name, z }: GaugePlace,
  vessel: Vessel,
  staves: readonly Stave[],
  words: Words,
): Part {
  const slopes = staves.map((stave) => Math.tan(stave.bevel(z)));
  const texts = staves.map((stave) => {
    const width = shortLengthText(stave.width, vessel.spec.units, 0);
    return `${width} · ${angleText(stave.bevel(z))}`;
  });
  const ends = slopes.map((slope) => -high * slope).reverse();
  const places = spread(ends, pitch).reverse();
  const lines = slopes.map((slope) =>
    line({ x: -low * slope, y: low }, { x: -high * slope, y: high }),
  );
  const labels = texts.map((text, i) => upright(text, -high * slopes[i]!, places[i]!));
  const longest = Math.max(...texts.map((text) => textWidth(text, height)));
  const { card, stock } = words.gauges.joint;
  const own = Math.max(textWidth(card(name), heights.normal), textWidth(stock, height));
  const left = Math.min(...places) - margin;
  const right = Math.max(left + own + 2 * margin, ...places.map((place) => place + margin), margin);
  const top = high + fanOut + longest + margin;
  return merge(
    strokes(
      'outline',
      polygon([
        { x: left, y: 0 },
        { x: right, y: 0 },
        { x: right, y: top },
        { x: left, y: top },
      ]),
    ),
    strokes('centre', line({ x: 0, y: low }, { x: 0, y: high })),
    strokes('station', ...lines),
    { strokes: [], letterings: labels },
    label(card(name), { x: (left + right) / 2, y: 16 }, { align: 'centre' }),
    label(stock, { x: (left + right) / 2, y: 5 }, { height, align: 'centre' }),
  );
}

/** Reads upwards, on a leader from the end of its line. */
function upright(text: string, from: number, to: number): Lettering {
  return {
    text,
    at: { x: to + height / 2, y: high + fanOut + 1.5 },
    height,
    align: 'left',
    angle: Math.PI / 2,
    leader: polyline([
      { x: from, y: high + 1 },
      { x: to, y: high + fanOut },
    ]),
  };
}

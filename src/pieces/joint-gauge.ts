/**
 * The joint bevel for staves of every width. One plate for each place fits the outer face and the joint whatever the
 * width, since on a round face the joint stands square to the round; cards have the bevel of each width as a line, for
 * flat faces.
 */
import type { Point } from '../geometry/curve.js';
import { arc, line } from '../geometry/curve.js';
import { closedFrom } from '../geometry/join.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, lengthText, per100Text, shortLengthText } from '../drawing/length-text.js';
import { jointGaugeRadius } from '../vessel/stave-round.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { sideBySide, stacked } from './arrange.js';
import { bevelPlaces, gaugePlaces, type GaugePlace } from './gauge-places.js';
import { jointCard } from './joint-gauge-card.js';
import { plateWords } from './plate-words.js';
import { ordinaryRange, widthSteps } from './stave-widths.js';
import type { Words } from './words/index.js';

/** The bar over the outer face and the arm along the joint; how far the bar runs past the widest stave; mm, and radii. */
const bar = 34;
const arm = { width: 28, length: 60 };
const pastWidest = 12;
const perRadius = 1.4;
const gap = 14;
/** Ticks along the round edge, every second one longer and lettered. */
const tick = { short: 3, long: 5 };

export function jointGauge(vessel: Vessel, words: Words, range = ordinaryRange(vessel)): Drawing {
  const staves = widthSteps(range, vessel.spec.units).map((width) => vessel.staveOfWidth(width));
  const plates = gaugePlaces(vessel, words).map((place) => plateOf(place, vessel, staves, words));
  const cards = bevelPlaces(vessel, words).map((place) => jointCard(place, vessel, staves, words));
  const part = stacked([...plates, sideBySide(cards, gap)], gap);
  return drawingOf('joint-gauge', words.gauges.joint.title, part, legend(vessel, staves, words));
}

/** The notch's corner is the origin: the joint hangs straight down from it, the outer face curves away to the left. */
function plateOf(
  { name, z }: GaugePlace,
  vessel: Vessel,
  staves: readonly Stave[],
  words: Words,
): Part {
  const radius = jointGaugeRadius(vessel, z);
  const widest = 2 * staves.at(-1)!.halfWidth(z, 0) + pastWidest;
  const reach = 2 * Math.asin(Math.min(widest, perRadius * radius) / 2 / radius);
  const centre = { x: 0, y: -radius };
  const up = Math.PI / 2;
  const round = arc(centre, radius, up + reach, up).vertices;
  const corner = (x: number, y: number) => ({ x, y, bulge: 0 });
  const left = round[0]!.x;
  const outline = closedFrom([
    round,
    [corner(0, -arm.length), corner(arm.width, -arm.length)],
    [corner(arm.width, bar), corner(left, bar)],
  ]);
  const { plate, held } = words.gauges.joint;
  return merge(
    strokes('outline', outline),
    plateWords(plate(name), [held], {
      left: left + 4,
      right: arm.width - 4,
      top: bar - 4,
      beside: arm.width + 5,
    }),
    ...staves.map((stave, i) => tickAt(stave, i, reach, { vessel, z, radius })),
  );
}

interface Section {
  readonly vessel: Vessel;
  readonly z: number;
  readonly radius: number;
}

/** Where the other corner of a stave of this width comes to lie; nothing past the plate's end. */
function tickAt(stave: Stave, index: number, reach: number, { vessel, z, radius }: Section): Part {
  const { outside } = vessel.spec.staves;
  const across = 2 * stave.halfWidth(z, 0);
  // corner to corner: backing takes the middle of the face off, and with it `1 - cos(bevel)` of its width
  const chord = outside === 'rounded' ? across * Math.cos(stave.bevel(z)) : across;
  const angle = Math.PI / 2 + 2 * Math.asin(chord / 2 / radius);
  if (!(angle < Math.PI / 2 + reach - 2 / radius)) return merge();
  const at = (outwards: number): Point => ({
    x: (radius + outwards) * Math.cos(angle),
    y: (radius + outwards) * Math.sin(angle) - radius,
  });
  const lettered = index % 2 === 0;
  const end = at(lettered ? tick.long : tick.short);
  const text = shortLengthText(stave.width, vessel.spec.units, 0);
  return merge(
    strokes('station', line(at(0), end)),
    lettered
      ? label(text, { x: end.x, y: end.y + 1.5 }, { height: heights.small, align: 'centre' })
      : merge(),
  );
}

function legend(vessel: Vessel, staves: readonly Stave[], words: Words): Legend {
  const { units } = vessel.spec;
  const { notes, table } = words.gauges.joint;
  const places = bevelPlaces(vessel, words);
  const rows = staves.map((stave) => [
    lengthText(stave.width, units),
    ...places.flatMap(({ z }) => [angleText(stave.bevel(z)), per100Text(stave.bevel(z))]),
  ]);
  const names = places.map(({ name }) => name);
  const flat = vessel.spec.staves.outside === 'flat';
  return {
    notes: [
      notes.use,
      flat ? notes.flat : notes.round,
      notes.ticks,
      notes.card,
      words.gauges.square,
    ],
    tables: [{ title: table.title, headings: table.headings(words.unitNames[units], names), rows }],
  };
}

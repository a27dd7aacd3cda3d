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
import { textWidth } from '../drawing/lettering.js';
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
/** Ticks along the round edge; those that have room for figures are longer. */
const tick = { short: 3, long: 5 };

/** The round edge of a plate: `reach` is the angle that it takes up, radians. */
interface Round {
  readonly radius: number;
  readonly reach: number;
}

/** `turn` is counted from the notch's corner, radians. */
interface Tick {
  readonly turn: number;
  readonly text: string;
}

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
    ticksOf(staves, z, { radius, reach }, vessel),
  );
}

/** Where the other corner of each stave comes to lie, as far as the plate reaches. */
function ticksOf(staves: readonly Stave[], z: number, round: Round, vessel: Vessel): Part {
  const { units, staves: spec } = vessel.spec;
  const ticks = staves.flatMap((stave): Tick[] => {
    const across = 2 * stave.halfWidth(z, 0);
    // corner to corner: backing takes the middle of the face off, and with it `1 - cos(bevel)` of its width
    const chord = spec.outside === 'rounded' ? across * Math.cos(stave.bevel(z)) : across;
    const turn = 2 * Math.asin(chord / 2 / round.radius);
    const text = shortLengthText(stave.width, units, 0);
    return turn < round.reach - 2 / round.radius ? [{ turn, text }] : [];
  });
  const lettered = spacedOut(ticks, round);
  return merge(...ticks.map((each) => tickAt(each, lettered.includes(each), round.radius)));
}

/** As many of the ticks as have room for their figures, from each other and from the plate's end. */
function spacedOut(ticks: readonly Tick[], { radius, reach }: Round): Tick[] {
  const end = radius * Math.sin(reach) - 2;
  const chosen: Tick[] = [];
  for (const each of ticks) {
    const before = chosen.at(-1);
    const width = textWidth(each.text, heights.small);
    const clear = !before || (each.turn - before.turn) * radius >= width + 2;
    const outmost = (radius + tick.long + 6) * Math.sin(each.turn) + width / 2;
    if (clear && outmost < end) chosen.push(each);
  }
  return chosen;
}

/** A tick outwards from the round edge; its figures stand square to it, so that they keep clear of their neighbours. */
function tickAt({ turn, text }: Tick, lettered: boolean, radius: number): Part {
  const at = (outwards: number): Point => ({
    x: -(radius + outwards) * Math.sin(turn),
    y: (radius + outwards) * Math.cos(turn) - radius,
  });
  const options = { height: heights.small, align: 'centre' as const, angle: turn };
  return merge(
    strokes('station', line(at(0), at(lettered ? tick.long : tick.short))),
    lettered ? label(text, at(tick.long + 1.5), options) : merge(),
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

/** Dip rods at full size: one for the vessel lying, through its bung, and one for it standing. */
import { drawingOf, label, leaderLabel, merge, type Part } from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { wrap } from '../drawing/wrap.js';
import type { Point } from '../geometry/curve.js';
import {
  amountsOf,
  fillingOf,
  litresPer,
  marksAt,
  type DipMark,
  type Measure,
} from '../capacity/dip-marks.js';
import { fullDip, type Posture } from '../capacity/dip-table.js';
import { capacityLitres } from '../capacity/volume.js';
import type { Vessel } from '../vessel/vessel.js';
import {
  handle,
  rodStyle,
  stripPart,
  stripWidth,
  type RodScale,
  type RodStyle,
} from './dip-strip.js';
import { spread } from './spread.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** Lettering heights of ISO 3098, the largest first; marks come no closer than a share of them. */
const letterings = [3.5, 2.5, 1.8] as const;
const markShare = 0.58;
/** Numbers stand further apart than they must: every second of a crowd says as much. */
const airy = 1.5;
const betweenStrips = 12;
const aside = 10;
/** Words beside the strips: how wide, from line to line, and from note to note. */
const note = { width: 62, line: 6, apart: 7 };
/** A flat rod passes a hole if it is no wider than this share of it, and a third as thick. */
const ofBung = 0.94;
const measures = ['litre', 'usGallon', 'imperialGallon'] as const;

/** A cask without a bung has no rod for lying, nor has a tub. */
export function dipRods(vessel: Vessel, words: Words): Drawing[] {
  const lying = vessel.spec.bung !== null && vessel.spec.vessel === 'cask';
  const postures: Posture[] = lying ? ['lying', 'standing'] : ['standing'];
  return postures.map((posture) => {
    const rod = rodOf(vessel, posture, words);
    const part = rodPart(rod, vessel, words);
    const legend = legendOf(rod, vessel, words);
    return drawingOf(`dip-rod-${posture}`, words.dip.title[posture], part, legend);
  });
}

interface Rod {
  readonly posture: Posture;
  readonly full: number;
  readonly volumes: readonly [RodScale, RodScale, RodScale];
  readonly depth: RodScale;
  readonly style: RodStyle;
  readonly width: number;
}

/** In the largest lettering with which a rod for the bung passes it, or the smallest. */
function rodOf(vessel: Vessel, posture: Posture, words: Words): Rod {
  const filling = fillingOf(vessel, posture);
  const full = fullDip(vessel, posture);
  const depth = depthScale(vessel, full, words);
  const inLettering = (height: number) => {
    const style = rodStyle(height);
    const room = { mark: markShare * height, number: airy * style.numberRoom };
    const scales = measures.map((measure) => ({
      heading: words.dip.scales[measure],
      measure,
      marks: amountsOf(filling, measure, room),
    }));
    return { style, scales, width: stripWidth([...scales, depth], style) };
  };
  const hole = posture === 'lying' && vessel.spec.bung ? vessel.spec.bung.diameter : Infinity;
  let chosen = inLettering(letterings[0]);
  for (const height of letterings.slice(1)) {
    if (chosen.width <= ofBung * hole) break;
    chosen = inLettering(height);
  }
  const { style, scales, width } = chosen;
  const volumes = scales.map(({ heading, measure, marks }) => ({
    heading,
    marks: marksAt(filling, measure, marks),
  })) as unknown as Rod['volumes'];
  return { posture, full, volumes, depth, style, width };
}

function rodPart(rod: Rod, vessel: Vessel, words: Words): Part {
  const { volumes, depth, style, width } = rod;
  const [litres, usGallons, imperialGallons] = volumes;
  const lines = linesAcross(rod, vessel, words);
  const across = lines.map(({ y }) => y);
  const height = Math.max(...across) + handle;
  const strip = (name: string, left: RodScale, right: RodScale, x: number): Part =>
    stripPart({ lines: across, width, height, style, name, left, right }, x);
  return merge(
    strip(words.dip.front, litres, usGallons, 0),
    strip(words.dip.back, imperialGallons, depth, width + betweenStrips),
    notedLines([footLine(rod.posture, words), ...lines], 2 * width + betweenStrips),
  );
}

/** Every 5 mm, numbered at tens; or every eighth of an inch, numbered at whole ones. */
function depthScale({ spec }: Vessel, full: number, words: Words): RodScale {
  const inches = spec.units === 'in';
  const step = inches ? 25.4 / 8 : 5;
  const [long, numbered] = inches ? [4, 8] : [2, 2];
  const marks = Array.from({ length: Math.floor(full / step) }, (_, i): DipMark => {
    const count = i + 1;
    const rank = count % numbered === 0 ? 'numbered' : count % long === 0 ? 'long' : 'short';
    return { dip: count * step, amount: inches ? count / 8 : count * step, rank };
  });
  return { heading: words.unitNames[spec.units], marks };
}

interface NotedLine {
  readonly y: number;
  readonly text: string;
}

function footLine(posture: Posture, words: Words): NotedLine {
  return { y: 0, text: words.dip.foot(words.dip.feet[posture]) };
}

/** Full, and where the rod passes the outside of the bung stave. */
function linesAcross({ posture, full }: Rod, vessel: Vessel, words: Words): NotedLine[] {
  const { dip } = words;
  const litres = capacityLitres(vessel);
  const amount = (measure: Measure, decimals: number): string =>
    (litres / litresPer[measure]).toFixed(decimals);
  const text = dip.full(amount('litre', 1), amount('usGallon', 2), amount('imperialGallon', 2));
  const fullLine = {
    y: full,
    text: posture === 'standing' ? `${text}: ${limit(vessel, words)}` : text,
  };
  if (posture === 'standing') return [fullLine];
  return [fullLine, { y: full + vessel.wall.thickness(0), text: dip.outside }];
}

const limit = ({ heads }: Vessel, { dip }: Words): string => (heads.top ? dip.topHead : dip.rim);

/** To the right of the strips, each pointing at its line; in lines so short that an upright A4 takes rod and notes side by side. */
function notedLines(lines: readonly NotedLine[], right: number): Part {
  const notes = lines.map(({ text }) => wrap(text, heights.normal, note.width));
  const most = Math.max(...notes.map(({ length }) => length));
  const places = spread(
    lines.map(({ y }) => y),
    note.apart + (most - 1) * note.line,
  );
  return merge(
    ...lines.map(({ y }, i) => {
      const [first, ...others] = notes[i]!;
      const at = (n: number): Point => ({
        x: right + aside,
        y: places[i]! - heights.normal / 2 - n * note.line,
      });
      const below = others.map((text, n) => label(text, at(n + 1)));
      return merge(leaderLabel(first!, at(0), { x: right, y }), ...below);
    }),
  );
}

function legendOf({ posture, width }: Rod, { spec }: Vessel, words: Words): Legend {
  const { notes } = words.dip;
  const text = (mm: number): string => withUnit(mm, spec.units, words, 0);
  const thickness = Math.sqrt(Math.max(0, (spec.bung?.diameter ?? 0) ** 2 - width ** 2));
  const through =
    posture === 'lying'
      ? [notes.check, notes.passes(text(width), text(Math.floor(thickness)))]
      : [];
  const gas = posture === 'standing' ? [notes.gas] : [];
  return {
    notes: [notes[posture], ...through, notes.faces, notes.gallons, notes.use, ...gas],
    tables: [],
  };
}

/** One strap as a strip, full size: its long edge up, `x` from its left end; whole, or with its middle broken out. */
import type { Point } from '../geometry/curve.js';
import { circle, line, polygon, polyline } from '../geometry/curve.js';
import { breakLine } from '../drawing/break-line.js';
import { label, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import { shortLengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';
import { splayPer100 } from '../vessel/hoop.js';
import { rivetsOf } from '../vessel/rivets.js';
import type { Strap } from '../vessel/strap.js';
import type { Words } from './words/index.js';

/** A strip is shown from its ends to this far past the lap when its middle is broken out. */
const pastLap = 15;
const breakGap = 8;
/** Dimension lines and lines of words, from the strip outwards. */
const level = { lap: 9, length: 18, holes: 9, words: 21, nextWords: 6 };

/** Room that a strip takes up above its upper and below its lower edge. */
export const stripRoom = { above: 35, below: 22 };

export interface StripView {
  readonly units: Units;
  readonly words: Words;
  readonly broken: boolean;
}

/** The strip with its upper edge at `top`. */
export function stripPart(strap: Strap, top: number, view: StripView): Part {
  const { cutLength } = strap.hoop;
  const { width, lap } = strap.spec;
  const shown = lap + pastLap;
  const broken = view.broken && 2 * shown + breakGap < cutLength;
  const removed = broken ? cutLength - 2 * shown - breakGap : 0;
  /** from a distance along the strap to its place on the drawing */
  const place = (along: number): number => (along > shown ? along - removed : along);
  const [left, right] = [0, place(cutLength)];
  const middle = top - width / 2;
  const across = (x: number): [Point, Point] => [
    { x, y: top },
    { x, y: top - width },
  ];
  const edges = broken
    ? brokenStrip(shown, right, top, width)
    : strokes('outline', polygon([...across(left), ...across(right).reverse()]));
  const lapLines = lap > 0 ? [line(...across(lap)), line(...across(right - lap))] : [];
  return merge(
    edges,
    strokes('station', ...lapLines),
    strokes('centre', line({ x: left - 5, y: middle }, { x: right + 5, y: middle })),
    holes(strap, middle, right, view),
    dimensions(strap, top, right, view),
    stripWords(strap, top + level.words, view),
  );
}

/** The two ends; what is between them is broken out. */
function brokenStrip(shown: number, right: number, top: number, width: number): Part {
  const bottom = top - width;
  const end = (from: number, to: number) =>
    polyline([
      { x: to, y: top },
      { x: from, y: top },
      { x: from, y: bottom },
      { x: to, y: bottom },
    ]);
  const [leftBreak, rightBreak] = [shown, shown + breakGap];
  return merge(
    strokes('outline', end(0, leftBreak), end(right, rightBreak)),
    strokes('dimension', breakLine(leftBreak, top, bottom), breakLine(rightBreak, top, bottom)),
  );
}

function holes({ spec }: Strap, middle: number, right: number, { units }: StripView): Part {
  const { places, holeDiameter } = rivetsOf(spec, units);
  const at = (x: number) => circle({ x, y: middle }, holeDiameter / 2);
  return strokes('bore', ...places.flatMap((place) => [at(place), at(right - place)]));
}

/** Above: from a hole to the one that it is riveted to. Below: the lap and the length to cut. */
function dimensions({ spec, hoop }: Strap, top: number, right: number, view: StripView): Part {
  const { units, words } = view;
  const text = (mm: number): string => shortLengthText(mm, units);
  const below = top - spec.width;
  const { places, holeDiameter } = rivetsOf(spec, units);
  const holeTop = top - spec.width / 2 + holeDiameter / 2;
  const pairs = places.slice(0, 1).map((hole) => {
    const [from, to] = [hole, right - spec.lap + hole].map((x) => ({ x, y: holeTop }));
    const distance = words.hoops.holes(text(hoop.cutLength - spec.lap));
    return dimensionLine(distance, from!, to!, { x: 0, y: top + level.holes });
  });
  const along = (words: string, to: number, drop: number): Part =>
    dimensionLine(words, { x: 0, y: below }, { x: to, y: below }, { x: 0, y: below - drop });
  const lap = spec.lap > 0 ? [along(words.hoops.lap(text(spec.lap)), spec.lap, level.lap)] : [];
  const length = along(words.hoops.cut(text(hoop.cutLength)), right, level.length);
  return merge(...pairs, ...lap, length);
}

function stripWords({ number, spec, hoop, hoops }: Strap, y: number, view: StripView): Part {
  const { units } = view;
  const words = view.words.hoops;
  const text = (mm: number): string => shortLengthText(mm, units);
  const ends = [...new Set(hoops.map(({ end }) => view.words.ends[end]))].join(words.and);
  const section = `${text(spec.width)} × ${text(spec.thickness)}`;
  const edge =
    hoop.splay > 0
      ? words.upperEdge(text(hoop.splay), splayPer100(hoop).toFixed(2))
      : words.straight;
  const driving = hoop.driving > 0 ? [words.driving(text(hoop.driving))] : [];
  return merge(
    label(words.strap(number, spec.name, ends, hoops.length, section), {
      x: 0,
      y: y + level.nextWords,
    }),
    label([edge, ...driving].join(' · '), { x: 0, y }),
  );
}

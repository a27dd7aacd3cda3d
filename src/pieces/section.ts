/**
 * The whole vessel as a picture to a standard scale: seen from outside on the left of its axis, cut on the right.
 * `x` is the distance from the axis and `y` the height from mid-height, both times the scale.
 */
import type { Curve, Point } from '../geometry/curve.js';
import { line, polygon } from '../geometry/curve.js';
import { scale as enlarged } from '../geometry/transform.js';
import { drawingOf, leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { shortLengthText } from '../drawing/length-text.js';
import { scaleText } from '../drawing/scale.js';
import type { Head } from '../vessel/head.js';
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import { hatch } from './hatch.js';
import { dowelsBehind, headCut, jointCuts, staveCut, strapCorners } from './section-cut.js';
import { seenEdges, seenJoints } from './section-outside.js';
import { partsOf, partsTable, type PartItem } from './section-parts.js';
import { pictureScale, scaledLines, scaledPoint } from './section-scale.js';
import { spread } from './spread.js';
import type { Words } from './words/index.js';

/** Paper that figures and numbers take up beside and below the picture, mm. */
const beside = { width: 32, height: 23 };
/** From the picture to the first dimension line, and from line to line, mm. */
const row = 9.5;
const overrun = 1.5;
const hatching = 2;

interface View {
  readonly vessel: Vessel;
  readonly words: Words;
  readonly scale: number;
  readonly parts: readonly PartItem[];
  readonly text: (mm: number) => string;
}

export function section(vessel: Vessel, words: Words): Drawing {
  const { spec, profile } = vessel;
  const width = 2 * profile.radius(widestHeight(spec));
  const scale = pictureScale({ width, height: spec.height }, beside, spec.units);
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const view: View = { vessel, words, scale, text, parts: partsOf(vessel, words) };
  const part = merge(
    cutFaces(view),
    scaledLines('joint', scale, seenEdges(vessel, scale)),
    scaledLines('station', scale, [...seenJoints(vessel, scale), ...insideEdges(vessel)]),
    axes(view),
    outerDimensions(view),
    innerDimension(view),
    hoopNumbers(view),
    innerNumbers(view),
  );
  return { ...drawingOf('section', words.section.title, part, legendOf(view)), scale };
}

const presentHeads = ({ heads }: Vessel): Head[] =>
  [heads.top, heads.bottom].filter((head): head is Head => head !== null);

function cutFaces({ vessel, scale }: View): Part {
  const heads = presentHeads(vessel);
  const wood = [staveCut(vessel, scale), heads.map(headCut)] as const;
  const [staves, boards] = wood.map((faces) => faces.map((face) => enlarged(face, scale)));
  const straps = vessel.hoops.map((hoop) => polygon(strapCorners(hoop)));
  const slope = Math.PI / 4;
  return merge(
    strokes('outline', ...staves!, ...boards!),
    scaledLines('outline', scale, straps),
    strokes('dimension', ...staves!.flatMap((face) => hatch(face, slope, hatching))),
    strokes('dimension', ...boards!.flatMap((face) => hatch(face, -slope, hatching))),
    scaledLines('joint', scale, heads.flatMap(jointCuts)),
    scaledLines('bore', scale, heads.flatMap(dowelsBehind)),
  );
}

/** Seen past the plane: the end planes' inner edges, and the edge of each howel where the head does not hide it. */
function insideEdges(vessel: Vessel): Curve[] {
  const { heads, spec, wall } = vessel;
  const level = (x: number, y: number): Curve => line({ x: 0, y }, { x, y });
  const ends = [heads.top, heads.bottom].map((head, i) => {
    const plane = (i === 0 ? 1 : -1) * (spec.height / 2);
    return level(head?.groove.chime?.endRadius ?? wall.insideRadius(plane), plane);
  });
  const howels = presentHeads(vessel)
    .filter(({ groove, insideFace }) => (insideFace - groove.howelTo) * groove.towardsEnd > 1)
    .map(({ groove }) => level(groove.howelRadius(groove.howelTo), groove.howelTo));
  return [...ends, ...howels];
}

/** The vessel's axis, and the bung hole's. */
function axes({ vessel, scale }: View): Part {
  const { spec, wall, profile } = vessel;
  const reach = (spec.height / 2) * scale + overrun;
  const bung = spec.bung
    ? [
        line(
          { x: wall.insideRadius(0) * scale - overrun, y: 0 },
          { x: profile.radius(0) * scale + overrun, y: 0 },
        ),
      ]
    : [];
  return strokes('centre', line({ x: 0, y: -reach }, { x: 0, y: reach }), ...bung);
}

/** The height on the right; the bottom's diameter below; a cask's greatest diameter below that, a tub's top above. */
function outerDimensions({ vessel, words, scale, text }: View): Part {
  const { spec, profile } = vessel;
  const end = spec.height / 2;
  const at = (x: number, y: number): Point => scaledPoint({ x, y }, scale);
  const across = (height: number, y: number): Part => {
    const radius = profile.radius(height);
    const size = words.section.diameter(text(2 * radius));
    return dimensionLine(size, at(-radius, height), at(radius, height), { x: 0, y });
  };
  const [low, high] = [-end * scale, end * scale];
  const right = profile.radius(widestHeight(spec)) * scale + row;
  return merge(
    dimensionLine(
      text(spec.height),
      at(profile.radius(-end), -end),
      at(profile.radius(end), end),
      { x: right, y: 0 },
      { angle: Math.PI / 2 },
    ),
    across(-end, low - row),
    spec.vessel === 'cask' ? across(0, low - 2 * row) : across(end, high + row),
  );
}

/** From the bottom's inside face to the top head's, or to a tub's rim. */
function innerDimension({ vessel, scale, text }: View): Part {
  const { top, bottom } = vessel.heads;
  const low = bottom.insideFace;
  const high = top ? top.insideFace : vessel.spec.height / 2;
  const x = Math.max(0.25 * bottom.rim.along * scale, 9) / scale;
  return dimensionLine(
    text(high - low),
    scaledPoint({ x, y: low }, scale),
    scaledPoint({ x, y: high }, scale),
    { x: x * scale, y: 0 },
    { angle: Math.PI / 2 },
  );
}

const small = { height: heights.small };

/** Left of the vessel, at each hoop: its number and how far it lies from its end. */
function hoopNumbers({ vessel, words, scale, parts, text }: View): Part {
  const { profile, spec } = vessel;
  const x = -profile.radius(widestHeight(spec)) * scale - 4;
  const middle = (hoop: (typeof vessel.hoops)[number]): number =>
    ((hoop.nearHeight + hoop.farHeight) / 2) * scale;
  const ordered = [...vessel.hoops].sort((a, b) => middle(a) - middle(b));
  const places = spread(ordered.map(middle), 4.5);
  return merge(
    ...ordered.map((hoop, i) => {
      const item = parts.find(({ hoops }) => hoops.includes(hoop))!.item;
      const [, , far, near] = strapCorners(hoop);
      const target = scaledPoint({ x: -(near.x + far.x) / 2, y: (near.y + far.y) / 2 }, scale);
      const words_ = words.section.hoop(item, text(hoop.spec.offset));
      const at = { x, y: places[i]! - heights.small / 2 };
      return leaderLabel(words_, at, target, { ...small, align: 'right' });
    }),
  );
}

/** Inside the vessel: the numbers of stave, heads and bung hole. */
function innerNumbers({ vessel, words, scale, parts }: View): Part {
  const { wall, spec } = vessel;
  const head = (each: Head): Part => {
    const x = 0.6 * each.rim.along * scale;
    const y = each.insideFace * scale;
    const away = -each.groove.towardsEnd * 9;
    const item = parts.find(({ heads }) => heads.includes(each))!.item;
    return leaderLabel(item, { x, y: y + away - 1 }, { x: x + 5, y }, small);
  };
  const inWall = (item: string, y: number): Part => {
    const target = { x: wall.insideRadius(y) * scale, y: y * scale };
    return leaderLabel(item, { x: target.x - 12, y: target.y - 5 }, target, small);
  };
  const bung = parts.find(({ part }) => part === words.section.parts.bung);
  return merge(
    ...presentHeads(vessel).map(head),
    inWall('1', spec.height * 0.18),
    spec.bung && bung ? inWall(bung.item, -spec.bung.diameter / 2) : merge(),
  );
}

function legendOf({ vessel, words, scale, parts }: View): Drawing['legend'] {
  const { notes } = words.section;
  const { bung, vessel: kind } = vessel.spec;
  return {
    notes: [
      notes.picture(scaleText(scale)),
      notes.views(bung ? notes.bungStave : notes.anyStave),
      notes.lines,
      notes.items,
      kind === 'cask' ? notes.heights : notes.depth,
    ],
    tables: [partsTable(parts, vessel, words)],
  };
}

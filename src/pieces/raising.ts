/**
 * The ring before it is bent, as a picture to a standard scale: straight staves standing in the raising hoop, seen from
 * the front. `y` is the height above the free end, times the scale.
 */
import type { Curve, Point } from '../geometry/curve.js';
import { line, polygon } from '../geometry/curve.js';
import type { SmoothCurve } from '../geometry/fit.js';
import { drawingOf, leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import type { Drawing, Table } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, lengthText, shortLengthText } from '../drawing/length-text.js';
import { scaleText } from '../drawing/scale.js';
import { raisingOf, type Raising } from '../vessel/raising.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { pictureArcs, pictureScale, scaledLines } from './section-scale.js';
import type { Words } from './words/index.js';

/** Paper that figures and words take up beside, above and below the picture, mm. */
const beside = { width: 50, height: 36 };
const row = 9.5;
/** The raising hoop as it is drawn: its width as a share of the vessel's height, and its thickness in mm. */
const strap = { share: 0.045, thickness: 3 };
/** Joints that open by less than this on paper are drawn as one line, mm. */
const leastGap = 0.15;

interface View {
  readonly vessel: Vessel;
  readonly raising: Raising;
  readonly words: Words;
  readonly scale: number;
  readonly text: (mm: number) => string;
  /** what all staves share at a station; their edges are followed through the same ones */
  readonly rowAt: (station: number) => Row;
}

interface Row {
  readonly radius: number;
  readonly depth: number;
  /** the section that the station is bent to */
  readonly section: number;
}

export function raising(vessel: Vessel, words: Words): Drawing {
  const ring = raisingOf(vessel);
  const { spec } = vessel;
  const ends = [ring.raisedStation, ring.freeStation].map((s) => ring.place(s).radius);
  const size = { width: 2 * Math.max(...ends), height: ring.height };
  const scale = pictureScale(size, beside, spec.units);
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const view: View = { vessel, raising: ring, words, scale, text, rowAt: rowsOf(vessel, ring) };
  const { title, titleStraight } = words.section.raising;
  const heading = spec.vessel === 'cask' ? title : titleStraight;
  const part = merge(
    scaledLines('joint', scale, [...staveEdges(view), hoopOutline(view)]),
    strokes('centre', line({ x: 0, y: -2 }, { x: 0, y: ring.height * scale + 2 })),
    dimensions(view),
    labels(view),
  );
  return { ...drawingOf('raising', heading, part, legendOf(view)), scale };
}

interface Placed {
  readonly stave: Stave;
  /** of its middle, from the viewer, counted to the right */
  readonly azimuth: number;
}

/** The staves in front, the first of the ring in the middle, from the left to the right. */
function inFront({ staves }: Vessel): Placed[] {
  let azimuth = -staves[0]!.alpha;
  const placed = staves.map((stave) => {
    const middle = azimuth + stave.alpha;
    azimuth += 2 * stave.alpha;
    return { stave, azimuth: middle > Math.PI ? middle - 2 * Math.PI : middle };
  });
  return placed
    .filter((each) => Math.cos(each.azimuth) > 0.02)
    .sort((a, b) => a.azimuth - b.azimuth);
}

/** Every stave's ends and edges, above the hoop and below it; closed joints are drawn once. */
function staveEdges(view: View): Curve[] {
  const { vessel, raising: ring, scale } = view;
  const staves = inFront(vessel);
  const [above, below] = hoopStations(view);
  const runs = [
    [ring.freeStation, below],
    [above, ring.raisedStation],
  ] as const;
  const edges = runs.flatMap(([from, to]) => {
    const end = from === ring.freeStation ? from : to;
    const closed = ring.place(end).gap * scale < leastGap;
    return staves.flatMap((each, i) => {
      const sides = closed && i < staves.length - 1 ? [-1] : [-1, 1];
      return sides.map((side) => ({
        closed: false,
        vertices: pictureArcs(edgeOf(view, each, side), from, to, scale),
      }));
    });
  });
  const ends = [ring.freeStation, ring.raisedStation].flatMap((station) =>
    staves.map((each) =>
      line(...([-1, 1].map((side) => edgeOf(view, each, side).at(station)) as [Point, Point])),
    ),
  );
  return [...edges, ...ends];
}

/** One edge of a stave's outer face as it is seen, by the station; its direction by a difference. */
function edgeOf(
  { rowAt, raising: ring }: View,
  { stave, azimuth }: Placed,
  side: number,
): SmoothCurve {
  const at = (station: number): Point => {
    const { radius, depth, section } = rowAt(station);
    const half = stave.halfWidth(section, 0);
    return {
      x: radius * Math.sin(azimuth) + side * half * Math.cos(azimuth),
      y: ring.height - depth,
    };
  };
  const step = 0.05;
  return {
    at,
    tangent: (station) => {
      const [before, after] = [at(station - step), at(station + step)];
      return { x: after.x - before.x, y: after.y - before.y };
    },
  };
}

function rowsOf({ bend }: Vessel, ring: Raising): (station: number) => Row {
  const rows = new Map<number, Row>();
  return (station) => {
    const known = rows.get(station);
    if (known) return known;
    const { radius, depth } = ring.place(station);
    const row = { radius, depth, section: bend.sectionAtStation(station) };
    rows.set(station, row);
    return row;
  };
}

/** Stations of the hoop's upper and lower edge. */
function hoopStations({ vessel, raising: ring }: View): [number, number] {
  const half = (strap.share * vessel.spec.height) / 2;
  return [ring.hoopStation + half, ring.hoopStation - half];
}

function hoopOutline(view: View): Curve {
  const { vessel, raising: ring } = view;
  const corner = (station: number, side: number): Point => {
    const { radius, depth } = ring.place(station);
    const outer = radius / Math.cos(vessel.ring.widestAlpha) + strap.thickness;
    return { x: side * outer, y: ring.height - depth };
  };
  const [above, below] = hoopStations(view);
  return polygon([corner(below, -1), corner(below, 1), corner(above, 1), corner(above, -1)]);
}

/** Diameters across both ends, and the height on the right. */
function dimensions({ raising: ring, words, scale, text }: View): Part {
  const at = (station: number, side: number): Point => {
    const { radius, depth } = ring.place(station);
    return { x: side * radius * scale, y: (ring.height - depth) * scale };
  };
  const across = (station: number, y: number): Part => {
    const size = words.section.diameter(text(2 * ring.place(station).radius));
    return dimensionLine(size, at(station, -1), at(station, 1), { x: 0, y });
  };
  const [high, low] = [ring.raisedStation, ring.freeStation];
  const right = Math.max(at(high, 1).x, at(low, 1).x) + row;
  return merge(
    across(high, ring.height * scale + row),
    across(low, -1.6 * row),
    dimensionLine(
      text(ring.height),
      at(low, 1),
      at(high, 1),
      { x: right, y: 0.5 * ring.height * scale },
      { angle: Math.PI / 2 },
    ),
  );
}

const small = { height: heights.small };

/** The hoop on the left; the open joint below, at the free end. */
function labels({ vessel, raising: ring, words, scale, text }: View): Part {
  const say = words.section.raising;
  const hoop = ring.place(ring.hoopStation);
  const hoopTarget = {
    x: (-hoop.radius / Math.cos(vessel.ring.widestAlpha) - strap.thickness) * scale,
    y: (ring.height - hoop.depth) * scale,
  };
  const hoopAt = { x: hoopTarget.x - 7, y: hoopTarget.y - heights.small / 2 };
  const hoopText = say.hoop(text(ring.hoop.flatGirth / Math.PI));
  const free = ring.place(ring.freeStation);
  const gapTarget = { x: -free.radius * Math.sin(vessel.staves[0]!.alpha) * scale, y: 0 };
  const gapAt = { x: -free.radius * scale + 2, y: -6.5 };
  return merge(
    leaderLabel(hoopText, hoopAt, hoopTarget, { ...small, align: 'right' }),
    free.gap * scale < leastGap
      ? merge()
      : leaderLabel(say.gap(text(free.gap)), gapAt, gapTarget, small),
  );
}

function legendOf(view: View): Drawing['legend'] {
  const { vessel, raising: ring, words, scale } = view;
  const { notes } = words.section.raising;
  const cask = vessel.spec.vessel === 'cask';
  const lean = notes.lean(angleText(ring.lean), (100 * Math.sin(ring.lean)).toFixed(2));
  return {
    notes: [
      notes.picture(scaleText(scale)),
      ...(cask ? [notes.cask, lean, notes.why] : [notes.tub]),
      notes.measure,
      notes.stand,
    ],
    tables: [girths(view)],
  };
}

function girths({ vessel, raising: ring, words, text }: View): Table {
  const { title, headings, raised, hoop, bilge, middle, free } = words.section.raising.table;
  const { units } = vessel.spec;
  const places = [
    [raised, ring.raisedStation],
    [hoop, ring.hoopStation],
    [vessel.spec.vessel === 'cask' ? bilge : middle, 0],
    [free, ring.freeStation],
  ] as const;
  const rows = places.map(([name, station]) => {
    const { radius, girth, widths, gap } = ring.place(station);
    return [
      name,
      text(ring.raisedStation - station),
      text(2 * radius),
      lengthText(girth, units),
      text(widths),
      shortLengthText(Math.abs(gap), units, 2),
    ];
  });
  return { title, headings: headings(words.unitNames[units]), rows };
}

/** Nested outlines for staves of uneven width: one pattern that serves every width on the rack. */
import type { Curve, Vertex } from '../geometry/curve.js';
import { line, polyline } from '../geometry/curve.js';
import { drawingOf, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, lengthText, shortLengthText } from '../drawing/length-text.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { closed, mirrored, upperEdge } from './stave-outline.js';
import { ordinaryRange, widthSteps } from './stave-widths.js';
import { spread } from './spread.js';
import type { Words } from './words/index.js';

const pitch = 5;
const fanOut = 10;

export function staveFan(vessel: Vessel, words: Words, range = ordinaryRange(vessel)): Drawing {
  const staves = widthSteps(range, vessel.spec.units).map((width) => vessel.staveOfWidth(width));
  const longest = staves.reduce((a, b) => (b.blankEnds.top.outer > a.blankEnds.top.outer ? b : a));
  // one length for all: the narrower ones are a hair shorter, and are trimmed after bending like the rest
  const edges = staves.map((stave) =>
    upperEdge(vessel, { ...stave, blankEnds: longest.blankEnds }, 'outer'),
  );
  const outermost = edges.at(-1)!;
  const [from, to] = [outermost[0]!.x, outermost.at(-1)!.x];
  const top = Math.max(...outermost.map(({ y }) => y));
  const part = merge(
    strokes('outline', closed(outermost)),
    strokes('station', ...edges.slice(0, -1).flatMap(bothSides)),
    strokes('centre', line({ x: from - 6, y: 0 }, { x: to + 6, y: 0 })),
    strokes('station', line({ x: 0, y: -top }, { x: 0, y: top })),
    labels(vessel, staves, edges, words),
  );
  return drawingOf('stave-fan', words.fan.title, part, legend(vessel, staves, words));
}

function bothSides(edge: readonly Vertex[]): Curve[] {
  return [edge, mirrored(edge)].map((vertices) => ({ closed: false, vertices }));
}

/** Beyond the top end: each width on a leader from the end of its own line. */
function labels(
  { spec }: Vessel,
  staves: readonly Stave[],
  edges: readonly Vertex[][],
  words: Words,
): Part {
  const ends = edges.map((edge) => edge.at(-1)!);
  const places = spread(
    ends.map(({ y }) => y),
    pitch,
  );
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const letterings = staves.map((stave, i) => {
    const [end, y] = [ends[i]!, places[i]!];
    const x = end.x + fanOut;
    return {
      text: words.fan.label(
        text(stave.width),
        angleText(stave.bevel(0)),
        text(stave.blankThickness),
      ),
      at: { x: x + 5, y: y - heights.small / 2 },
      height: heights.small,
      align: 'left' as const,
      angle: 0,
      leader: polyline([
        { x: end.x + 1, y: end.y },
        { x, y },
        { x: x + 4, y },
      ]),
    };
  });
  return { strokes: [], letterings };
}

function legend(vessel: Vessel, staves: readonly Stave[], words: Words): Legend {
  const { units, height } = vessel.spec;
  const { notes, table } = words.fan;
  const rows = staves.map((stave) => [
    lengthText(stave.width, units),
    shortLengthText(2 * stave.halfWidth(height / 2, 0), units),
    angleText(stave.bevel(0)),
    angleText(stave.bevel(height / 2)),
    shortLengthText(stave.blankThickness, units),
  ]);
  const headings = table.headings(words.unitNames[units]);
  return {
    notes: [notes.use, notes.cut, notes.why, words.caution.machines],
    tables: [{ title: table.title, headings, rows }],
  };
}

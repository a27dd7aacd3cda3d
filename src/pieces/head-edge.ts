/** Section of the head's rim in its groove, full size: `x` from the groove's bottom outwards, `y` from the end plane. */
import type { Point } from '../geometry/curve.js';
import { line } from '../geometry/curve.js';
import { drawingOf, leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import type { Drawing } from '../drawing/drawing.js';
import { angleText, shortLengthText } from '../drawing/length-text.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { headOutline, sectionPlace, staveEndOutline, type Section } from './edge-section.js';
import { namedHeads } from './head-names.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** Distance between the lines of labels, and between the columns of dimensions. */
const row = 8;
const column = 12;

interface View {
  readonly vessel: Vessel;
  readonly head: Head;
  readonly section: Section;
  readonly words: Words;
  readonly text: (mm: number) => string;
}

export function headEdges(vessel: Vessel, words: Words): Drawing[] {
  return namedHeads(vessel, words).map(({ head, name, title }) => {
    const heading = name === 'head' ? words.edge.title : words.edge.titleOf(title);
    const text = (mm: number): string => shortLengthText(mm, vessel.spec.units);
    const view = { vessel, head, section: headOutline(head), words, text };
    return drawingOf(`${name}-edge`, heading, edgePart(view), legend(view));
  });
}

function edgePart(view: View): Part {
  const { vessel, head, section } = view;
  const stave = staveEndOutline(vessel, head);
  const outermost = Math.max(...stave.vertices.map(({ x }) => x));
  const axisY = -head.groove.towardsEnd * head.spec.croze.inset;
  return merge(
    strokes('outline', stave, section.outline),
    strokes('centre', line({ x: -head.groove.lipDepth - 4, y: axisY }, { x: 4, y: axisY })),
    heightDimensions(view, outermost),
    headDimensions(view),
    nearEndLabels(view),
    farLabels(view),
  );
}

/** Beside the outside of the stave: how deep below the end plane chime, groove and howel lie. */
function heightDimensions({ vessel, head, text }: View, outermost: number): Part {
  const { groove } = head;
  const depths = [
    ...(groove.chime ? [groove.chime.footHeight] : []),
    groove.middle,
    groove.howelTo,
  ];
  return merge(
    ...depths.map((height, i) => {
      const { y } = sectionPlace(vessel, head, groove.radius, height);
      const through = { x: outermost + column * (i + 1), y: 0 };
      const options = { angle: Math.PI / 2 };
      return dimensionLine(
        text(Math.abs(y)),
        { x: outermost, y: 0 },
        { x: outermost, y },
        through,
        options,
      );
    }),
  );
}

/** Beside the break: the head's thickness. */
function headDimensions({ head, section, text }: View): Part {
  const { left, faces } = section;
  const [from, to] = [faces.inside, faces.outside].map((y) => ({ x: left, y })) as [Point, Point];
  const options = { angle: Math.PI / 2 };
  return dimensionLine(text(head.spec.thickness), from, to, { x: left - column, y: 0 }, options);
}

interface Pointed {
  readonly text: string;
  readonly target: Point;
}

/** Past the end plane: chime, land, outer bevel. */
function nearEndLabels(view: View): Part {
  const { vessel, head, words, text } = view;
  const { groove, spec } = head;
  const up = groove.towardsEnd;
  const rim = head.diameter / 2 - groove.radius;
  const landTop = -up * (spec.croze.inset - spec.edge.thickness / 2);
  const { chime } = groove;
  const between = chime && {
    radius: (chime.endRadius + chime.footRadius) / 2,
    height: ((up * vessel.spec.height) / 2 + chime.footHeight) / 2,
  };
  const chimeText = words.edge.chime(
    angleText(vessel.spec.chime.bevel, 0),
    text(vessel.spec.chime.flat),
  );
  const labels: Pointed[] = [
    ...(between
      ? [{ text: chimeText, target: sectionPlace(vessel, head, between.radius, between.height) }]
      : []),
    {
      text: words.edge.land(
        text(spec.edge.thickness),
        text(head.landDepth),
        text(spec.edge.fromInside),
      ),
      target: { x: rim - head.landDepth * 0.6, y: landTop },
    },
    {
      text: words.edge.outerBevel(text(spec.edge.outerBevel)),
      target: {
        x: rim - (spec.edge.outerBevel + head.landDepth) / 2,
        y: (landTop + view.section.faces.outside) / 2,
      },
    },
  ];
  return labelColumn(labels.reverse(), view, up * row, up);
}

/** Past the head's inside face: inner bevel, groove, howel. */
function farLabels(view: View): Part {
  const { vessel, head, words, text, section } = view;
  const { groove, spec } = head;
  const up = groove.towardsEnd;
  const rim = head.diameter / 2 - groove.radius;
  const landFoot = -up * (spec.croze.inset + spec.edge.thickness / 2);
  const howel = (groove.innerLip + 3 * groove.howelTo) / 4;
  const labels: Pointed[] = [
    {
      text: words.edge.innerBevel(text(spec.edge.innerBevel)),
      target: {
        x: rim - (spec.edge.innerBevel + head.landDepth) / 2,
        y: (landFoot + section.faces.inside) / 2,
      },
    },
    {
      text: words.edge.groove(text(groove.width), text(spec.croze.depth)),
      target: sectionPlace(vessel, head, groove.radius - groove.lipDepth / 2, groove.innerLip),
    },
    {
      text: words.edge.howel(text(vessel.spec.howel.depth)),
      target: sectionPlace(vessel, head, groove.howelRadius(howel), howel),
    },
  ];
  return labelColumn(labels, view, section.faces.inside - up * 2 * row, up > 0 ? -1 : 1);
}

/** A column of labels left of the groove, from a height onwards. */
function labelColumn(
  labels: readonly Pointed[],
  { section }: View,
  from: number,
  step: 1 | -1,
): Part {
  const x = section.left * 0.55;
  return merge(
    ...labels.map(({ text, target }, i) =>
      leaderLabel(text, { x, y: from + step * row * i - 1.75 }, target, { align: 'right' }),
    ),
  );
}

function legend({ vessel, head, words }: View): Drawing['legend'] {
  const { notes } = words.edge;
  const radius = withUnit(head.groove.radius, vessel.spec.units, words);
  return {
    notes: [notes.section, notes.order, notes.compass(radius), notes.clear, notes.tools],
    tables: [],
  };
}

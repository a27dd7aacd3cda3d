/** The lines across a stave: stations with their numbers, hoops, groove and howel, end planes. */
import { angleText, shortLengthText } from '../drawing/length-text.js';
import type { End } from '../spec/spec.js';
import type { Head } from '../vessel/head.js';
import { stationsOf } from '../vessel/stations.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import type { CrossLine } from './crosswise.js';
import type { Words } from './words/index.js';

/** Width, bevel and thickness at every station, for above the stave. */
export function stationLines(vessel: Vessel, stave: Stave, words: Words): CrossLine[] {
  const text = (mm: number): string => shortLengthText(mm, vessel.spec.units);
  const overlong = vessel.spec.staves.ends === 'overlong';
  const stations = stationsOf(vessel, stave);
  return stations.map(({ s, width, bevel, thickness }, i) => {
    // a cut stave ends here: its outline already draws this line
    const isCutEnd = !overlong && (i === 0 || i === stations.length - 1);
    return {
      x: s,
      half: isCutEnd ? 0 : width / 2,
      text: words.stave.station(text(s), text(width), angleText(bevel), text(thickness)),
    };
  });
}

/** Hoops on the outer face, groove and howel at the depth of the finished inside, end planes: for below the stave. */
export function featureLines(vessel: Vessel, stave: Stave, words: Words): CrossLine[] {
  return [
    ...hoopLines(vessel, stave, words),
    ...grooveLines(vessel, stave, words),
    ...endLines(vessel, stave, words, 'top'),
    ...endLines(vessel, stave, words, 'bottom'),
  ];
}

function hoopLines({ hoops, bend }: Vessel, stave: Stave, words: Words): CrossLine[] {
  return hoops.flatMap((hoop) =>
    [hoop.nearHeight, hoop.farHeight].map((z) => ({
      x: bend.station(z),
      half: stave.halfWidth(z, 0),
      text: words.stave.hoopEdge(hoop.spec.name),
    })),
  );
}

/** The same height lies at another station on the inner face: each place is found in the section whose inside is there. */
function grooveLines({ heads, bend, wall }: Vessel, stave: Stave, words: Words): CrossLine[] {
  const lineAt = (height: number, text: string): CrossLine => {
    const z = wall.sectionAt(height, wall.thickness);
    return { x: bend.station(z), half: stave.halfWidth(z, wall.thickness(z)), text };
  };
  const present = [heads.top, heads.bottom].filter((head): head is Head => head !== null);
  return present.flatMap(({ groove }) => [
    lineAt(groove.outerLip, words.stave.groove),
    lineAt(groove.innerLip, words.stave.groove),
    lineAt(groove.howelTo, words.stave.howel),
  ]);
}

function endLines(vessel: Vessel, stave: Stave, words: Words, end: End): CrossLine[] {
  const { spec, bend, wall } = vessel;
  const cut = stave.ends[end];
  const angle = angleText(cut.angle, 1);
  const name = words.ends[end];
  const blankEnd = stave.blankEnds[end].outer;
  if (spec.staves.ends === 'cut') {
    return [{ x: cut.outerStation, half: 0, text: words.stave.cutEnd(name, angle) }];
  }
  const plane = end === 'top' ? spec.height / 2 : -spec.height / 2;
  const inner = wall.sectionAt(plane, stave.blankThicknessAt);
  const trim = shortLengthText(spec.staves.trim, spec.units);
  const sameStation = Math.abs(cut.innerStation - cut.outerStation) < 1e-6;
  const innerLine = {
    x: bend.station(inner),
    half: stave.halfWidth(inner, stave.blankThicknessAt(inner)),
    text: words.stave.innerEnd(name, angle),
  };
  return [
    { x: cut.outerStation, half: 0, text: words.stave.outerEnd(name) },
    ...(sameStation ? [] : [innerLine]),
    { x: blankEnd, half: 0, text: words.stave.blankEnd(trim) },
  ];
}

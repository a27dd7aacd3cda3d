/** Beside the plan of a chosen set: how to set it up, how sure it is, and the checklist. */
import type { Legend, Table } from '../drawing/drawing.js';
import { lengthText, shortLengthText } from '../drawing/length-text.js';
import { scaleText } from '../drawing/scale.js';
import type { Cure } from '../rack/request.js';
import { decimalsOf, runningTotals } from '../sets/running-totals.js';
import { greatestDiameter } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import type { RingView } from './setting-view.js';
import { withUnit } from './with-unit.js';

export function settingLegend(view: RingView): Legend {
  const { plan, words, scale } = view;
  const { notes } = words.setting;
  const { staves, heads } = plan.vessel.spec;
  const first = plan.set.staves[0]!.mark;
  const isBung = plan.set.bungStave !== null;
  const hasBoards = [heads.top, heads.bottom].some((head) => head && head.boards > 1);
  return {
    notes: [
      notes.picture(scaleText(scale)),
      notes.order(isBung ? notes.bungStave(first) : notes.firstStave(first)),
      closing(view),
      planing(view),
      notes.bench(length(view, plan.set.laidWidth)),
      ...plan.set.cures.map((cure) => cured(view, cure)),
      measured(view),
      ...(hasBoards ? [notes.headJoints] : []),
      ...(staves.outside === 'flat' ? [notes.flat(small(view, greatestStep(plan.vessel), 1))] : []),
      notes.caution,
    ],
    tables: [checklist(view)],
  };
}

const length = ({ plan, words }: RingView, mm: number): string =>
  words.typeset(withUnit(mm, plan.vessel.spec.units, words));

/** For differences, which are too small for fractions of an inch. */
const small = ({ plan: { vessel }, words }: RingView, mm: number, decimals = 2): string => {
  const { units } = vessel.spec;
  return words.typeset(`${shortLengthText(mm, units, decimals)} ${words.unitNames[units]}`);
};

function closing(view: RingView): string {
  const { plan, words } = view;
  const { notes } = words.setting;
  const { closesAt, standardDeviation } = plan.set;
  const off = closesAt - greatestDiameter(plan.vessel.spec);
  const by = small(view, Math.abs(off));
  const exact = Math.abs(off) < 0.005;
  const how = exact ? notes.exact : off > 0 ? notes.wider(by) : notes.narrower(by);
  return notes.closes(length(view, closesAt), how, small(view, standardDeviation));
}

function planing(view: RingView): string {
  const { notes } = view.words.setting;
  const planed = view.plan.set.staves.filter(({ planeOff }) => planeOff > 0);
  if (planed.length === 0) return notes.asMarked;
  const total = planed.reduce((sum, { planeOff }) => sum + planeOff, 0);
  return notes.plane(notes.planeCount(planed.length), small(view, total));
}

function cured(view: RingView, { closes, takeOut, putIn, changesBy }: Cure): string {
  const { notes } = view.words.setting;
  const say = closes === 'large' ? notes.cureLarge : notes.cureSmall;
  return say(takeOut, putIn, small(view, Math.abs(changesBy)));
}

function measured(view: RingView): string {
  const { words } = view;
  const { measure, unevenJoints, imbalance, narrowPairs, jointsInLine } = view.plan.set.ring;
  const text = (mm: number): string => small(view, mm, 1);
  const inLine = words.typeset(jointsInLine.toFixed(1));
  return words.setting.notes.measure(
    measure.toFixed(1),
    text(unevenJoints),
    text(imbalance),
    narrowPairs,
    inLine,
  );
}

function checklist({ plan, words }: RingView): Table {
  const { units } = plan.vessel.spec;
  const { checklist: say } = words.setting;
  const totals = runningTotals(plan.set);
  const decimals = decimalsOf(plan.set);
  const rows = plan.set.staves.map(({ mark, width, planeOff }, i) => [
    String(i + 1),
    mark,
    words.typeset(lengthText(width, units, decimals)),
    planeOff > 0 ? words.typeset(shortLengthText(planeOff, units, 2)) : '0',
    words.typeset(shortLengthText(totals[i]!, units, decimals)),
    '',
    '',
  ]);
  // a ring of 30 staves stays on one sheet, to be carried to the rack
  return { title: say.title, headings: say.headings(words.unitNames[units]), rows, close: true };
}

/** Between two flat faces that touch the same circle at their middles, at their joint. */
function greatestStep({ staves, ring }: Vessel): number {
  const corners = staves.map(({ alpha }) => ring.closesAt / 2 / Math.cos(alpha));
  return Math.max(...corners.map((corner, i) => Math.abs(corner - corners.at(i - 1)!)));
}

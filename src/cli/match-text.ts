/** The sets that a rack gives, for people: a table for each, in the units of the spec. */
import { decimalsOf, lengthText, runningTotals, shortLengthText } from '../index.js';
import type { Cure, MatchRequest, MatchResult, MatchedSet, Spec } from '../index.js';
import { columns, pairs } from './columns.js';
import type { MatchWords } from './match-words.js';
import { oneLine } from './say.js';

interface Told {
  readonly spec: Spec;
  readonly request: MatchRequest;
  readonly result: MatchResult;
  readonly words: MatchWords;
  /** how many staves the list has */
  readonly staves: number;
}

export function matchText(told: Told): string {
  const { spec, request, result, words } = told;
  return [
    [spec.title, asked(told), words.measured[request.measured], found(told)].map(oneLine).join(''),
    ...result.sets.map((set, i) => setText(told, set, i + 1)),
    rest(told),
    shortfallText(told),
    result.sets.length > 0 ? words.legend.map(oneLine).join('') : '',
  ]
    .filter((section) => section !== '')
    .join('\n');
}

const lengthIn = (
  { spec: { units }, words }: Pick<Told, 'spec' | 'words'>,
  mm: number,
  decimals = 1,
): string => `${words.typeset(shortLengthText(mm, units, decimals))} ${units}`;

function asked(told: Told): string {
  const { words } = told;
  const { diameter, tolerance, count, plane, bung } = told.request;
  const text = (mm: number): string => lengthIn(told, mm);
  return words.asked(
    text(diameter),
    lengthIn(told, tolerance, 2),
    count.min === count.max ? String(count.min) : `${count.min}-${count.max}`,
    text(plane),
    bung === null ? words.noBung : words.bungOf(text(bung)),
  );
}

function found({ request, result, words, staves }: Told): string {
  const { sets, proven, provenBest, upperBound } = result;
  const wanted = request.vessels === 'max' ? null : request.vessels;
  const parts = [words.found(sets.length, wanted, staves)];
  const isAll = sets.length === wanted;
  if (!isAll) parts.push(proven ? words.proven(upperBound) : words.bound(upperBound));
  if (provenBest && sets.length > 0) parts.push(words.best);
  return parts.join('; ');
}

function setText(told: Told, set: MatchedSet, number: number): string {
  const { words, spec } = told;
  const { names } = words;
  const bung = set.staves.find(({ mark }) => mark === set.bungStave);
  const cures = set.cures.map((cure) => [names[cure.closes], cureText(told, cure)] as const);
  const facts: (readonly [string, string])[] = [
    [names.closes, closing(told, set)],
    [names.staves, words.staves(set.count, lengthIn(told, set.laidWidth))],
    ...(bung
      ? [[names.bungStave, words.bungStave(bung.mark, lengthIn(told, bung.width))] as const]
      : []),
    [names.order, order(told, set)],
    ...cures,
  ];
  const heading = `${words.set(number)}\n`;
  const tidy = facts.map(([name, text]) => [name, oneLine(text).trimEnd()] as const);
  return heading + pairs(tidy) + staveTable(set, spec, words);
}

function closing(told: Told, { closesAt, standardDeviation }: MatchedSet): string {
  const off = closesAt - told.request.diameter;
  const sign = off < -0.005 ? '' : '+';
  const written = `${sign}${lengthIn(told, Math.abs(off) < 0.005 ? 0 : off, 2)}`;
  const sure = lengthIn(told, standardDeviation, 2);
  return told.words.closes(lengthIn(told, closesAt, 2), sure, written);
}

function order(told: Told, { ring, ringMeasure }: MatchedSet): string {
  const { words } = told;
  const { order: say, orderParts } = words;
  const { unevenJoints, imbalance, lowNeighbours, narrowPairs, jointsInLine } = ring;
  const parts = [
    orderParts.joints(lengthIn(told, unevenJoints)),
    orderParts.balance(lengthIn(told, imbalance)),
    ...(lowNeighbours > 0 ? [orderParts.neighbours(lengthIn(told, lowNeighbours))] : []),
    orderParts.pairs(narrowPairs),
    orderParts.inLine(words.typeset(jointsInLine.toFixed(1))),
  ];
  return say(words.typeset(ringMeasure.toFixed(1)), parts.join(', '));
}

function cureText(told: Told, { takeOut, putIn, changesBy }: Cure): string {
  const by = `${changesBy < 0 ? '' : '+'}${lengthIn(told, changesBy, 2)}`;
  return told.words.cure(takeOut, putIn, by);
}

function staveTable(set: MatchedSet, { units }: Spec, words: MatchWords): string {
  const totals = runningTotals(set);
  const decimals = decimalsOf(set);
  const rows = set.staves.map(({ mark, width, planeOff }, i) => [
    String(i + 1),
    oneLine(mark).trimEnd(),
    words.typeset(lengthText(width, units, decimals)),
    planeOff > 0 ? words.typeset(shortLengthText(planeOff, units, 2)) : '-',
    words.typeset(shortLengthText(totals[i]!, units, decimals)),
    mark === set.bungStave ? words.bungMark : '',
  ]);
  return columns([words.headings(units), ...rows]);
}

/** More marks than this fill a screen and help nobody. */
const mostMarks = 40;

function rest({ result, words }: Told): string {
  const { left, unfit } = result;
  if (left.length === 0) return '';
  const marks = left.slice(0, mostMarks).join(', ');
  const more = left.length > mostMarks ? ` ${words.leftMore(left.length - mostMarks)}` : '';
  const reasons = Object.entries(words.unfit).flatMap(([because, say]) => {
    const count = unfit.filter((stave) => stave.because === because).length;
    return count > 0 ? [say(count)] : [];
  });
  return [words.left(left.length), `  ${marks}${more}`, ...reasons.map((text) => `  ${text}`)]
    .map(oneLine)
    .join('');
}

function shortfallText(told: Told): string {
  const { request, result, words } = told;
  const { shortfall, help, sets } = result;
  if (!shortfall) return '';
  const why = words.reasons[shortfall.reason](
    lengthIn(told, shortfall.girthMissing),
    lengthIn(told, request.bung ?? 0),
  );
  const lines = [words.shortfall(sets.length + 1, why)];
  if (help) {
    const [from, to] = [lengthIn(told, help.fromWidth), lengthIn(told, help.toWidth)];
    lines.push(words.help(help.staves, from === to ? from : words.widths(from, to), help.makesSet));
  }
  return lines.map(oneLine).join('');
}

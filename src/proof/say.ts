/** Puts findings into words. */
import type { Finding, FindingUnit, Place } from './finding.js';
import { proofWords, type ProofWords } from './words.js';

/** One finding as a sentence: what was judged, where, what it measured and what it should. Begins with the file. */
export function findingText(finding: Finding, words: ProofWords = proofWords.en): string {
  const where = placeText(finding.place, words);
  const what = [words.checks[finding.check], where].filter((text) => text !== '').join(', ');
  return `${filesText(finding.files, words)}: ${what}: ${outcome(finding, words)}`;
}

function outcome(finding: Finding, words: ProofWords): string {
  const { measured, expected, passed } = finding;
  const why = passed ? '' : reasonText(finding, words);
  if (expected === null || finding.unit === '')
    return why || (passed ? words.good : words.notMeasured);
  const numbers =
    measured === null
      ? words.notMeasured
      : words.measured(
          valueText(measured, finding.unit, words),
          valueText(expected, finding.unit, words),
          allowedText(finding, words),
        );
  return [numbers, why].filter((text) => text !== '').join('; ');
}

function allowedText({ tolerance, unit }: Finding, words: ProofWords): string {
  return tolerance ? words.allowed(valueText(tolerance, unit, words)) : '';
}

function reasonText({ check, reason }: Finding, words: ProofWords): string {
  const plain = words.failures[check] ?? '';
  if (reason === undefined) return plain;
  if (check === 'known-lines') return words.strangeLine(reason);
  if (check === 'units') return words.reasons[reason] ?? words.otherUnit(reason.slice(5));
  return words.reasons[reason] ?? reason;
}

export function placeText(place: Place, words: ProofWords = proofWords.en): string {
  const { station, face, side, end, stave, hoop, edge, part, x, y, layer } = place;
  const number = (value: number, digits: number): string => words.typeset(value.toFixed(digits));
  return [
    part !== undefined && (words.parts[part] ?? part),
    place.number !== undefined && words.number(place.number),
    hoop !== undefined && words.hoop(hoop),
    end !== undefined && words.ends[end],
    face !== undefined && words.faces[face],
    side !== undefined && words.sides[side],
    edge !== undefined && words.edges[edge],
    stave !== undefined && words.joint(stave),
    station !== undefined && words.station(number(station, 1)),
    layer !== undefined && words.layer(layer),
    x !== undefined && y !== undefined && words.point(number(x, 2), number(y, 2)),
  ]
    .filter((text) => text !== false)
    .join(', ');
}

export function filesText(files: readonly string[], words: ProofWords = proofWords.en): string {
  const [first, second] = files;
  if (first === undefined) return '';
  if (second === undefined) return first;
  if (files.length === 2) return [first, second].join(words.and);
  return words.moreFiles(first, files.at(-1)!, files.length);
}

const decimals: Readonly<Record<FindingUnit, number>> = {
  mm: 4,
  degrees: 3,
  litres: 3,
  count: 0,
  '': 0,
};

export function valueText(
  value: number,
  unit: FindingUnit,
  words: ProofWords = proofWords.en,
): string {
  const text = value.toFixed(decimals[unit]);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return `${words.typeset(short === '-0' ? '0' : short)}${words.units[unit]}`;
}

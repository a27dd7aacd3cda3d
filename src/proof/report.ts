/** A proof as text for people: what is wrong in full, what is right as a table of checks. */
import { worst, type Check, type Finding, type Proof } from './finding.js';
import { filesText, findingText, placeText, valueText } from './say.js';
import { proofWords, type ProofWords } from './words.en.js';

export interface ProofReport {
  readonly heading: string;
  /** one sentence for each finding that has not passed */
  readonly failures: readonly string[];
  /** the heading of the table, then a row for each check of each kind of file */
  readonly table: readonly (readonly string[])[];
  readonly verdict: string;
}

export function reportOf(
  { findings, passed }: Proof,
  folder: string,
  title: string,
  words: ProofWords = proofWords,
): ProofReport {
  const wrong = findings.filter((each) => !each.passed);
  const files = new Set(findings.flatMap((each) => each.files.filter((f) => f.endsWith('.dxf'))));
  return {
    heading: words.heading(folder, title, files.size),
    failures: wrong.map((finding) => findingText(finding, words)),
    table: [
      words.columns,
      ...rowsOf(
        findings.filter((each) => each.passed),
        words,
      ),
    ],
    verdict: passed ? words.passed(findings.length) : words.failed(wrong.length, findings.length),
  };
}

function rowsOf(findings: readonly Finding[], words: ProofWords): string[][] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = groupOf(finding);
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].map((group) => rowOf(group, words));
}

/** Findings whose measured values can stand for each other: of one check, and where its parts are unlike, of one part. */
function groupOf({ check, place, unit }: Finding): string {
  const unlike: readonly Check[] = ['edge-head', 'edge-stave', 'head-bevel'];
  return [check, unit, unlike.includes(check) ? place.part : ''].join(' ');
}

function rowOf(group: readonly Finding[], words: ProofWords): string[] {
  const [first] = group as readonly [Finding];
  const files = [...new Set(group.flatMap((each) => each.files))];
  const name = words.checks[first.check];
  const places = String(group.length);
  if (first.expected === null || first.unit === '')
    return [name, places, '', '', '', filesText(files, words)];
  const most = first.tolerance ? worst(group) : first;
  const where = placeText(most.place, words);
  return [
    where === '' ? name : `${name}: ${where}`,
    places,
    valueText(most.measured ?? NaN, most.unit, words),
    valueText(most.expected ?? NaN, most.unit, words),
    most.tolerance ? `±${valueText(most.tolerance, most.unit, words)}` : '',
    filesText(files, words),
  ];
}

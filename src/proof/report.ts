/** A proof as text for people: what is wrong in full, what is right as a table of checks. */
import { worst, type Check, type Finding } from './finding.js';
import type { WholeProof } from './prove.js';
import { filesText, findingText, placeText, valueText } from './say.js';
import { proofWords, type ProofWords } from './words.js';

export interface ProofReport {
  readonly heading: string;
  /** one sentence for each finding that has not passed */
  readonly failures: readonly string[];
  /** the headings of the columns; empty where nothing has passed */
  readonly columns: readonly string[];
  /** what has passed, by the files that carry it */
  readonly right: readonly RightGroup[];
  /** what the folder was drawn without; empty where it holds everything */
  readonly notDrawn: string;
  readonly verdict: string;
  readonly limits: string;
}

interface RightGroup {
  readonly files: string;
  /** what was judged, where it is worst, what it measures there, should measure, and may be off */
  readonly rows: readonly (readonly string[])[];
}

export function proofReport(
  { findings, passed, notDrawn }: WholeProof,
  folder: string,
  title: string,
  words: ProofWords = proofWords.en,
): ProofReport {
  const wrong = findings.filter((each) => !each.passed);
  const right = findings.filter((each) => each.passed);
  const files = new Set(findings.flatMap((each) => each.files.filter((f) => f.endsWith('.dxf'))));
  const { heading, columns, limits, ...say } = words.report;
  return {
    heading: heading(folder, title, files.size),
    failures: wrong.map((finding) => findingText(finding, words)),
    columns: right.length > 0 ? columns : [],
    right: groupsOf(right, words),
    notDrawn: notDrawn.length > 0 ? say.notDrawn(notDrawn.join(', ')) : '',
    verdict: passed ? say.passed(findings.length) : say.failed(wrong.length, findings.length),
    limits,
  };
}

function groupsOf(findings: readonly Finding[], words: ProofWords): RightGroup[] {
  const alike = gathered(findings, kindOf);
  const byFiles = gathered(alike, (kind) => filesText(allFiles(kind), words));
  return byFiles.map((kinds) => ({
    files: filesText(allFiles(kinds[0]!), words),
    rows: withoutCounts(kinds).map((kind) => rowOf(kind, words)),
  }));
}

/** Groups of equal key, in the order in which each begins. */
function gathered<T>(all: readonly T[], keyOf: (each: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const each of all) {
    const group = groups.get(keyOf(each));
    if (group) group.push(each);
    else groups.set(keyOf(each), [each]);
  }
  return [...groups.values()];
}

/** Findings whose measured values can stand for each other: of one check, and where its parts are unlike, of one part. */
function kindOf({ check, place, unit }: Finding): string {
  const unlike: readonly Check[] = ['edge-head', 'edge-stave', 'head-bevel'];
  return [check, unit, unlike.includes(check) ? place.part : ''].join(' ');
}

/** That there are as many as there should be goes without saying where each is measured. */
function withoutCounts(kinds: readonly (readonly Finding[])[]): (readonly Finding[])[] {
  return kinds.filter(
    ([first]) =>
      first!.unit !== 'count' ||
      !kinds.some(([other]) => other!.check === first!.check && other!.unit !== 'count'),
  );
}

const allFiles = (findings: readonly Finding[]): string[] => [
  ...new Set(findings.flatMap(({ files }) => files)),
];

function rowOf(kind: readonly Finding[], words: ProofWords): string[] {
  const [first] = kind as readonly [Finding];
  const name = words.checks[first.check];
  if (first.expected === null || first.unit === '') return [name];
  const most = first.tolerance ? worst(kind) : first;
  return [
    name,
    words.report.worst(placeText(most.place, words), kind.length),
    valueText(most.measured ?? NaN, most.unit, words),
    valueText(most.expected ?? NaN, most.unit, words),
    most.tolerance ? `±${valueText(most.tolerance, most.unit, words)}` : '',
  ];
}

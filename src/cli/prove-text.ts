/** A proof as text for people and as JSON. */
import { proofReport, type ProofReport, type ProofWords, type WholeProof } from '../index.js';
import { columns } from './columns.js';
import { oneLine } from './say.js';

export function proveText(
  proof: WholeProof,
  folder: string,
  title: string,
  words: ProofWords,
): string {
  const report = proofReport(proof, folder, title, words);
  const { heading, failures, notDrawn, verdict, limits } = report;
  const lines = (texts: readonly string[], indent = ''): string =>
    texts.map((text) => indent + oneLine(text)).join('');
  return [
    lines([heading]),
    ...(failures.length > 0 ? ['\n', lines(failures, '  ')] : []),
    tableText(report),
    '\n',
    lines(notDrawn === '' ? [verdict, limits] : [notDrawn, verdict, limits]),
  ].join('');
}

/** The rows of all files stand below each other, each group under the names of its files. */
function tableText({ columns: headings, right }: ProofReport): string {
  const table = columns([headings, ...right.flatMap(({ rows }) => rows)], {
    left: 2,
    indent: '  ',
  }).split('\n');
  let at = 1;
  const groups = right.map(({ files, rows }) => {
    const own = table.slice(at, (at += rows.length));
    return [`\n${files}`, ...own, ''].join('\n');
  });
  return right.length > 0 ? [`\n${table[0]}\n`, ...groups].join('') : '';
}

/** Only what has not passed. */
export function proveErrors(proof: WholeProof, folder: string, words: ProofWords): string {
  return proofReport(proof, folder, '', words).failures.map(oneLine).join('');
}

/** Lengths in mm, to the decimals that a file can carry and a few more. */
export function proveJson({ passed, findings, notDrawn }: WholeProof): string {
  const settled = (_key: string, value: unknown): unknown =>
    typeof value === 'number' ? Number(value.toFixed(6)) + 0 : value;
  return `${JSON.stringify({ passed, findings, notDrawn }, settled, 2)}\n`;
}

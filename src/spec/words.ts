/** Puts issues into words, each at its place in the file. The words themselves are in `wording.en.ts` and its like. */
import type { Issue, Message, SpecPath } from './issue.js';
import { dotted, sayer } from './say.js';
import { visible } from './shown.js';
import type { Units } from './spec.js';
import type { Wording, Wordings } from './wording.js';
import { specWordings } from './wordings.js';

/** `locate` finds the places; lengths are shown in `units`, millimetres unless given. */
export interface WordsOf {
  readonly locate: (path: SpecPath) => { line: number; column: number };
  readonly units?: Units;
}

/**
 * In the order of the file. Never throws: an issue without a wording of its own is shown with its code and values.
 */
export function putIntoWords(
  issues: readonly Issue[],
  read: WordsOf,
  file: string,
  wordings: Wordings = specWordings.en,
): Message[] {
  return issues
    .map((issue) => messageOf(issue, read, file, wordings))
    .sort((a, b) => a.line - b.line || a.column - b.column);
}

function messageOf(issue: Issue, read: WordsOf, file: string, wordings: Wordings): Message {
  const { severity, code, path } = issue;
  const { found, allowed, text } = wordsOf(issue, read, wordings);
  const place = placeOf(issue, read.locate);
  const key = visible(dotted(path));
  return {
    severity,
    code,
    file,
    ...place,
    key,
    found: visible(found),
    allowed: visible(allowed),
    text: visible(text),
  };
}

/** Faults of the text itself know their place; others are looked up by their key. */
function placeOf({ values, path }: Issue, locate: WordsOf['locate']) {
  const { line, column } = values;
  if (typeof line === 'number' && typeof column === 'number') return { line, column };
  return locate(path);
}

function wordsOf(issue: Issue, { units = 'mm' }: WordsOf, { messages, manner }: Wordings): Wording {
  const word = Object.hasOwn(messages, issue.code) ? messages[issue.code] : undefined;
  if (word) return word(sayer(issue, units, manner));
  const values = Object.entries(issue.values).map(([name, value]) => `${name} ${value}`);
  return { found: values.join(', '), allowed: '', text: manner.unknown(issue.code) };
}

/** Decides whether a text may be parsed at all, and parses it: nothing that could hang or crash the parser gets that far. */
import { Composer, Lexer, LineCounter, Parser } from 'yaml';
import type { CST, Document, ParsedNode } from 'yaml';
import { fault } from './fault.js';
import type { Issue } from './issue.js';

export interface Source {
  readonly document: Document.Parsed | null;
  readonly issues: readonly Issue[];
  readonly lines: LineCounter;
}

const mostCharacters = 256 * 1024;
/** A full spec has some 2,000 lexemes; the parser needs seconds for 200,000 faulty ones. */
const mostLexemes = 20_000;
/** `heads.top.croze.inset` is four deep; the parser recurses, and thousands can end the process past catching. */
const mostNested = 16;
/** One slip makes the parser complain many times over. */
const mostSyntaxErrors = 20;

export function parseSource(text: string): Source {
  const lines = new LineCounter();
  const refused = (issue: Issue): Source => ({ document: null, issues: [issue], lines });
  if (text.length > mostCharacters) {
    return refused(fault('file-too-big', [], { found: text.length, most: mostCharacters }));
  }
  const strange = /[\0\uFFFD]/.exec(text);
  if (strange) return refused(fault('not-a-text-file', [], lineAndColumn(text, strange.index)));
  if (tooManyLexemes(text)) return refused(fault('file-too-long', [], { most: mostLexemes }));
  const tokens = [...new Parser(lines.addNewLine).parse(text)];
  if (nestedTooDeep(tokens)) return refused(fault('nested-too-deep', [], { most: mostNested }));
  return compose(tokens, text, lines);
}

function compose(tokens: CST.Token[], text: string, lines: LineCounter): Source {
  const composer = new Composer<ParsedNode>({
    logLevel: 'silent',
    prettyErrors: false,
    uniqueKeys: false,
  });
  const [document = null, second] = composer.compose(tokens, true, text.length);
  if (!document) return { document, issues: [fault('file-empty', [])], lines };
  const at = (offset: number): Issue['values'] => placeOf(lines, offset);
  const issues = document.errors
    .slice(0, mostSyntaxErrors)
    .map(({ code, pos }) => fault('yaml-syntax', [], { problem: code, ...at(pos[0]) }));
  if (second) issues.push(fault('several-documents', [], at(second.range[0])));
  if (document.directives.yaml.explicit) issues.push(fault('yaml-directive', []));
  return { document: document.errors.length > 0 ? null : document, issues, lines };
}

/** The parser's line counter starts from 1 in both directions, but knows no line of an empty text. */
export function placeOf(lines: LineCounter, offset: number): { line: number; column: number } {
  const { line, col } = lines.linePos(offset);
  return { line: Math.max(1, line), column: Math.max(1, col) };
}

function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: before.at(-1)!.length + 1 };
}

function tooManyLexemes(text: string): boolean {
  let count = 0;
  for (const _ of new Lexer().lex(text)) if (++count > mostLexemes) return true;
  return false;
}

/** Walks without recursion, since depth is what it looks for. */
function nestedTooDeep(tokens: readonly CST.Token[]): boolean {
  const open: [token: CST.Token | null | undefined, depth: number][] = tokens.map((t) => [t, 0]);
  for (let next = open.pop(); next; next = open.pop()) {
    const [token, depth] = next;
    if (depth > mostNested) return true;
    if (!token) continue;
    if (token.type === 'document') open.push([token.value, depth]);
    if (!('items' in token)) continue;
    for (const item of token.items) open.push([item.key, depth + 1], [item.value, depth + 1]);
  }
  return false;
}

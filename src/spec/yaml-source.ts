/** Decides whether a text may be parsed at all, and parses it: nothing that could hang or crash the parser gets that far. */
import { Composer, Lexer, Parser } from 'yaml';
import type { CST, Document, ParsedNode } from 'yaml';
import { fault } from './fault.js';
import type { Issue } from './issue.js';
import { placesIn, type PlaceAt } from './lines.js';

/** A text and what it is as YAML. */
export interface Source {
  readonly text: string;
  /** null while it is broken, or refused */
  readonly document: Document.Parsed | null;
  readonly issues: readonly Issue[];
  readonly placeAt: PlaceAt;
}

const mostCharacters = 256 * 1024;
/** A full spec has some 2,000 lexemes; the parser needs seconds for 200,000 faulty ones. */
const mostLexemes = 20_000;
/** `heads.top.croze.inset` is four deep; the parser recurses, and thousands can end the process past catching. */
const mostNested = 16;
/** One slip makes the parser complain many times over. */
const mostSyntaxErrors = 20;

export function parseSource(text: string): Source {
  const placeAt = placesIn(text);
  const refused = (issue: Issue): Source => ({ text, document: null, issues: [issue], placeAt });
  if (text.length > mostCharacters) {
    return refused(fault('file-too-big', [], { found: text.length, most: mostCharacters }));
  }
  const strange = /[\0\uFFFD]/.exec(text);
  if (strange) return refused(fault('not-a-text-file', [], { ...placeAt(strange.index) }));
  const tokens = tokensOf(text);
  if (!tokens) return refused(fault('file-too-long', [], { most: mostLexemes }));
  if (nestedTooDeep(tokens)) return refused(fault('nested-too-deep', [], { most: mostNested }));
  return compose(tokens, text, placeAt);
}

function compose(tokens: CST.Token[], text: string, placeAt: PlaceAt): Source {
  const composer = new Composer<ParsedNode>({
    logLevel: 'silent',
    prettyErrors: false,
    uniqueKeys: false,
  });
  const [document = null, second] = composer.compose(tokens, true, text.length);
  if (!document) return { text, document, issues: [fault('file-empty', [])], placeAt };
  const issues = document.errors
    .slice(0, mostSyntaxErrors)
    .map(({ code, pos }) => fault('yaml-syntax', [], { problem: code, ...placeAt(pos[0]) }));
  if (second) issues.push(fault('several-documents', [], { ...placeAt(second.range[0]) }));
  if (document.directives.yaml.explicit) issues.push(fault('yaml-directive', []));
  return { text, document: document.errors.length > 0 ? null : document, issues, placeAt };
}

/** Null where there are too many lexemes. */
function tokensOf(text: string): CST.Token[] | null {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  let count = 0;
  for (const lexeme of new Lexer().lex(text)) {
    if (++count > mostLexemes) return null;
    tokens.push(...parser.next(lexeme));
  }
  tokens.push(...parser.end());
  return tokens;
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

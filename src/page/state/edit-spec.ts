/** Changes a spec's text at one key and leaves the rest of it, comments and all, as it was typed. */
import { isMap, isScalar, isSeq, parseDocument, YAMLMap, type Document, type Scalar } from 'yaml';
import { parseSource, type Source } from '../../index.js';

export type Path = readonly (string | number)[];
export type Plain = string | number | readonly (string | number)[];

/** To be changed: as text and nothing more, so that `007` and `1.50` stay what they are. */
export function parseSpec(text: string): Document.Parsed | null {
  const document = parseDocument(text, { schema: 'failsafe', logLevel: 'silent' });
  return document.errors.length > 0 ? null : document;
}

let seen: readonly Source[] = [];

/**
 * A text as the vessel is made from it, to look into and never to change. A key is typed into one text and shown from the next:
 * neither is parsed twice for that.
 */
export function lookInto(text: string): Source {
  const found = seen.find((source) => source.text === text) ?? parseSource(text);
  seen = [found, ...seen.filter((source) => source !== found)].slice(0, 2);
  return found;
}

/** The text that stands at a key, or null where there is none. */
export function textAt(document: Document.Parsed | null, path: Path): string | null {
  const node = document?.getIn(path, true);
  if (isScalar(node)) return written(node);
  if (isSeq(node)) return node.items.map((item) => written(item as Scalar)).join(', ');
  return null;
}

/** Not what YAML made of it: `007` and `1.50` stay what they are. */
const written = ({ source, value }: Scalar): string => source ?? String(value ?? '');

export const has = (document: Document.Parsed | null, path: Path): boolean =>
  document?.hasIn(path) ?? false;

/** Null where the text is not YAML, so that there is no telling where the key would be. */
export function setInSpec(text: string, path: Path, value: Plain): string | null {
  const changed = spliced(text, path, value);
  if (changed !== null) return changed;
  const document = parseSpec(text);
  return document && setAnew(document, path, value);
}

/** Without the key; groups that are left empty go with it. */
export function removeFromSpec(text: string, path: Path): string | null {
  const document = parseSpec(text);
  if (!document?.hasIn(path)) return document ? text : null;
  document.deleteIn(path);
  for (let parent = path.slice(0, -1); parent.length > 0; parent = parent.slice(0, -1)) {
    const node = document.getIn(parent, true);
    if (!isMap(node) || node.items.length > 0) break;
    document.deleteIn(parent);
  }
  return textOf(document);
}

/** Puts a value, which may have keys of its own, in place of whatever stands at a key. */
export function replaceInSpec(text: string, path: Path, node: unknown): string | null {
  const document = parseSpec(text);
  if (!document) return null;
  makeRoom(document, path);
  document.setIn(path, node);
  return textOf(document);
}

/** Exchanges the very characters of a plain value; null where that is not to be had. */
function spliced(text: string, path: Path, value: Plain): string | null {
  const node = lookInto(text).document?.getIn(path, true);
  if (typeof value === 'object' || !isScalar(node) || !node.range || node.anchor || node.tag)
    return null;
  const [start, end] = node.range;
  if (start === end || text.slice(start, end).includes('\n')) return null;
  const changed = text.slice(0, start) + scalarText(value) + text.slice(end);
  return textAt(lookInto(changed).document, path) === String(value) ? changed : null;
}

const plainText = /^[\p{L}\p{N}][\p{L}\p{N} ./()-]*(?<! )$/u;

function scalarText(value: string | number): string {
  const text = String(value);
  return plainText.test(text) || /^[-.\d]+$/.test(text) ? text : JSON.stringify(text);
}

function setAnew(document: Document.Parsed, path: Path, value: Plain): string {
  makeRoom(document, path);
  const node = document.createNode(typeof value === 'object' ? value.map(String) : String(value));
  if (isSeq(node)) node.flow = true;
  document.setIn(path, node);
  return textOf(document);
}

/** Groups on the way that are missing, empty or plain words, such as `bung: none`, become groups. */
function makeRoom(document: Document.Parsed, path: Path): void {
  if (!isMap(document.contents)) document.contents = new YAMLMap() as never;
  for (let depth = 1; depth < path.length; depth++) {
    const parent = path.slice(0, depth);
    const node = document.getIn(parent, true);
    if (isMap(node) || isSeq(node)) continue;
    const group = new YAMLMap(document.schema);
    group.flow = depth > 1;
    document.setIn(parent, group);
  }
}

const textOf = (document: Document.Parsed): string =>
  document.toString({ lineWidth: 0, flowCollectionPadding: true });

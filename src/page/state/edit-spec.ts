/** Changes a spec's text at one key and leaves the rest of it, comments and all, as it was typed. */
import { isMap, isScalar, isSeq, parseDocument, YAMLMap, type Document, type Scalar } from 'yaml';

export type Path = readonly (string | number)[];
export type Plain = string | number | readonly (string | number)[];

/** As text and nothing more: `007` and `1.50` stay what they are. */
export function parseSpec(text: string): Document.Parsed | null {
  const document = parseDocument(text, { schema: 'failsafe', logLevel: 'silent' });
  return document.errors.length > 0 ? null : document;
}

/** The text that stands at a key, or null where there is none. */
export function textAt(document: Document.Parsed | null, path: Path): string | null {
  const node = document?.getIn(path, true);
  if (isScalar(node)) return (node.value as string | null) ?? '';
  if (isSeq(node)) return node.items.map((item) => String((item as Scalar).value)).join(', ');
  return null;
}

export const has = (document: Document.Parsed | null, path: Path): boolean =>
  document?.hasIn(path) ?? false;

/** Null where the text is not YAML, so that there is no telling where the key would be. */
export function setInSpec(text: string, path: Path, value: Plain): string | null {
  const document = parseSpec(text);
  if (!document) return null;
  return spliced(text, document, path, value) ?? setAnew(document, path, value);
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
  return written(document);
}

/** Puts a value, which may have keys of its own, in place of whatever stands at a key. */
export function replaceInSpec(text: string, path: Path, node: unknown): string | null {
  const document = parseSpec(text);
  if (!document) return null;
  makeRoom(document, path);
  document.setIn(path, node);
  return written(document);
}

/** Exchanges the very characters of a plain value; null where that is not to be had. */
function spliced(text: string, document: Document.Parsed, path: Path, value: Plain): string | null {
  const node = document.getIn(path, true);
  if (typeof value === 'object' || !isScalar(node) || !node.range || node.anchor || node.tag)
    return null;
  const [start, end] = node.range;
  if (start === end || text.slice(start, end).includes('\n')) return null;
  const changed = text.slice(0, start) + scalarText(value) + text.slice(end);
  return textAt(parseSpec(changed), path) === String(value) ? changed : null;
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
  return written(document);
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

const written = (document: Document.Parsed): string =>
  document.toString({ lineWidth: 0, flowCollectionPadding: true });

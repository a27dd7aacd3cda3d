/** A parsed YAML document as plain data, without YAML's cleverer features, and where each key stands in the file. */
import { isAlias, isMap, isScalar, isSeq } from 'yaml';
import type { Document, Node, Pair, Scalar } from 'yaml';
import { fault } from './fault.js';
import type { Issue, SpecPath } from './issue.js';
import type { Place, PlaceAt } from './lines.js';

/** Null prototype: `__proto__` and `constructor` are keys like any other, and unknown ones. */
export type Data = Record<string, unknown>;

export interface Tree {
  /** undefined when the root is not a map */
  readonly data: Data | undefined;
  readonly issues: readonly Issue[];
}

/** Values of these keys are taken as typed, so that `2026-01-05`, `007` and `1.50` stay what the cooper wrote. */
const textKeys = new Set(['title', 'owner', 'number', 'date', 'creator', 'approved', 'name']);

export function plainTree(document: Document.Parsed, placeAt: PlaceAt): Tree {
  const issues: Issue[] = [];
  const data = plain(document.contents, []);
  if (document.contents === null || (isScalar(document.contents) && data === null)) {
    return { data: undefined, issues: [...issues, fault('file-empty', [])] };
  }
  if (!isMap(document.contents)) {
    return { data: undefined, issues: [...issues, fault('root-not-keys', [])] };
  }
  return { data: data as Data, issues };

  function plain(node: Node | null, path: SpecPath): unknown {
    if (node === null) return null;
    const at = (): Place => placeAt(startOf(node));
    if (isAlias(node)) {
      issues.push(fault('yaml-alias', path, { found: `*${node.source.slice(0, 40)}`, ...at() }));
      return undefined;
    }
    const { anchor, tag } = node as Scalar;
    if (anchor)
      issues.push(fault('yaml-anchor', path, { found: `&${anchor.slice(0, 40)}`, ...at() }));
    if (tag) issues.push(fault('yaml-tag', path, { found: shortTag(tag), ...at() }));
    if (isMap(node)) return plainMap(node.items as Pair<Node | null, Node | null>[], path);
    if (isSeq(node)) return node.items.map((item, i) => plain(item as Node, [...path, i]));
    // what the type made of the value is not what the cooper wrote
    return tag ? undefined : scalarValue(node as Scalar, path.at(-1));
  }

  function plainMap(pairs: readonly Pair<Node | null, Node | null>[], path: SpecPath): Data {
    const data: Data = Object.create(null) as Data;
    const starts = new Map<string, number>();
    for (const { key, value } of pairs) {
      const name = keyText(key);
      const first = name === null ? undefined : starts.get(name);
      if (name !== null && name !== '<<' && first === undefined) {
        starts.set(name, startOf(key));
        data[name] = plain(value, [...path, name]);
        continue;
      }
      const at = placeAt(startOf(key ?? value));
      if (name === null) issues.push(fault('key-not-text', path, { ...at }));
      else if (first === undefined) issues.push(fault('merge-key', [...path, name], { ...at }));
      else
        issues.push(fault('key-doubled', [...path, name], { first: placeAt(first).line, ...at }));
    }
    return data;
  }
}

const startOf = (node: Node | null): number => node?.range?.[0] ?? 0;

/** As the file writes it: `!!str` for YAML's own. */
const shortTag = (tag: string): string => tag.replace(/^tag:yaml.org,2002:/, '!!').slice(0, 60);

function keyText(key: Node | null): string | null {
  if (!isScalar(key) || key.tag || key.anchor) return null;
  const text = typeof key.value === 'string' ? key.value : (key.source ?? '');
  return text === '' ? null : text;
}

function scalarValue(node: Scalar, key: string | number | undefined): unknown {
  const { value, source } = node;
  if (typeof value === 'string' || !textKeys.has(String(key))) return value;
  return value === null ? '' : source;
}

/**
 * Where a path stands: a plain value's own place, or the place of the key that opens a section or list. What isn't in
 * the file, such as a default, is looked for under its nearest ancestor.
 */
export function placeInTree(
  document: Document.Parsed | null,
  placeAt: PlaceAt,
  path: SpecPath,
  want: 'key' | 'value' = 'value',
): Place {
  let node: unknown = document?.contents;
  let offset = 0;
  for (const step of path) {
    const [key, value] = childOf(node, step);
    if (!key && !value) break;
    const scalar = isScalar(value) && value.source !== '';
    offset = startOf(scalar && (want === 'value' || !key) ? value : (key ?? value));
    node = value;
  }
  return placeAt(offset);
}

function childOf(node: unknown, step: string | number): [key: Node | null, value: Node | null] {
  if (isSeq(node)) return [null, (node.items[Number(step)] as Node | undefined) ?? null];
  if (!isMap(node)) return [null, null];
  const pair = node.items.find(({ key }) => keyText(key as Node) === String(step));
  return pair ? [pair.key as Node, pair.value as Node | null] : [null, null];
}

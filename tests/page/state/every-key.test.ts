/** Whatever a spec can say can be said on the page: the keys are those of the schema that editors get. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { groupsOf, hoopFields, keyOf, nameOf, type Field } from '../../../src/page/state/fields.js';
import { fields as english } from '../../../src/page/words/fields.en.js';
import { root } from '../../cli/workshop.js';

interface Node {
  readonly $ref?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly allOf?: readonly Node[];
  readonly anyOf?: readonly Node[];
  readonly enum?: readonly string[];
  readonly const?: string;
}

/** What has no box, and why. */
const withoutBox: Readonly<Record<string, string>> = {
  vessel: 'a cask and a tub have other sizes: one begins from a template of the other kind',
  units: 'a button of the bar changes them, with every length in the file',
  'profile=measured': 'is refused: not built yet',
  'bung=none':
    'a choice above the box of its diameter, which tests/outside/page-typing.test.ts uses',
};

const schema = JSON.parse(readFileSync(join(root, 'schemas/spec.schema.json'), 'utf8')) as {
  definitions: Readonly<Record<string, Node>>;
};

/** A node with all that it may be, and the entries of a list. */
function wholeOf(node: Node): Node[] {
  const to = node.$ref ? [schema.definitions[node.$ref.split('/').at(-1)!]!] : [];
  const { allOf = [], anyOf = [], items } = node;
  const below = [...to, ...allOf, ...anyOf, ...(items ? [items] : [])];
  return [node, ...below.flatMap(wholeOf)];
}

/** Every key with a value of its own, and every name that stands in place of a value, as `key=name`. */
function saidBy(node: Node, key = ''): string[] {
  const parts = wholeOf(node);
  const children = parts.flatMap(({ properties }) => Object.entries(properties ?? {}));
  const names = parts.flatMap((part) => part.enum ?? (part.const ? [part.const] : []));
  const below = children.flatMap(([name, child]) => saidBy(child, key ? `${key}.${name}` : name));
  const choices = key === 'vessel' || key === 'units' ? [] : names;
  return [...(below.length > 0 ? below : [key]), ...choices.map((name) => `${key}=${name}`)];
}

/** The same of the page, in all the ways that its boxes can stand. */
function boxesOf(vessel: 'cask' | 'tub'): Field[] {
  const kinds = [true, false].flatMap((mixed) =>
    [true, false].map((headsApart) => ({
      vessel,
      mixedStaves: mixed,
      mixedBoards: mixed ? (['top', 'bottom'] as const) : [],
      headsApart,
    })),
  );
  const groups = kinds.flatMap((kind) => groupsOf(kind));
  const boxes = groups.flatMap(({ sections }) => sections.flatMap(({ fields }) => fields));
  return [...boxes, ...hoopFields(0)];
}

describe.each(['cask', 'tub'] as const)('on a %s', (vessel) => {
  const boxes = boxesOf(vessel);
  const sayable = new Set(
    boxes.flatMap((field) => {
      const key = keyOf(field).replace('[0]', '');
      return [key, ...(field.choices ?? []).map((name) => `${key}=${name}`)];
    }),
  );

  it.each(['mm', 'in'])(
    'every key of the file in %s has a box, or a reason to have none',
    (units) => {
      const said = saidBy(schema.definitions[`${vessel}-${units}`]!);
      expect(said.length).toBeGreaterThan(vessel === 'cask' ? 80 : 60);
      expect(said.filter((key) => !sayable.has(key) && !withoutBox[key])).toEqual([]);
    },
  );

  it('every box is of a key of the file', () => {
    const said = new Set(saidBy(schema.definitions[`${vessel}-mm`]!));
    expect([...sayable].filter((key) => !said.has(key))).toEqual([]);
  });

  it('every box and every choice has a name in words', () => {
    for (const field of boxes) {
      expect(english.fields[nameOf(field)], keyOf(field)).toBeDefined();
      for (const name of field.choices ?? []) expect(english.choices[name], name).toBeDefined();
    }
  });
});

it('what needs no box is a key', () => {
  const said = ['cask', 'tub'].flatMap((kind) => saidBy(schema.definitions[`${kind}-mm`]!));
  for (const key of Object.keys(withoutBox)) expect(said, key).toContain(key);
});

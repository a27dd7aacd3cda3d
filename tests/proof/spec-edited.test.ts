/** A spec that is edited after drawing no longer fits the drawings: every number of it, one at a time. */
import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { planVessel } from '../../src/index.js';
import { wideTub, wineCask } from '../pieces/vessels.js';
import { Pack } from './pack.js';

type Node = Record<string, unknown>;
type Path = readonly (string | number)[];

function numbersIn(node: unknown, path: Path = []): Path[] {
  if (typeof node === 'number') return [path];
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node as Node).flatMap(([key, child]) => numbersIn(child, [...path, key]));
}

/** One more of what is counted; of anything else more than it may be off. */
const larger = (value: number): number => (value === 0 ? 0.5 : value * (value < 1 ? 1.2 : 1.02));

function edited(text: string, path: Path): string {
  const spec = parse(text) as Node;
  const parent = path.slice(0, -1).reduce<Node>((node, key) => node[key] as Node, spec);
  const key = String(path.at(-1));
  const value = parent[key] as number;
  parent[key] = key === 'count' || key === 'boards' ? value + 1 : larger(value);
  return stringify(spec);
}

/** The bung's size is drawn on pictures only, which are not patterns. A dowel may lie where it does with a larger margin too. */
const bung = 'bung.diameter';
const margin = 'heads.dowels.margin';

async function unnoticed(text: string): Promise<string[]> {
  const pack = await Pack.of(text);
  const spec = pack.files.get('spec.yaml')!;
  const paths = numbersIn(parse(spec));
  expect(paths.length).toBeGreaterThan(25);
  return paths.flatMap((path) => {
    const changed = edited(spec, path);
    // one that cannot be built is refused before anything is judged
    if (!planVessel(changed, '').vessel) return [];
    const wrong = pack.and('spec.yaml', changed).wrong();
    return wrong.length === 0 ? [path.join('.')] : [];
  });
}

test('of a cask', async () => {
  expect(await unnoticed(wineCask)).toEqual([margin, bung]);
}, 60_000);

test('of a tub', async () => {
  // straight staves have no line that bending leaves as it was
  expect(await unnoticed(wideTub)).toEqual(['staves.neutral', margin]);
}, 60_000);

test('of a cask whose heads differ', async () => {
  const text = `${wineCask}heads: { top: { boards: 5, clearance: 0.3 }, bottom: { boards: 7, crossGrain: 2 } }\n`;
  expect(await unnoticed(text)).toEqual([
    'heads.top.dowels.margin',
    'heads.bottom.dowels.margin',
    bung,
  ]);
}, 60_000);

test.each([
  ['vessel turned from a hollowed to a flat inside', 'inside: hollowed', 'inside: flat'],
  ['overlong staves said to be cut', 'ends: overlong', 'ends: cut'],
  ['another profile', 'profile: arc', 'profile: ellipse'],
])('%s', async (_name, from, to) => {
  const pack = await Pack.of(wineCask);
  expect(pack.with('spec.yaml', (text) => text.replace(from, to)).wrong()).not.toEqual([]);
});

test('words and the title block may change: they are no length', async () => {
  const pack = await Pack.of(wineCask);
  const renamed = pack.with('spec.yaml', (text) => text.replace(/^title:.*$/m, 'title: Other'));
  expect(renamed.wrong()).toEqual([]);
});

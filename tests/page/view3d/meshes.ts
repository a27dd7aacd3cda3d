/** What the tests of bodies measure. */
import { readFileSync, readdirSync } from 'node:fs';
import { planVessel, type Vessel } from '../../../src/index.js';
import type { Mesh } from '../../../src/page/view3d/mesh/mesh.js';

const folder = new URL('../../../templates/', import.meta.url);

export const templateNames: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace('.yaml', ''));

export const template = (name: string): Vessel =>
  planned(readFileSync(new URL(`${name}.yaml`, folder), 'utf8'));

export function planned(text: string): Vessel {
  const { vessel, messages } = planVessel(text, 'test.yaml');
  if (!vessel) throw new Error(messages.map((message) => message.text).join('\n'));
  return vessel;
}

type Vector = [number, number, number];

export function triangles({ positions, indices }: Mesh): [Vector, Vector, Vector][] {
  const at = (k: number): Vector => [
    positions[3 * k]!,
    positions[3 * k + 1]!,
    positions[3 * k + 2]!,
  ];
  return Array.from({ length: indices.length / 3 }, (_, i) => [
    at(indices[3 * i]!),
    at(indices[3 * i + 1]!),
    at(indices[3 * i + 2]!),
  ]);
}

/** By the divergence theorem: a sixth of the triple product of each triangle; positive when outsides look outwards. */
export function volumeOf(mesh: Mesh): number {
  return triangles(mesh).reduce((sum, [a, b, c]) => {
    const cross = [
      b[1] * c[2] - b[2] * c[1],
      b[2] * c[0] - b[0] * c[2],
      b[0] * c[1] - b[1] * c[0],
    ] as const;
    return sum + (a[0] * cross[0] + a[1] * cross[1] + a[2] * cross[2]) / 6;
  }, 0);
}

/** Edges that are not met by exactly one other, running the other way. A closed body has none. */
export function openEdges(mesh: Mesh): number {
  const counts = new Map<string, number>();
  const name = (place: Vector): string => place.map((x) => Math.round(x * 1000) || 0).join(' ');
  for (const corners of triangles(mesh)) {
    const names = corners.map(name);
    names.forEach((from, i) => {
      const to = names[(i + 1) % 3]!;
      const [key, by] = from < to ? [`${from}|${to}`, 1] : [`${to}|${from}`, -1];
      counts.set(key, (counts.get(key) ?? 0) + by);
    });
  }
  return [...counts.values()].filter((count) => count !== 0).length;
}

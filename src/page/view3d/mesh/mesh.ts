/**
 * Surfaces of triangles. Lengths in mm, right-handed: `z` along the vessel's axis, 0 at mid-height. Seen from outside the wood,
 * a triangle's corners run anticlockwise. Each smooth patch has corners of its own, so that shading breaks at edges.
 */

import type { Point } from '../../../index.js';
import { between } from './between.js';

export type Place = readonly [x: number, y: number, z: number];

export interface Mesh {
  /** three numbers a corner */
  readonly positions: Float32Array;
  /** three corners a triangle */
  readonly indices: Uint32Array;
  /** six numbers a line: what is drawn as an edge */
  readonly edges: Float32Array;
}

export class MeshMaker {
  private readonly positions: number[] = [];
  private readonly indices: number[] = [];
  private readonly edges: number[] = [];

  /**
   * A smooth patch through rows of equally many places. Its outside is where `(along a row) x (from row to row)` points.
   */
  patch(rows: readonly (readonly Place[])[]): void {
    const first = this.corners(rows.flat());
    for (let row = 0; row + 1 < rows.length; row++) this.band(first, rows[0]!.length, row);
  }

  /**
   * A patch as above with a hole between two of its rows: `ring` goes round it in the sense from along a row to upwards.
   * `flat` lays the patch out, along a row to the right and from row to row upwards.
   */
  holedPatch(
    rows: readonly (readonly Place[])[],
    [low, high]: readonly [number, number],
    ring: readonly Place[],
    flat: (place: Place) => Point,
  ): void {
    const wide = rows[0]!.length;
    const first = this.corners(rows.flat());
    for (let row = 0; row + 1 < rows.length; row++)
      if (row < low || row >= high) this.band(first, wide, row);
    const places = [...rows.flat(), ...ring];
    const at = (row: number, i: number): number => row * wide + i;
    const across = Array.from({ length: wide }, (_, i) => i);
    const sides = Array.from({ length: high - low - 1 }, (_, k) => low + 1 + k);
    const frame = [
      ...across.map((i) => at(low, i)),
      ...sides.map((row) => at(row, wide - 1)),
      ...across.map((i) => at(high, wide - 1 - i)),
      ...sides.map((row) => at(low + high - row, 0)),
    ];
    const hole = ring.map((_, i) => rows.length * wide + i);
    this.corners(ring);
    const laid = (k: number): Point => flat(places[k]!);
    for (const [a, b, c] of between(frame, hole, laid))
      this.triangle(first + a, first + b, first + c);
  }

  /** A line that is seen as an edge. */
  edge(line: readonly Place[]): void {
    for (let i = 0; i + 1 < line.length; i++) this.edges.push(...line[i]!, ...line[i + 1]!);
  }

  /** A patch with its borders as edges. */
  edgedPatch(rows: readonly (readonly Place[])[]): void {
    this.patch(rows);
    this.border(rows);
  }

  /** The borders of a patch as edges, the rows' ends too unless each row comes back to its beginning. */
  border(rows: readonly (readonly Place[])[]): void {
    for (const row of [rows[0]!, rows.at(-1)!]) this.edge(row);
    if (rows.every((row) => row[0] === row.at(-1))) return;
    for (const end of [0, -1]) this.edge(rows.map((row) => row.at(end)!));
  }

  /** Between two parallel straight rows of any number of places; the outside is as for `patch`. */
  strip(lower: readonly Place[], upper: readonly Place[]): void {
    const first = this.corners([...lower, ...upper]);
    let [a, b] = [0, 0];
    while (a + 1 < lower.length || b + 1 < upper.length) {
      const below = first + a;
      const above = first + lower.length + b;
      // whichever row is behind, so that no triangle is a needle
      const isLower = b + 1 >= upper.length || (a + 1) * upper.length < (b + 1) * lower.length;
      if (a + 1 < lower.length && isLower) {
        this.triangle(below, below + 1, above);
        a++;
      } else {
        this.triangle(below, above + 1, above);
        b++;
      }
    }
  }

  made(): Mesh {
    return {
      positions: new Float32Array(this.positions),
      indices: new Uint32Array(this.indices),
      edges: new Float32Array(this.edges),
    };
  }

  /** The index of the first of them. */
  private corners(places: readonly Place[]): number {
    const first = this.positions.length / 3;
    for (const place of places) this.positions.push(...place);
    return first;
  }

  /** Between a row of a patch and the next one. */
  private band(first: number, wide: number, row: number): void {
    for (let i = 0; i + 1 < wide; i++) {
      const [a, b] = [first + row * wide + i, first + row * wide + i + 1];
      this.triangle(a, b, b + wide);
      this.triangle(a, b + wide, a + wide);
    }
  }

  /** None where two corners are at one place: there the surface has drawn together. */
  private triangle(a: number, b: number, c: number): void {
    if (!this.meet(a, b) && !this.meet(b, c) && !this.meet(c, a)) this.indices.push(a, b, c);
  }

  private meet(a: number, b: number): boolean {
    const { positions: at } = this;
    const [i, k] = [3 * a, 3 * b];
    return at[i] === at[k] && at[i + 1] === at[k + 1] && at[i + 2] === at[k + 2];
  }
}

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
  private readonly positions = new Threes(spareFloats.pop() ?? new Float32Array(1536));
  private readonly indices = new Threes(spareIndices.pop() ?? new Uint32Array(1536));
  private readonly edges = new Threes(spareFloats.pop() ?? new Float32Array(1536));

  /**
   * A smooth patch through rows of equally many places. Its outside is where `(along a row) x (from row to row)` points.
   */
  patch(rows: readonly (readonly Place[])[]): void {
    const first = this.corners(rows);
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
    const first = this.corners(rows);
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
    this.corners([ring]);
    const laid = (k: number): Point => flat(places[k]!);
    for (const [a, b, c] of between(frame, hole, laid))
      this.triangle(first + a, first + b, first + c);
  }

  /** A line that is seen as an edge. */
  edge(line: readonly Place[]): void {
    for (let i = 0; i + 1 < line.length; i++) {
      this.edges.add(line[i]!);
      this.edges.add(line[i + 1]!);
    }
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
    const first = this.corners([lower, upper]);
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

  /** Ends the making: the maker's own room is used for the next one. */
  made(): Mesh {
    const { positions, indices, edges } = this;
    spareFloats.push(positions.room, edges.room);
    spareIndices.push(indices.room);
    return {
      positions: positions.room.slice(0, positions.length),
      indices: indices.room.slice(0, indices.length),
      edges: edges.room.slice(0, edges.length),
    };
  }

  /** The index of the first of them. */
  private corners(rows: readonly (readonly Place[])[]): number {
    const first = this.positions.length / 3;
    for (const row of rows) for (const place of row) this.positions.add(place);
    return first;
  }

  /** Between a row of a patch and the next one. */
  private band(first: number, wide: number, row: number): void {
    for (let i = 0; i + 1 < wide; i++) {
      const a = first + row * wide + i;
      const b = a + 1;
      this.triangle(a, b, b + wide);
      this.triangle(a, b + wide, a + wide);
    }
  }

  /** None where two corners are at one place: there the surface has drawn together. */
  private triangle(a: number, b: number, c: number): void {
    if (!this.meet(a, b) && !this.meet(b, c) && !this.meet(c, a)) this.indices.add([a, b, c]);
  }

  private meet(a: number, b: number): boolean {
    const { room: at } = this.positions;
    const i = 3 * a;
    const k = 3 * b;
    return at[i] === at[k] && at[i + 1] === at[k + 1] && at[i + 2] === at[k + 2];
  }
}

/** Fresh memory for every body would take longer than all its places. */
const spareFloats: Float32Array<ArrayBuffer>[] = [];
const spareIndices: Uint32Array<ArrayBuffer>[] = [];

/** Numbers in threes, of which there may be many: an array of plain numbers takes several times as long to fill. */
class Threes<Room extends Float32Array<ArrayBuffer> | Uint32Array<ArrayBuffer>> {
  length = 0;

  constructor(public room: Room) {}

  add(three: readonly [number, number, number]): void {
    if (this.length === this.room.length) this.grow();
    const { room, length } = this;
    room[length] = three[0];
    room[length + 1] = three[1];
    room[length + 2] = three[2];
    this.length = length + 3;
  }

  private grow(): void {
    const { room } = this;
    this.room = new (room.constructor as new (length: number) => Room)(2 * room.length);
    this.room.set(room);
  }
}

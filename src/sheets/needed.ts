/** Which tiles of a grid are needed: those whose cells hold something of the drawing. */
import type { Grid, TilePlace } from './grid.js';
import { allPlaces, overlap, strip } from './grid.js';
import type { Speeds, Traces } from './traces.js';
import { sampling, visitPoints } from './traces.js';

/**
 * The tiles whose cells hold a point of the drawing's traces, from the top, left to right; null as soon as they are more
 * than `most`. A line that only nips the corner of a cell between two of its points is left to the strips of that tile's
 * neighbours, which show it whole.
 */
export function neededPlaces(traces: Traces, grid: Grid, most = Infinity): TilePlace[] | null {
  const cells = new Cells(grid, most);
  const { boxes, traced } = traces;
  for (let i = 0; i < traced.length && !cells.areEnough; i++) {
    const at = 4 * i;
    const known = cells.needBox(boxes[at]!, boxes[at + 1]!, boxes[at + 2]!, boxes[at + 3]!);
    if (!known) visitPoints(traces, i, (x, y, speeds) => cells.needPoint(x, y, speeds));
  }
  return cells.count > most ? null : cells.places();
}

/** Of a grid, with what is known of each: from dozens of grids thousands of points are asked for. */
class Cells {
  count = 0;
  private readonly needed: Uint8Array;
  private readonly width: number;
  private readonly height: number;
  private readonly minX: number;
  private readonly maxY: number;

  constructor(
    private readonly grid: Grid,
    private readonly most: number,
  ) {
    const { columns, rows, window, corner } = grid;
    this.needed = new Uint8Array(columns * rows);
    this.width = window.width - overlap;
    this.height = window.height - overlap;
    this.minX = corner.x + strip;
    this.maxY = corner.y - strip;
  }

  /** Whether there is nothing left to find out: all are needed, or more than asked for. */
  get areEnough(): boolean {
    return this.count === this.needed.length || this.count > this.most;
  }

  /**
   * Marks the cells of a trace, if its box is enough to tell. False where it takes its points to know, and not all of the cells
   * that it may come into are needed anyway.
   */
  needBox(minX: number, minY: number, maxX: number, maxY: number): boolean {
    const first = this.columnAt(minX);
    const last = this.columnAt(maxX);
    const top = this.rowAt(maxY);
    const bottom = this.rowAt(minY);
    // in a single row a line comes into each cell from end to end, and has points as near to its ends as they are to each other
    const isRun =
      (top === bottom &&
        first === this.columnAt(minX + sampling) &&
        last === this.columnAt(maxX - sampling)) ||
      (first === last &&
        top === this.rowAt(maxY - sampling) &&
        bottom === this.rowAt(minY + sampling));
    const isSure = isRun || (first === last && top === bottom);
    for (let row = top; row <= bottom; row++) {
      for (let column = first; column <= last; column++) {
        if (isSure) this.need(column, row);
        else if (this.needed[row * this.grid.columns + column] === 0) return false;
      }
    }
    return true;
  }

  /** Marks its cell, and answers how far the line runs on before it can come into a cell that isn't marked, mm. */
  needPoint(x: number, y: number, { right, left, up, down }: Speeds): number {
    const column = this.columnAt(x);
    const row = this.rowAt(y);
    this.need(column, row);
    if (this.areEnough) return Infinity;
    const { columns, rows } = this.grid;
    const minX = this.minX + column * this.width;
    const maxY = this.maxY - row * this.height;
    return Math.min(
      column > 0 ? runTo(x - minX, left) : Infinity,
      column < columns - 1 ? runTo(minX + this.width - x, right) : Infinity,
      row > 0 ? runTo(maxY - y, up) : Infinity,
      row < rows - 1 ? runTo(y - (maxY - this.height), down) : Infinity,
    );
  }

  places(): TilePlace[] {
    return allPlaces(this.grid).filter((_, index) => this.needed[index] === 1);
  }

  private need(column: number, row: number): void {
    const index = row * this.grid.columns + column;
    if (this.needed[index] === 1) return;
    this.needed[index] = 1;
    this.count += 1;
  }

  /** What lies outside of the grid belongs to the cells at its rim. */
  private columnAt(x: number): number {
    const column = Math.floor((x - this.minX) / this.width);
    return Math.min(this.grid.columns - 1, Math.max(0, column));
  }

  private rowAt(y: number): number {
    const row = Math.floor((y - this.maxY) / -this.height);
    return Math.min(this.grid.rows - 1, Math.max(0, row));
  }
}

function runTo(distance: number, speed: number): number {
  return speed > 0 ? distance / speed : Infinity;
}

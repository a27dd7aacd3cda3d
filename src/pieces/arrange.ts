/** Sets parts of a drawing out side by side or one below the other. */
import { drawingBounds } from '../drawing/bounds.js';
import { merge, type Part } from '../drawing/build.js';
import { movePart } from '../drawing/legend.js';

/** From the top downwards, left edges in line; the first part stays where it is. */
export function stacked(parts: readonly Part[], gap: number): Part {
  return inLine(parts, (before, next) => ({
    dx: before.minX - next.minX,
    dy: before.minY - gap - next.maxY,
  }));
}

/** From the left to the right, lower edges in line; the first part stays where it is. */
export function sideBySide(parts: readonly Part[], gap: number): Part {
  return inLine(parts, (before, next) => ({
    dx: before.maxX + gap - next.minX,
    dy: before.minY - next.minY,
  }));
}

type Bounds = ReturnType<typeof drawingBounds>;
type Shift = (before: Bounds, next: Bounds) => { dx: number; dy: number };

function inLine([first, ...rest]: readonly Part[], shift: Shift): Part {
  if (!first) return merge();
  const placed = [first];
  for (const part of rest) {
    const { dx, dy } = shift(drawingBounds(placed.at(-1)!), drawingBounds(part));
    placed.push(movePart(part, dx, dy));
  }
  return merge(...placed);
}

/** Scales of drawings that are pictures. A pattern is full size and needs none of this. */

/** Reductions recommended by ISO 5455:1979 (from memory), as parts of full size, the largest first. */
export const reductions = [1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50] as const;

/** `1:5` for 0.2; `1:1` when no scale is given. */
export function scaleText(scale = 1): string {
  return `1:${Number((1 / scale).toFixed(6))}`;
}

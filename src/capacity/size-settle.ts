/** Turns a vessel's dimensions so that what was asked to stay stays: its heads, the length of its staves. */
import type { Spec } from '../spec/spec.js';
import { shapeCrozeRadius, shapeOf, shapeStaveLength } from './shape.js';
import { withDimensions, type Dimensions } from './size-dimensions.js';

/** Null where it cannot be done. */
export type Settle = (size: Dimensions) => Dimensions | null;

export interface Staying {
  readonly headsStay: boolean;
  /** of a stave's outer face between its end cuts */
  readonly staveLength: number | undefined;
}

/** Settled when nothing moves by more than this (mm). */
const settled = 1e-9;
const mostRounds = 80;

/**
 * Both conditions hang almost wholly on one dimension each: the length of a stave on the height, the groove's radius near an
 * end on that end's diameter. Correcting these by what is missing closes in quickly.
 */
export function settling(spec: Spec, { headsStay, staveLength }: Staying): Settle {
  const crozeRadius = shapeCrozeRadius(shapeOf(spec), 'bottom');
  const corrected = (size: Dimensions): Dimensions => {
    const shape = shapeOf(withDimensions(spec, size));
    const missing = headsStay ? crozeRadius - shapeCrozeRadius(shape, 'bottom') : 0;
    const stretch = staveLength === undefined ? 1 : staveLength / shapeStaveLength(shape);
    return { ...size, height: size.height * stretch, headEnd: size.headEnd + 2 * missing };
  };
  return (size) => {
    let now = size;
    for (let i = 0; i < mostRounds; i++) {
      const next = corrected(now);
      const move = Math.abs(next.height - now.height) + Math.abs(next.headEnd - now.headEnd);
      if (!Number.isFinite(move)) return null;
      now = next;
      if (move < settled) return now;
    }
    return null;
  };
}

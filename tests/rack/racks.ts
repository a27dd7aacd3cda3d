/** Racks for tests: invented widths, seeded. */
import type { MatchRequest } from '../../src/rack/request.js';
import { seeded } from '../../src/rack/random.js';
import type { Stock, StockStave } from '../../src/rack/stock.js';
import { measuringStep } from '../../src/rack/step.js';

export interface RackShape {
  readonly count: number;
  readonly from: number;
  readonly to: number;
  /** widths are rounded to this, mm */
  readonly step: number;
  readonly seed: number;
}

/** Widths spread evenly over a range. */
export function widthsOf({ count, from, to, step, seed }: RackShape): number[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    return Math.round((from + (to - from) * random.unit()) / step) * step;
  });
}

export function stave(mark: string, width: number, other: Partial<StockStave> = {}): StockStave {
  return { mark, width, length: null, thickness: null, bung: null, note: '', ...other };
}

export function stockOf(widths: readonly number[]): Stock {
  return {
    staves: widths.map((width, i) => stave(`s${i}`, width)),
    step: measuringStep(widths),
  };
}

export function rack(shape: Partial<RackShape> & { readonly count: number }): Stock {
  return stockOf(widthsOf({ from: 60, to: 100, step: 0.5, seed: 1, ...shape }));
}

/** For a wine cask of 225 litres. */
export function asked(request: Partial<MatchRequest> = {}): MatchRequest {
  return {
    diameter: 678,
    measured: 'blank',
    vessels: 1,
    count: { min: 25, max: 30 },
    tolerance: 1.5,
    plane: 2,
    bung: 90,
    ...request,
  };
}

/** For two small vessels of five or six staves, of which every choice can be tried. */
export const askedSmall = (): MatchRequest =>
  asked({
    diameter: 110,
    count: { min: 5, max: 6 },
    bung: 75,
    tolerance: 1,
    plane: 0,
    vessels: 2,
  });

/** The staves that can be used for a request, narrowest first, with what every step of the search asks of them. */

import { halfAngle } from './closing.js';
import { readingOrder } from './marks.js';
import type { MatchRequest, UnfitStave } from './request.js';
import type { StockStave } from './stock.js';

/** Staves are meant by their index here. The order of the list that was read plays no part. */
export interface Pool {
  readonly request: MatchRequest;
  /** by width, then by mark */
  readonly staves: readonly StockStave[];
  readonly width: Float64Array;
  /** each stave's share of the girth at the spec's diameter: half-angle times diameter, mm */
  readonly girth: Float64Array;
  /** 1: wide enough and allowed to be the bung stave (all, when none is asked for) */
  readonly canBung: Uint8Array;
  /** distance of each width from the middle of the rack's range */
  readonly offMiddle: Float64Array;
  /** staves already standing, in the order they stand */
  readonly standing: readonly number[];
  readonly unfit: readonly UnfitStave[];
}

export function makePool(stock: readonly StockStave[], request: MatchRequest): Pool {
  const standing = new Set(request.standing ?? []);
  const unfit: UnfitStave[] = [];
  const staves = stock
    .filter((stave) => {
      const because = standing.has(stave.mark) ? tooWide(stave, request) : misfit(stave, request);
      if (because) unfit.push({ mark: stave.mark, because });
      return !because;
    })
    .sort((a, b) => a.width - b.width || compareMarks(a.mark, b.mark));
  const { diameter, measured } = request;
  const width = Float64Array.from(staves, (stave) => stave.width);
  const middle = ((width[0] ?? 0) + (width.at(-1) ?? 0)) / 2;
  const indexOf = new Map(staves.map((stave, index) => [stave.mark, index]));
  return {
    request,
    staves,
    width,
    girth: width.map((w) => halfAngle(w, diameter, measured) * diameter),
    canBung: Uint8Array.from(staves, (stave) => (canBung(stave, request) ? 1 : 0)),
    offMiddle: width.map((w) => Math.abs(w - middle)),
    standing: (request.standing ?? []).flatMap((mark) => indexOf.get(mark) ?? []),
    unfit: unfit.sort((a, b) => readingOrder(a.mark, b.mark)),
  };
}

/** By code unit, the same on every machine. */
function compareMarks(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function misfit(stave: StockStave, request: MatchRequest): UnfitStave['because'] | null {
  const { length, thicknessFor } = request;
  if (length !== undefined && stave.length !== null && stave.length < length) return 'length';
  if (thicknessFor && stave.thickness !== null && stave.thickness < thicknessFor(stave.width))
    return 'thickness';
  return tooWide(stave, request);
}

/** A stave measured corner to corner can't be wider than the ring, nor any stave face a quarter of it. */
function tooWide(stave: StockStave, request: MatchRequest): UnfitStave['because'] | null {
  return stave.width < request.diameter - request.tolerance ? null : 'width';
}

function canBung(stave: StockStave, request: MatchRequest): boolean {
  return request.bung === null || (stave.bung !== false && stave.width >= request.bung);
}

/** Lays rectangles out on sheets of one size, none turned: boards keep their grain along the sheet. */
import { MaxRectsPacker, PACKING_LOGIC } from 'maxrects-packer';

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Nested {
  /** index of the rectangle */
  readonly index: number;
  /** its lower left corner, from the sheet's */
  readonly x: number;
  readonly y: number;
}

export interface Nest {
  /** what lies on each sheet, by index */
  readonly sheets: readonly (readonly Nested[])[];
  /** indices of what is too large for a sheet */
  readonly tooLarge: readonly number[];
}

/** Every rectangle keeps `gap` from its neighbours and from the sheet's edges. The same sizes give the same nest. */
export function nest(sizes: readonly Size[], sheet: Size, gap: number): Nest {
  const room = { width: sheet.width - 2 * gap, height: sheet.height - 2 * gap };
  const fits = ({ width, height }: Size): boolean =>
    width <= room.width + slack && height <= room.height + slack;
  const tooLarge = sizes.flatMap((size, i) => (fits(size) ? [] : [i]));
  const packer = new MaxRectsPacker(sheet.width + slack, sheet.height + slack, gap, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: false,
    border: gap,
    logic: PACKING_LOGIC.MAX_AREA,
  });
  // the largest first, since the packer takes them as they come
  const order = sizes
    .map(({ width, height }, index) => ({ width: settled(width), height: settled(height), index }))
    .filter(({ index }) => !tooLarge.includes(index))
    .sort((a, b) => b.width * b.height - a.width * a.height || a.index - b.index);
  for (const { width, height, index } of order) packer.add(width, height, index);
  const sheets = packer.bins.map(({ rects }) =>
    rects
      .map(({ x, y, data }): Nested => ({ index: data as number, x, y }))
      .sort((a, b) => a.index - b.index),
  );
  return { sheets, tooLarge };
}

/** Boards that are alike but for the noise of arithmetic lie in the same order on every machine. */
const settled = (mm: number): number => Math.round(mm / slack) * slack;

/** Rounding must not keep out what just fits, mm. */
const slack = 1e-6;

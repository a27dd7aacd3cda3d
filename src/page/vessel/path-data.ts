/** Lines of drawings as path data for the screen: `y` downwards, one path for many lines, no finer than can be seen. */
import type { Curve, Stroke, Vertex } from '../../index.js';

/** To a hundredth of a millimetre. */
export function pathOf(strokes: readonly Pick<Stroke, 'curve'>[]): string {
  let data = '';
  for (const { curve } of strokes) data += dataOf(curve, hundredths);
  return data;
}

/** For small pictures: in whole tenths of a millimetre, which are written in a fraction of the time. */
export function pathInTenths(strokes: readonly Pick<Stroke, 'curve'>[]): string {
  let data = '';
  for (const { curve } of strokes) data += dataOf(curve, tenths);
  return data;
}

/** A length in mm as it is written, `-0` as 0. */
type Rounding = (length: number) => number;

const hundredths: Rounding = (length) => Math.round(length * 100) / 100 + 0;
export const tenths: Rounding = (length) => Math.round(length * 10) + 0;

function dataOf({ vertices, closed }: Curve, rounded: Rounding): string {
  const [first] = vertices;
  if (!first) return '';
  let data = `M${rounded(first.x)} ${rounded(-first.y)}`;
  for (let i = 1; i < vertices.length; i++)
    data += segmentTo(vertices[i - 1]!, vertices[i]!, rounded);
  if (!closed) return data;
  const last = vertices[vertices.length - 1]!;
  return `${data}${last.bulge === 0 ? '' : segmentTo(last, first, rounded)}Z`;
}

/** An arc of bulge `b` over a chord `c` has a radius of `c (1 + b^2) / 4 |b|`; a positive one runs against the screen's clock. */
function segmentTo(from: Vertex, to: Vertex, rounded: Rounding): string {
  const end = `${rounded(to.x)} ${rounded(-to.y)}`;
  const { bulge } = from;
  if (bulge === 0) return `L${end}`;
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const radius = rounded((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)));
  return `A${radius} ${radius} 0 ${Math.abs(bulge) > 1 ? 1 : 0} ${bulge > 0 ? 0 : 1} ${end}`;
}

/** The spec as the bench test knows it: everything written out, millimetres, nothing shared with the product. */
import { stringify } from 'yaml';

export interface BenchHeads {
  thickness: number;
  boards: number;
  clearance: number;
  crossGrain: number;
  croze: { inset: number; depth: number; width: number };
  edge: { thickness: number; fromInside: number; outerBevel: number; innerBevel: number };
}

export interface BenchSpec {
  name: string;
  vessel: 'cask' | 'tub';
  height: number;
  /** a cask's outside diameters and profile; a tub leaves them at 0 */
  bilge: number;
  ends: number;
  profile: 'arc' | 'parabola' | 'ellipse';
  /** a tub's outside diameters; a cask leaves them at 0 */
  top: number;
  bottom: number;
  staves: {
    /** 0 where `widths` is given */
    count: number;
    widths: number[];
    thickness: number;
    endThickness: number;
    inside: 'hollowed' | 'flat';
    outside: 'rounded' | 'flat';
    neutral: number;
    ends: 'overlong' | 'cut';
    trim: number;
  };
  chime: { bevelDegrees: number; flat: number };
  howel: { depth: number; beyondGroove: number };
  heads: BenchHeads;
  /** written to the file in these units; the numbers here stay in millimetres */
  units: 'mm' | 'in';
}

const notLengths = new Set(['count', 'neutral', 'bevelDegrees', 'boards']);

/** The spec file that a user would have written. */
export function yamlOf(spec: BenchSpec): string {
  const { count, widths, ...staves } = spec.staves;
  const outside =
    spec.vessel === 'cask'
      ? { bilge: spec.bilge, ends: spec.ends }
      : { top: spec.top, bottom: spec.bottom };
  const lengths = {
    height: spec.height,
    ...outside,
    staves: { ...(widths.length > 0 ? { widths } : { count }), ...staves },
    chime: spec.chime,
    howel: spec.howel,
    heads: spec.heads,
  };
  return stringify({
    vessel: spec.vessel,
    title: `Invented: ${spec.name}`,
    units: spec.units,
    ...(spec.vessel === 'cask' ? { profile: spec.profile } : {}),
    ...(spec.units === 'in' ? inInches(lengths) : lengths),
  });
}

function inInches<T extends object>(lengths: T): object {
  const converted = Object.entries(lengths).map(([key, value]: [string, unknown]) => {
    if (typeof value === 'number') return [key, notLengths.has(key) ? value : value / 25.4];
    if (Array.isArray(value)) return [key, value.map((v: number) => v / 25.4)];
    return [key, typeof value === 'object' && value !== null ? inInches(value) : value];
  });
  return Object.fromEntries(converted) as object;
}

/** Half-angles of the staves in ring order, and the factor by which the set's own closing scales every radius. */
export function ringOf(spec: BenchSpec): { alphas: number[]; scale: number } {
  const { count, widths } = spec.staves;
  if (widths.length === 0)
    return { alphas: Array.from({ length: count }, () => Math.PI / count), scale: 1 };
  const diameter = closingDiameter(widths);
  const widest = spec.vessel === 'cask' ? spec.bilge : Math.max(spec.top, spec.bottom);
  return { alphas: widths.map((w) => Math.atan(w / diameter)), scale: diameter / widest };
}

/** The diameter at which flat-faced staves of these widths stand in a closed ring; by bisection. */
export function closingDiameter(widths: readonly number[]): number {
  const total = widths.reduce((sum, w) => sum + w, 0);
  let low = total / Math.PI / 8;
  let high = total;
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    const angle = widths.reduce((sum, w) => sum + Math.atan(w / middle), 0);
    if (angle > Math.PI) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

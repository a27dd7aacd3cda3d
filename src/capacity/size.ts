/** Solves a vessel's dimensions for a capacity. Pure: Spec in, Spec out; lengths in mm. */
import { root } from '../geometry/quadrature.js';
import type { Issue } from '../spec/issue.js';
import type { Spec } from '../spec/spec.js';
import { solveVessel } from '../vessel/solve.js';
import { nearbySizes, type NearbySize } from './round-sizes.js';
import { asItCloses, shapeLitres, shapeOf } from './shape.js';
import { settling } from './size-settle.js';
import {
  changesBetween,
  dimensionsOf,
  tidied,
  withDimensions,
  type Change,
  type DimensionName,
  type Dimensions,
} from './size-dimensions.js';

/**
 * - `proportions`: height and diameters by the same factor; with a stave length, the diameters alone.
 * - `heads`: the bottom's diameter stays, to the last digit. A cask's bilge (tub: its top) stays, and the height gives the
 *   capacity; with a stave length, which settles the height, the bilge (top) does.
 * - `height`: the diameters by the same factor. No stave length can be asked for as well.
 */
export type Keep = 'proportions' | 'heads' | 'height';
export const keeps: readonly Keep[] = ['proportions', 'heads', 'height'];

export interface SizeRequest {
  readonly litres: number;
  readonly keep: Keep;
  /** of a stave's outer face between its end cuts, along the flat blank, trim left out */
  readonly staveLength?: number;
}

export interface Sized {
  readonly spec: Spec;
  readonly litres: number;
  readonly changes: readonly Change[];
  /** round dimensions, those nearest to the wanted capacity first */
  readonly nearby: readonly NearbySize[];
}

/**
 * Why not: no shape of this kind holds that much (`nearest` litres is as near as it gets, null where there is no shape at all),
 * or one does that cannot be built, for the reasons in `issues`.
 */
export interface Unreachable {
  readonly nearest: number | null;
  readonly issues: readonly Issue[];
  /** the spec that cannot be built */
  readonly spec: Spec | null;
}

export type SizeAnswer = Sized | { readonly unreachable: Unreachable };

/**
 * Wood and tool sizes (thicknesses, groove, edge, dowels, bung) stay as they are; hoops move with the height, mixed widths with
 * the girth.
 */
export function sizeFor(given: Spec, request: SizeRequest): SizeAnswer {
  const spec = asItCloses(given);
  const free = freeDimensions(request);
  const settle = settling(spec, {
    headsStay: request.keep === 'heads',
    staveLength: request.staveLength,
  });
  const litresOf = (size: Dimensions): number => shapeLitres(shapeOf(withDimensions(spec, size)));
  const at = (factor: number): Dimensions | null =>
    settle(scaled(dimensionsOf(spec), free, factor));
  const litresAt = (factor: number): number => {
    const size = at(factor);
    return size ? litresOf(size) : NaN;
  };
  const found = factorFor(request.litres, litresAt);
  const size = 'factor' in found && at(found.factor);
  if (!size)
    return {
      unreachable: { nearest: 'nearest' in found ? found.nearest : null, issues: [], spec: null },
    };
  const sized = tidied(withDimensions(spec, size), given);
  const litres = shapeLitres(shapeOf(asItCloses(sized)));
  const solved = solveVessel(sized);
  if ('issues' in solved)
    return { unreachable: { nearest: litres, issues: solved.issues, spec: sized } };
  const nearby = nearbySizes(sized, free, settle, request.litres);
  return { spec: sized, litres, changes: changesBetween(given, sized), nearby };
}

function freeDimensions({ keep, staveLength }: SizeRequest): DimensionName[] {
  if (keep === 'heads') return staveLength === undefined ? ['height'] : ['body'];
  const all = keep === 'proportions' && staveLength === undefined;
  return all ? ['height', 'body', 'headEnd'] : ['body', 'headEnd'];
}

function scaled(from: Dimensions, names: readonly DimensionName[], factor: number): Dimensions {
  const changes = names.map((name) => [name, from[name] * factor]);
  return { ...from, ...(Object.fromEntries(changes) as Partial<Dimensions>) };
}

/** Ten per cent at a time, up to a thousandfold: what is wanted lies between two neighbours, or cannot be had. */
const stride = 1.1;
const mostStrides = 72;
const halvings = 40;

type Found = { readonly factor: number } | { readonly nearest: number | null };

/**
 * The factor by which the free dimensions grow. The capacity grows with them, as far as there are shapes at all; past the last
 * one on the way, the limit is closed in on.
 */
function factorFor(litres: number, litresAt: (factor: number) => number): Found {
  let nearest: number | null = null;
  const missing = (factor: number): number => {
    const held = litresAt(factor);
    const nearer = nearest === null || Math.abs(held - litres) < Math.abs(nearest - litres);
    if (Number.isFinite(held) && nearer) nearest = held;
    return held - litres;
  };
  const first = missing(1);
  if (!Number.isFinite(first)) return { nearest };
  const step = first < 0 ? stride : 1 / stride;
  let [good, bad] = [1, NaN];
  for (let i = 0; i < mostStrides + halvings; i++) {
    const next = Number.isNaN(bad) ? good * step : (good + bad) / 2;
    const value = missing(next);
    if (first * value <= 0) return { factor: root(missing, good, next) };
    if (Number.isFinite(value)) good = next;
    else bad = next;
    if (Number.isNaN(bad) ? i >= mostStrides : Math.abs(bad / good - 1) < 1e-9) break;
  }
  return { nearest };
}

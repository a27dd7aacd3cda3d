/** The dimensions that sizing turns, and a spec with others in their place. Lengths in mm. */
import type { HoopSpec, Spec, Units } from '../spec/spec.js';
import { greatestDiameter } from '../vessel/profile.js';

/** `body` is a cask's bilge or a tub's top; `headEnd` the end that takes the head: a cask's ends, a tub's bottom. */
export interface Dimensions {
  readonly height: number;
  readonly body: number;
  readonly headEnd: number;
}

export type DimensionName = keyof Dimensions;

/** One value of a spec before and after, under its key in the file. */
export interface Change {
  readonly key: string;
  readonly from: number;
  readonly to: number;
}

export function dimensionsOf({ height, outside }: Spec): Dimensions {
  return outside.kind === 'cask'
    ? { height, body: outside.bilge, headEnd: outside.ends }
    : { height, body: outside.top, headEnd: outside.bottom };
}

/** Mixed staves grow and shrink with the girth, so that they still close. Everything else stays. */
export function withDimensions(spec: Spec, { height, body, headEnd }: Dimensions): Spec {
  const outside: Spec['outside'] =
    spec.outside.kind === 'cask'
      ? { ...spec.outside, bilge: body, ends: headEnd }
      : { ...spec.outside, top: body, bottom: headEnd };
  const resized = { ...spec, height, outside };
  const { widths } = spec.staves;
  if (!widths) return resized;
  const share = greatestDiameter(resized) / greatestDiameter(spec);
  return { ...resized, staves: { ...spec.staves, widths: widths.map((width) => width * share) } };
}

const millimetresPerInch = 25.4;
/** Finer than anybody builds, and coarse enough to read. */
const fine: Record<Units, number> = { mm: 0.001, in: millimetresPerInch / 10_000 };
/** Steps of a rule. */
const marked: Record<Units, number> = { mm: 0.5, in: millimetresPerInch / 32 };

/** mm; the noise of arithmetic. */
const unchanged = 1e-6;

/** As a file of those units writes it: inches kept to a billionth of a millimetre, as reading keeps them. */
export const onStep = (mm: number, step: number): number =>
  Math.round(Math.round(mm / step) * step * 1e9) / 1e9;

/** The spec with its dimensions rounded, and its hoops moved with the height. */
export function tidied(spec: Spec, before: Spec): Spec {
  const share = spec.height / before.height;
  const hoops = spec.hoops.map((hoop) => moved(hoop, share, marked[spec.units]));
  return { ...rounded(spec, before), hoops };
}

/** Height, diameters, thicknesses and mixed widths in as few digits as the work can tell apart, where they have changed. */
export function rounded(spec: Spec, before: Spec): Spec {
  const round = (mm: number, was: number | undefined): number =>
    was !== undefined && Math.abs(mm - was) < unchanged ? was : onStep(mm, fine[spec.units]);
  const [is, was] = [dimensionsOf(spec), dimensionsOf(before)];
  const sizes = {
    height: round(is.height, was.height),
    body: round(is.body, was.body),
    headEnd: round(is.headEnd, was.headEnd),
  };
  const { staves, ...rest } = withDimensions(spec, sizes);
  return {
    ...rest,
    staves: {
      ...staves,
      widths: staves.widths && staves.widths.map((w, i) => round(w, before.staves.widths?.[i])),
      thickness: round(staves.thickness, before.staves.thickness),
      endThickness: round(staves.endThickness, before.staves.endThickness),
    },
  };
}

function moved(hoop: HoopSpec, share: number, step: number): HoopSpec {
  if (share === 1) return hoop;
  return { ...hoop, offset: Math.max(0, onStep(hoop.offset * share, step)) };
}

/** What differs, in the order of the file. Widths of a mixed set count together, laid edge to edge. */
export function changesBetween(before: Spec, after: Spec): Change[] {
  const [was, is] = [flat(before), flat(after)];
  return [...is].flatMap(([key, to]) => {
    const from = was.get(key);
    return from === undefined || Math.abs(from - to) < unchanged ? [] : [{ key, from, to }];
  });
}

function flat({ height, outside, staves, hoops }: Spec): Map<string, number> {
  const diameters = Object.entries(outside).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  );
  const laid = staves.widths?.reduce((sum, width) => sum + width, 0);
  return new Map([
    ['height', height],
    ...diameters,
    ...(laid === undefined ? [] : [['staves.widths', laid] as const]),
    ['staves.thickness', staves.thickness],
    ['staves.endThickness', staves.endThickness],
    ...hoops.map(({ offset }, i) => [`hoops[${i}].offset`, offset] as const),
  ]);
}

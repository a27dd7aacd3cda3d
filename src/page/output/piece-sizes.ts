/** Sizes that are typed for some pieces: the widths of the stave fan, the plank for the boards of a head. */
import {
  fanFault,
  plankFault,
  type DrawOptions,
  type FanFault,
  type PlankFault,
} from '../../index.js';
import type { Spec } from '../../index.js';
import { readLength, type LengthProblem } from '../state/read-length.js';

export type SizeProblem = Exclude<LengthProblem, 'empty'> | 'one-alone' | FanFault | PlankFault;

/** `null` for boxes left empty: as usual. Where there is a problem, `box` is the one that it is about. */
export type SizeRead<T> =
  { readonly value: T | null } | { readonly problem: SizeProblem; readonly box: 0 | 1 };

/** As typed, in the units of the spec. */
export type Typed = readonly [string, string];

type Fan = NonNullable<DrawOptions['fan']>;
type Sheet = NonNullable<NonNullable<DrawOptions['router']>['sheet']>;

/** The narrowest and the widest stave of the fan. */
export function readFan(typed: Typed, spec: Spec): SizeRead<Fan> {
  const read = readTwo(typed, spec);
  if ('problem' in read || !read.value) return read as SizeRead<Fan>;
  const [from, to] = read.value;
  const problem = fanFault({ from, to }, spec);
  const box = problem === 'not-above-0' ? 0 : 1;
  return problem ? { problem, box } : { value: { from, to } };
}

/** Length along the grain, which is across the drawing, and width. */
export function readPlank(typed: Typed, spec: Spec): SizeRead<Sheet> {
  const read = readTwo(typed, spec);
  if ('problem' in read || !read.value) return read as SizeRead<Sheet>;
  const [width, height] = read.value;
  const problem = plankFault({ width, height });
  const isSecond = problem === 'not-above-0' ? width > 0 : height > width;
  return problem ? { problem, box: isSecond ? 1 : 0 } : { value: { width, height } };
}

/** Millimetres; both or neither. */
function readTwo(typed: Typed, { units }: Spec): SizeRead<readonly [number, number]> {
  const [first, second] = typed.map((text) => readLength(text, units)) as [Read, Read];
  if (isEmpty(first) && isEmpty(second)) return { value: null };
  for (const [read, box] of [
    [first, 0],
    [second, 1],
  ] as const)
    if ('problem' in read) {
      const { problem } = read;
      return { problem: problem === 'empty' ? 'one-alone' : problem, box };
    }
  return {
    value: [first, second].map((read) => ('mm' in read ? read.mm : NaN)) as [number, number],
  };
}

type Read = ReturnType<typeof readLength>;

const isEmpty = (read: Read): boolean => 'problem' in read && read.problem === 'empty';

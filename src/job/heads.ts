/** The heads of a vessel, those that are alike said once. */
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';

export interface NamedHead {
  readonly head: Head;
  readonly which: 'both' | 'top' | 'bottom';
  readonly count: number;
}

const alike = 0.001;

export function headsOf({ heads: { top, bottom } }: Vessel): NamedHead[] {
  if (!top) return [{ head: bottom, which: 'bottom', count: 1 }];
  const same =
    JSON.stringify(top.spec) === JSON.stringify(bottom.spec) &&
    Math.abs(top.diameter - bottom.diameter) < alike;
  if (same) return [{ head: bottom, which: 'both', count: 2 }];
  return [
    { head: top, which: 'top', count: 1 },
    { head: bottom, which: 'bottom', count: 1 },
  ];
}

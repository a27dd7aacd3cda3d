/** The widths that patterns for staves of uneven width are made for, mm across the flat outer face at the bilge. */
import type { Units } from '../spec/spec.js';
import type { Vessel } from '../vessel/vessel.js';

export interface WidthRange {
  readonly from: number;
  readonly to: number;
}

const steps: Readonly<Record<Units, number>> = { mm: 5, in: 6.35 };
const ordinary: WidthRange = { from: 60, to: 110 };

/** 60 to 110 mm, or about the vessel's own width where that range would miss it. */
export function ordinaryRange({ meanStave }: Vessel): WidthRange {
  const { width } = meanStave;
  if (width >= ordinary.from && width <= ordinary.to) return ordinary;
  return { from: width * 0.75, to: width * 1.35 };
}

/** From one width to the next, mm. */
export const stepOf = (units: Units): number => steps[units];

/** Every 5 mm, or every quarter of an inch, within a range; at least one. */
export function widthSteps({ from, to }: WidthRange, units: Units): number[] {
  const by = stepOf(units);
  const first = Math.ceil(from / by - 1e-9);
  const last = Math.max(first, Math.floor(to / by + 1e-9));
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * by);
}

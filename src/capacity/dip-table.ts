/** A table of dips: wet depth on the rod in even steps, and what it means in litres by the integral and by the old rules. */
import type { Vessel } from '../vessel/vessel.js';
import { dipLying, dipStanding, fullDipLying, fullDipStanding } from './dip.js';
import { lyingRule, standingRule } from './old-rules.js';
import { capacityLitres } from './volume.js';

export type Posture = 'lying' | 'standing';
export const postures: readonly Posture[] = ['lying', 'standing'];

export interface DipRow {
  /** mm */
  readonly dip: number;
  readonly litres: number;
  /** the gauger's old rule for the same depth; null where it leaves the range from empty to full */
  readonly oldRule: number | null;
  /** litres by which that rule is off */
  readonly oldRuleError: number | null;
}

export interface DipTable {
  readonly posture: Posture;
  /** wet depth of the full vessel, mm */
  readonly full: number;
  readonly rows: readonly DipRow[];
}

export const mostDipRows = 5000;

/** The posture in which a vessel is dipped: a cask lies, a tub stands. */
export const usualPosture = ({ spec }: Vessel): Posture =>
  spec.vessel === 'cask' ? 'lying' : 'standing';

const ways = {
  lying: { full: fullDipLying, litres: dipLying, rule: lyingRule },
  standing: { full: fullDipStanding, litres: dipStanding, rule: standingRule },
} as const;

export const fullDip = (vessel: Vessel, posture: Posture): number => ways[posture].full(vessel);

export const litresAtDip = (vessel: Vessel, posture: Posture, dip: number): number =>
  ways[posture].litres(vessel, dip);

/** From nothing in steps of `step` mm, and a last row at full. Throws where that is more than 5,000 rows: ask first. */
export function dipTable(vessel: Vessel, posture: Posture, step: number): DipTable {
  const { full, litres, rule } = ways[posture];
  const depth = full(vessel);
  const steps = Math.ceil(depth / step - 1e-9);
  if (!(steps > 0 && steps < mostDipRows)) throw new RangeError('dip table: step out of range');
  const capacity = capacityLitres(vessel);
  const rowAt = (dip: number): DipRow => {
    const held = litres(vessel, dip);
    const share = rule(dip / depth);
    const oldRule = share >= 0 && share <= 1 ? share * capacity : null;
    return { dip, litres: held, oldRule, oldRuleError: oldRule === null ? null : oldRule - held };
  };
  const dips = Array.from({ length: steps }, (_, i) => i * step);
  return { posture, full: depth, rows: [...dips, depth].map(rowAt) };
}

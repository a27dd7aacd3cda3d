/** How large a vessel is beside the wine cask that the defaults are measured on, and the rounding of what follows. */
import type { GivenHoop } from './given.js';
import { millimetresPerInch, roundedDownTo, roundedTo } from './length.js';
import type { CaskOutside, HoopSpec, TubOutside, Units } from './spec.js';

/** The wine cask: outside diameters, height, and stave thickness. */
export const wineCask = { diameter: 678, ends: 572, height: 945, thickness: 27 };

/** Defaults are rounded to sizes that a rule can show; sheet metal and the land's play need the finer step. */
interface Steps {
  readonly coarse: number;
  readonly fine: number;
}
export const stepsOf: Record<Units, Steps> = {
  mm: { coarse: 0.5, fine: 0.1 },
  in: { coarse: millimetresPerInch / 32, fine: millimetresPerInch / 64 },
};

export interface Scale {
  readonly steps: Steps;
  /** greatest outside diameter */
  readonly diameter: number;
  readonly height: number;
  readonly thickness: number;
  /** a length of the wine cask that goes with a power of the diameter */
  withDiameter(length: number, power: number): number;
  /** a length of the wine cask that goes with the stave thickness (its square root for `power` 0.5) */
  withThickness(length: number, power?: number): number;
  /** as `withDiameter`, but no more than a share of the height */
  capped(length: number, power: number, share: number): number;
  /** a distance along the axis that goes with the height */
  withHeight(length: number): number;
  /** a hoop with its thickness and lap filled in */
  hoop(given: GivenHoop): HoopSpec;
}

export function scale(
  outside: CaskOutside | TubOutside,
  height: number,
  givenThickness: number | undefined,
  steps: Steps,
): Scale {
  const diameter = outside.kind === 'cask' ? outside.bilge : Math.max(outside.top, outside.bottom);
  const girth = diameter / wineCask.diameter;
  const round = (length: number): number => roundedTo(length, steps.coarse);
  const down = (length: number): number => roundedDownTo(length, steps.coarse);
  // 0.55 gives 16 at 255 mm, 19 at 350, 23.5 at 530, 42 at 1,500: kegs to vats as they are made
  const thickness = givenThickness ?? round(wineCask.thickness * girth ** 0.55);
  const withDiameter = (length: number, power: number): number => round(length * girth ** power);
  return {
    steps,
    diameter,
    height,
    thickness,
    withDiameter,
    withThickness: (length, power = 1) => round(length * (thickness / wineCask.thickness) ** power),
    capped: (length, power, share) => Math.min(withDiameter(length, power), down(share * height)),
    withHeight: (length) => round((length * height) / wineCask.height),
    hoop: (given) => ({
      name: given.name,
      end: given.end ?? 'both',
      offset: given.offset,
      width: given.width,
      // a wide strap is a heavy one: 1.8 at 40 wide, 1.5 at 30, 1.0 at 15
      thickness: given.thickness ?? roundedTo(1.8 * (given.width / 40) ** 0.6, steps.fine),
      // 70 for the wine cask's rivets, 43 for a keg of 255 mm
      lap: given.lap ?? withDiameter(70, 0.5),
    }),
  };
}

/** All numbers of a vessel for programs: lengths in mm, angles in degrees. `schemas/figures.schema.json` describes it. */
import { massesOf, type Masses } from '../capacity/mass.js';
import { oimlLimitLitres } from '../capacity/oiml-limit.js';
import { recessLitres } from '../capacity/recess.js';
import { sensitivityOf, type Sensitivity } from '../capacity/sensitivity.js';
import { capacityLitres } from '../capacity/volume.js';
import type { Issue } from '../spec/issue.js';
import type { Head } from '../vessel/head.js';
import { widestHeight } from '../vessel/profile.js';
import { fixedBevelGap, type Stave } from '../vessel/stave.js';
import { stationsOf } from '../vessel/stations.js';
import { strapsToBuy, type StrapToBuy } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { workingHoopsOf, type WorkingHoop } from '../vessel/working-hoops.js';
import { hoopFigures, type HoopFigures } from './hoop-figures.js';

export const figuresVersion = 1;

export interface Figures {
  readonly version: number;
  readonly title: string;
  readonly capacityLitres: number;
  readonly recessLitres: number;
  /** casks: what OIML R 138:2007 lets a capacity be off, either way */
  readonly oimlLimitLitres?: number;
  /** kg */
  readonly masses: Masses;
  /** all staves laid edge to edge on the bench, measured at the bilge */
  readonly laidWidth: number;
  /** a mixed set: the outside diameter at the bilge at which it closes */
  readonly closesAt?: number;
  readonly stave: StaveFigures;
  /** a mixed set: each stave in ring order */
  readonly staves?: readonly MixedStaveFigures[];
  readonly heads: { readonly top: HeadFigures | null; readonly bottom: HeadFigures };
  readonly hoops: readonly HoopFigures[];
  /** by width and thickness */
  readonly strapsToBuy: readonly StrapToBuy[];
  /** raising and truss hoops */
  readonly workingHoops: readonly WorkingHoop[];
  /** what small errors of the bench do */
  readonly sensitivity: readonly Sensitivity[];
  readonly warnings: readonly Issue[];
}

type AtEnds = { readonly top: number; readonly bottom: number };

/** One stave; of a mixed set the one of the mean half-angle. */
export interface StaveFigures {
  readonly count: number;
  readonly blankThickness: number;
  readonly outerLength: number;
  readonly innerLength: number;
  readonly bilgeWidth: number;
  readonly endWidth: AtEnds;
  readonly endCutDegrees: AtEnds;
  readonly bevelDegrees: AtEnds & { readonly bilge: number };
  /** tubs: tilt of a saw blade that is set square to the stave's edge */
  readonly bladeTiltDegrees?: number;
  readonly fixedBevelGap: number;
  readonly outerStretchPercent: number;
  readonly stations: readonly {
    readonly s: number;
    readonly z: number;
    readonly width: number;
    readonly bevelDegrees: number;
    readonly thickness: number;
  }[];
}

export interface MixedStaveFigures {
  readonly width: number;
  readonly alphaDegrees: number;
  readonly blankThickness: number;
  readonly endWidth: AtEnds;
  readonly bevelDegrees: AtEnds & { readonly bilge: number };
}

export interface HeadFigures {
  readonly diameter: number;
  readonly crozeRadius: number;
  readonly chimeOpening: number;
  readonly boards: readonly { readonly width: number; readonly length: number }[];
  readonly dowels: readonly { readonly joint: number; readonly x: number }[];
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;

export function figuresOf(vessel: Vessel): Figures {
  const mixed = vessel.spec.staves.widths !== null;
  const capacity = capacityLitres(vessel);
  return {
    version: figuresVersion,
    title: vessel.spec.title,
    capacityLitres: capacity,
    recessLitres: recessLitres(vessel),
    ...(vessel.spec.vessel === 'cask' && { oimlLimitLitres: oimlLimitLitres(capacity) }),
    masses: massesOf(vessel),
    laidWidth: vessel.staves.reduce((sum, stave) => sum + stave.width, 0),
    ...(mixed && { closesAt: vessel.ring.closesAt }),
    stave: staveFigures(vessel, vessel.meanStave),
    ...(mixed && { staves: vessel.staves.map((stave) => mixedFigures(vessel, stave)) }),
    heads: {
      top: vessel.heads.top && headFigures(vessel.heads.top),
      bottom: headFigures(vessel.heads.bottom),
    },
    hoops: vessel.hoops.map((hoop) => hoopFigures(hoop, vessel.spec.units)),
    strapsToBuy: strapsToBuy(vessel.hoops),
    workingHoops: workingHoopsOf(vessel),
    sensitivity: sensitivityOf(vessel),
    warnings: vessel.warnings,
  };
}

function staveFigures(vessel: Vessel, stave: Stave): StaveFigures {
  const { spec, bend } = vessel;
  const { top, bottom } = stave.ends;
  const widest = widestHeight(spec);
  const gapAt = (z: number): number => fixedBevelGap(stave, widest, z);
  return {
    count: vessel.staves.length,
    blankThickness: stave.blankThickness,
    outerLength: top.outerStation - bottom.outerStation,
    innerLength: top.innerStation - bottom.innerStation,
    bilgeWidth: stave.width,
    endWidth: endWidths(vessel, stave),
    endCutDegrees: { top: degrees(top.angle), bottom: degrees(bottom.angle) },
    bevelDegrees: bevels(vessel, stave),
    ...(spec.vessel === 'tub' && { bladeTiltDegrees: degrees(stave.sawTilt(0)) }),
    fixedBevelGap: Math.max(gapAt(spec.height / 2), gapAt(-spec.height / 2)),
    outerStretchPercent: bend.outerStretch * 100,
    stations: stationsOf(vessel, stave).map(({ bevel, ...station }) => ({
      ...station,
      bevelDegrees: degrees(bevel),
    })),
  };
}

function mixedFigures(vessel: Vessel, stave: Stave): MixedStaveFigures {
  return {
    width: stave.width,
    alphaDegrees: degrees(stave.alpha),
    blankThickness: stave.blankThickness,
    endWidth: endWidths(vessel, stave),
    bevelDegrees: bevels(vessel, stave),
  };
}

function endWidths({ spec }: Vessel, stave: Stave): AtEnds {
  const at = (z: number): number => 2 * stave.halfWidth(z, 0);
  return { top: at(spec.height / 2), bottom: at(-spec.height / 2) };
}

function bevels({ spec }: Vessel, stave: Stave): StaveFigures['bevelDegrees'] {
  const at = (z: number): number => degrees(stave.bevel(z));
  return {
    bilge: at(widestHeight(spec)),
    top: at(spec.height / 2),
    bottom: at(-spec.height / 2),
  };
}

function headFigures(head: Head): HeadFigures {
  return {
    diameter: head.diameter,
    crozeRadius: head.groove.radius,
    chimeOpening: head.groove.opening,
    boards: head.boards.map(({ width, length }) => ({ width, length })),
    dowels: head.dowels.map(({ joint, x }) => ({ joint, x })),
  };
}

/** Vessels that every bench should see by name; all invented. */
import type { BenchSpec } from './bench-spec.js';

/** A wine cask of about 225 litres, the project's own example. */
export const wineCask: BenchSpec = {
  name: 'wine cask',
  units: 'mm',
  vessel: 'cask',
  height: 945,
  bilge: 678,
  ends: 572,
  profile: 'arc',
  top: 0,
  bottom: 0,
  staves: {
    count: 28,
    widths: [],
    thickness: 27,
    endThickness: 27,
    inside: 'hollowed',
    outside: 'rounded',
    neutral: 0.5,
    ends: 'cut',
    trim: 10,
  },
  chime: { bevelDegrees: 40, flat: 10 },
  howel: { depth: 2, beyondGroove: 20 },
  heads: {
    thickness: 27,
    boards: 6,
    clearance: 0,
    crossGrain: 0,
    croze: { inset: 60, depth: 5, width: 6 },
    edge: { thickness: 5.5, fromInside: 12, outerBevel: 35, innerBevel: 14 },
  },
};

const tub: BenchSpec = {
  ...wineCask,
  name: 'cylinder',
  vessel: 'tub',
  height: 700,
  bilge: 0,
  ends: 0,
  top: 600,
  bottom: 600,
};

const withStaves = (spec: BenchSpec, staves: Partial<BenchSpec['staves']>): BenchSpec => ({
  ...spec,
  staves: { ...spec.staves, ...staves },
});

const repeated = (pattern: number[], times: number): number[] =>
  Array.from({ length: times }, () => pattern).flat();

export const namedSpecs: BenchSpec[] = [
  wineCask,
  { ...withStaves(wineCask, { ends: 'overlong' }), name: 'wine cask left overlong' },
  { ...withStaves(wineCask, { endThickness: 22 }), name: 'wine cask thinned at the ends' },
  { ...withStaves(wineCask, { inside: 'flat', outside: 'flat' }), name: 'wine cask left flat' },
  { ...wineCask, name: 'wine cask in inches', units: 'in' },
  { ...wineCask, name: 'tight head', heads: { ...wineCask.heads, clearance: -0.6 } },
  {
    ...wineCask,
    name: 'head with an allowance across the grain',
    heads: { ...wineCask.heads, crossGrain: 3 },
  },
  {
    ...withStaves(wineCask, { count: 0, widths: repeated([71.5, 95, 82.5, 106], 6) }),
    name: 'mixed widths',
    bilge: 673.9,
  },
  {
    ...withStaves(wineCask, {
      count: 0,
      widths: repeated([71.5, 95, 82.5, 106], 6),
      inside: 'flat',
      outside: 'flat',
    }),
    name: 'mixed widths left flat, a little under the spec',
    profile: 'parabola',
    bilge: 676,
  },
  tub,
  { ...withStaves(tub, { inside: 'flat', outside: 'flat' }), name: 'cylinder left flat' },
  { ...wineCask, name: 'bilge barely above the ends', bilge: 572.02 },
  { ...wineCask, name: 'bilge barely above the ends, ellipse', bilge: 572.02, profile: 'ellipse' },
  { ...withStaves(wineCask, { count: 6 }), name: '6 staves' },
  { ...withStaves(wineCask, { count: 80 }), name: '80 staves' },
  { ...withStaves(tub, { count: 6 }), name: 'tub of 6 staves', top: 560, bottom: 640 },
  // (R_bottom - R_top) / height = tan 25 degrees
  { ...tub, name: 'tub leaning 25 degrees', height: 300, bottom: 780, top: 500.2154 },
  { ...tub, name: 'tub leaning -20 degrees', height: 400, bottom: 480, top: 771.1762 },
  // an arc's lean at its end is 2 atan(rise / half height)
  {
    ...wineCask,
    name: 'cask leaning 25 degrees at its ends',
    height: 700,
    bilge: 620,
    ends: 464.814,
  },
];

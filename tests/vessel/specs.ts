/** Specs for the model's tests, all invented: a wine cask, a bucket, and arbitrary vessels that a cooper could build. */
import fc from 'fast-check';
import type { CaskProfile, HeadSpec, Spec } from '../../src/spec/spec.js';
import { solveVessel } from '../../src/vessel/solve.js';
import type { Vessel } from '../../src/vessel/vessel.js';

fc.configureGlobal({ seed: 190_625, numRuns: 40 });

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (angle: number): number => (angle * 180) / Math.PI;

const wineHead: HeadSpec = {
  thickness: 27,
  boards: 6,
  widths: null,
  clearance: 0,
  crossGrain: 0,
  croze: { inset: 60, depth: 5, width: 6 },
  edge: { thickness: 5.5, fromInside: 12, outerBevel: 35, innerBevel: 14 },
  dowels: { diameter: 8, length: 50, spacing: 150, margin: 25 },
};

export const wineCask: Spec = {
  vessel: 'cask',
  title: 'Wine cask, invented for tests',
  units: 'mm',
  height: 945,
  outside: { kind: 'cask', bilge: 678, ends: 572, profile: 'arc' },
  staves: {
    count: 28,
    widths: null,
    thickness: 27,
    endThickness: 27,
    inside: 'hollowed',
    outside: 'rounded',
    neutral: 0.5,
    ends: 'overlong',
    trim: 10,
  },
  chime: { bevel: radians(40), flat: 10 },
  howel: { depth: 2, beyondGroove: 20 },
  heads: { top: wineHead, bottom: wineHead },
  hoops: [
    { name: 'chime', end: 'both', offset: 3, width: 40, thickness: 1.8, lap: 70 },
    { name: 'quarter', end: 'both', offset: 105, width: 32, thickness: 1.5, lap: 70 },
    { name: 'bilge', end: 'both', offset: 255, width: 35, thickness: 1.5, lap: 70 },
  ],
  bung: { diameter: 50 },
  sheet: { owner: '', number: '', date: '', creator: '', approved: '' },
};

const bucketHead: HeadSpec = {
  ...wineHead,
  thickness: 18,
  boards: 3,
  croze: { inset: 30, depth: 4, width: 5 },
  edge: { thickness: 4.5, fromInside: 8, outerBevel: 20, innerBevel: 10 },
  dowels: { diameter: 6, length: 30, spacing: 80, margin: 15 },
};

/** Wider at the top. */
export const bucket: Spec = {
  ...wineCask,
  vessel: 'tub',
  title: 'Bucket, invented for tests',
  height: 300,
  outside: { kind: 'tub', top: 320, bottom: 270 },
  staves: { ...wineCask.staves, count: 16, thickness: 18, endThickness: 18, trim: 8 },
  chime: { bevel: radians(40), flat: 8 },
  howel: { depth: 1.5, beyondGroove: 12 },
  heads: { top: null, bottom: bucketHead },
  hoops: [
    { name: 'lower', end: 'bottom', offset: 15, width: 30, thickness: 1.2, lap: 50 },
    { name: 'upper', end: 'top', offset: 40, width: 25, thickness: 1.2, lap: 50 },
  ],
  bung: null,
};

export const cylinder: Spec = {
  ...bucket,
  title: 'Straight tub, invented for tests',
  outside: { kind: 'tub', top: 300, bottom: 300 },
};

type Changes<T> = { [K in keyof T]?: T[K] extends object ? Changes<T[K]> : T[K] };

/** The spec with some keys changed; lists are replaced whole. `heads.both` changes every head. */
export function changed(
  spec: Spec,
  changes: Changes<Omit<Spec, 'heads' | 'hoops' | 'staves' | 'bung'>> & {
    staves?: Partial<Spec['staves']>;
    hoops?: Spec['hoops'];
    bung?: Spec['bung'];
    both?: Changes<HeadSpec>;
    top?: Changes<HeadSpec>;
    bottom?: Changes<HeadSpec>;
  },
): Spec {
  const { both, top, bottom, ...rest } = changes;
  const head = (old: HeadSpec, own: Changes<HeadSpec> | undefined): HeadSpec =>
    merged(merged(old, both ?? {}), own ?? {});
  return {
    ...merged(spec, rest),
    heads: {
      top: spec.heads.top && head(spec.heads.top, top),
      bottom: head(spec.heads.bottom, bottom),
    },
  };
}

function merged<T>(old: T, changes: object): T {
  const copy: Record<string, unknown> = { ...(old as object) };
  for (const [key, value] of Object.entries(changes) as [string, unknown][]) {
    const nested = value !== null && typeof value === 'object' && !Array.isArray(value);
    const before = copy[key];
    copy[key] = nested && before !== null && before !== undefined ? merged(before, value) : value;
  }
  return copy as T;
}

/** The solved vessel; a spec that is refused fails the test with its issues. */
export function solved(spec: Spec): Vessel {
  const result = solveVessel(spec);
  if ('issues' in result) throw new Error(`refused: ${JSON.stringify(result.issues)}`);
  return result.vessel;
}

export const wallWithLean = (height: number, bottom: number, leanDegrees: number) => ({
  kind: 'tub' as const,
  bottom,
  top: bottom - 2 * height * Math.tan(radians(leanDegrees)),
});

/** In a million steps: much quicker to draw than doubles, and as good for lengths. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((step) => min + ((max - min) * step) / 1_000_000);

/** Everything that casks and tubs share, as shares of the greatest diameter. */
const shares = fc.record({
  diameter: between(200, 1500),
  count: fc.integer({ min: 6, max: 80 }),
  thickness: between(0.03, 0.06),
  thinning: fc.constantFrom(1, 1, 0.9, 0.8),
  flatInside: fc.boolean(),
  flatOutside: fc.boolean(),
  neutral: between(0.3, 1),
  cut: fc.boolean(),
  clearance: fc.constantFrom(0, -0.5, 1),
  boards: fc.integer({ min: 1, max: 8 }),
  widths: fc.option(fc.array(between(0.7, 1.4), { minLength: 80, maxLength: 80 }), { freq: 3 }),
});
type Shares = typeof shares extends fc.Arbitrary<infer T> ? T : never;

/** Lean at the ends up to 25 degrees, rise from 0.01 mm up. */
export const arbitraryCask: fc.Arbitrary<Spec> = fc
  .record({
    shares,
    slimness: between(1, 1.7),
    lean: fc.oneof(between(0, 25), fc.constant(0), fc.constant(25)),
    profile: fc.constantFrom<CaskProfile>('arc', 'parabola', 'ellipse'),
  })
  .map(({ shares, slimness, lean, profile }) => {
    const bilge = shares.diameter;
    const height = bilge * slimness;
    // the lean at the ends of an arc whose rise is b is 2 atan(b / (H/2)); of the others less than 1.1 times that
    const share = profile === 'arc' ? 1 : 0.9;
    const rise = Math.max(0.01, (height / 2) * Math.tan(radians(lean * share) / 2));
    const least = 0.3 * bilge;
    const ends = Math.max(least, bilge - 2 * rise);
    return dressed({ kind: 'cask', bilge, ends, profile }, height, shares);
  });

/** Lean from -20 degrees (wider at the top) to 25. */
export const arbitraryTub: fc.Arbitrary<Spec> = fc
  .record({
    shares,
    slimness: between(0.5, 1.2),
    lean: fc.oneof(between(-20, 25), fc.constant(0), fc.constant(25)),
  })
  .map(({ shares, slimness, lean }) => {
    const wide = shares.diameter;
    const taper = Math.abs(Math.tan(radians(lean)));
    const height = Math.min(wide * slimness, taper === 0 ? Infinity : (0.25 * wide) / taper);
    const narrow = wide - 2 * height * taper;
    const [top, bottom] = lean > 0 ? [narrow, wide] : [wide, narrow];
    return dressed({ kind: 'tub', top, bottom }, height, shares);
  });

export const arbitraryVessel: fc.Arbitrary<Spec> = fc.oneof(arbitraryCask, arbitraryTub);

function dressed(outside: Spec['outside'], height: number, s: Shares): Spec {
  const t = s.diameter * s.thickness;
  const widest = 1.4 * (Math.PI / s.count);
  const alpha = s.widths ? widest : Math.PI / s.count;
  // a flat inside leaves its corners too far back, and a backed outside its joints too thin, where staves are wide
  const setBack = (s.diameter / 2) * (1 / Math.cos(alpha) - 1);
  const flatInside = s.flatInside && setBack < 0.15 * t;
  const head: HeadSpec = {
    ...wineHead,
    thickness: t,
    boards: s.boards,
    clearance: s.clearance * 0.1 * t * 0.2,
    croze: { inset: 2.4 * t, depth: 0.17 * t, width: 0.22 * t },
    edge: { thickness: 0.2 * t, fromInside: 0.45 * t, outerBevel: 1.3 * t, innerBevel: 0.6 * t },
    dowels: { diameter: 0.3 * t, length: 1.5 * t, spacing: 5 * t, margin: 0.8 * t },
  };
  return {
    ...wineCask,
    vessel: outside.kind,
    title: 'Arbitrary vessel, invented for tests',
    height,
    outside,
    staves: {
      count: s.count,
      widths: s.widths ? closingWidths(s.widths.slice(0, s.count), s.diameter) : null,
      thickness: t,
      endThickness: t * s.thinning,
      inside: flatInside ? 'flat' : 'hollowed',
      outside: s.flatOutside || setBack > 0.5 * t ? 'flat' : 'rounded',
      neutral: s.neutral,
      ends: s.cut ? 'cut' : 'overlong',
      trim: 0.4 * t,
    },
    chime: { bevel: radians(40), flat: 0.35 * t },
    howel: { depth: 0.07 * t, beyondGroove: 0.7 * t },
    heads: { top: outside.kind === 'cask' ? head : null, bottom: head },
    hoops: [],
    bung: null,
  };
}

/** Widths in these proportions whose half-angles are shares of pi: they close at the diameter by construction. */
function closingWidths(shares: readonly number[], diameter: number): number[] {
  const sum = shares.reduce((a, b) => a + b, 0);
  return shares.map((share) => diameter * Math.tan((Math.PI * share) / sum));
}

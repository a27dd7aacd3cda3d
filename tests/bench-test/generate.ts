/** Random vessels that a cooper could build, seeded. Everything the measurements depend on is written out. */
import { closingDiameter } from './bench-spec.js';
import type { BenchSpec } from './bench-spec.js';

export type Random = () => number;

/** Mulberry32: small, seeded, good enough to scatter specs. */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

const between = (random: Random, low: number, high: number): number =>
  low + (high - low) * random();
const chance = (random: Random, share: number): boolean => random() < share;
const rounded = (x: number, digits = 2): number => Number(x.toFixed(digits));

export function randomSpec(seed: number): BenchSpec {
  const random = seeded(seed);
  const cask = chance(random, 0.6);
  const mixed = chance(random, 0.2);
  const count = countOf(random, mixed);
  const girth = count * between(random, 30, count < 12 ? 110 : 85);
  const diameter = rounded(Math.min(1500, Math.max(160, girth / Math.PI)), 1);
  const thickness = rounded(Math.min(40, (4 + 0.032 * diameter) * between(random, 0.85, 1.2)), 1);
  const outside = cask ? caskOutside(random, diameter) : tubOutside(random, diameter);
  const spec: BenchSpec = {
    name: `random ${seed}`,
    units: chance(random, 0.1) ? 'in' : 'mm',
    vessel: cask ? 'cask' : 'tub',
    ...outside,
    staves: {
      count,
      widths: [],
      thickness,
      endThickness: chance(random, 0.3)
        ? rounded(thickness * between(random, 0.8, 1), 1)
        : thickness,
      inside: chance(random, 0.4) ? 'flat' : 'hollowed',
      outside: chance(random, 0.4) ? 'flat' : 'rounded',
      neutral: rounded(between(random, 0.3, 1), 3),
      ends: chance(random, 0.5) ? 'overlong' : 'cut',
      trim: rounded(between(random, 4, 15), 1),
    },
    ...endFittings(random, thickness, diameter),
  };
  if (mixed) useWidths(random, spec);
  makeBuildable(spec);
  return spec;
}

/** 6 to 80; few of a mixed set, whose every stave is a drawing of its own. */
function countOf(random: Random, mixed: boolean): number {
  if (mixed) return Math.round(between(random, 6, 30));
  const few = chance(random, 0.2);
  return Math.round(few ? between(random, 6, 12) : between(random, 10, 80));
}

type Outside = Pick<BenchSpec, 'height' | 'bilge' | 'ends' | 'profile' | 'top' | 'bottom'>;

/** End lean up to 25 degrees, rise from 0.01 mm up, evenly on a logarithmic scale or on a plain one. */
function caskOutside(random: Random, bilge: number): Outside {
  const height = rounded(bilge * between(random, 1.1, 1.6), 1);
  const profile = (['arc', 'parabola', 'ellipse'] as const)[Math.floor(random() * 3)] ?? 'arc';
  const most = Math.min(0.1 * height, 0.16 * bilge);
  const rise = chance(random, 0.35)
    ? 0.01 * (most / 0.01) ** random()
    : between(random, 0.15 * most, most);
  const ends = rounded(bilge - 2 * Math.max(0.01, rise), 2);
  return { height, bilge, ends, profile, top: 0, bottom: 0 };
}

/** Lean from -20 degrees (wider at the top) to 25. */
function tubOutside(random: Random, wider: number): Outside {
  const lean = (between(random, -20, 25) * Math.PI) / 180;
  const tallest = Math.min(1.3 * wider, (0.25 * wider) / Math.max(0.01, Math.abs(Math.tan(lean))));
  const height = rounded(Math.max(120, between(random, 0.6, 1) * tallest), 1);
  const narrower = rounded(wider - 2 * height * Math.abs(Math.tan(lean)), 2);
  const [top, bottom] = lean > 0 ? [narrower, wider] : [wider, narrower];
  return { height, bilge: 0, ends: 0, profile: 'arc', top, bottom };
}

function endFittings(
  random: Random,
  thickness: number,
  diameter: number,
): Pick<BenchSpec, 'chime' | 'howel' | 'heads'> {
  const share = (of: number): number => rounded(of * thickness * between(random, 0.9, 1.1), 1);
  const edgeThickness = share(0.2);
  return {
    chime: { bevelDegrees: rounded(between(random, 32, 48), 0), flat: share(0.35) },
    howel: { depth: share(0.07), beyondGroove: share(0.7) },
    heads: {
      thickness,
      boards: Math.max(2, Math.min(8, Math.round(diameter / between(random, 80, 130)))),
      clearance: chance(random, 0.4) ? rounded(between(random, -0.5, 1), 2) : 0,
      crossGrain: 0,
      croze: {
        inset: share(2.2),
        depth: share(0.17),
        width: rounded(edgeThickness + 0.5, 1),
      },
      edge: {
        thickness: edgeThickness,
        fromInside: rounded(0.44 * thickness, 1),
        outerBevel: rounded(1.3 * thickness, 1),
        innerBevel: rounded(0.55 * thickness, 1),
      },
    },
  };
}

/** Uneven widths that close at the spec's diameter, or a shade beside it where the profile scales exactly. */
function useWidths(random: Random, spec: BenchSpec): void {
  const wider = spec.vessel === 'cask' ? spec.bilge : Math.max(spec.top, spec.bottom);
  const raw = Array.from({ length: spec.staves.count }, () => between(random, 0.75, 1.35));
  const beside =
    spec.profile === 'arc' && spec.vessel === 'cask' ? 1 : between(random, 0.998, 1.002);
  const factor = (wider * beside) / closingDiameter(raw);
  spec.staves.widths = raw.map((w) => rounded(w * factor));
  spec.staves.count = 0;
}

/** Takes back what no wood would stand: flat insides whose groove would cut through, rounding that eats the stave. */
function makeBuildable(spec: BenchSpec): void {
  const { staves, heads, howel } = spec;
  const wider = spec.vessel === 'cask' ? spec.bilge : Math.max(spec.top, spec.bottom);
  const widest = staves.widths.length > 0 ? Math.max(...staves.widths) : 0;
  const alpha = staves.count > 0 ? Math.PI / staves.count : Math.atan(widest / wider);
  const cornerStandsBack = (wider / 2) * (1 / Math.cos(alpha) - 1);
  const wood = Math.min(staves.thickness, staves.endThickness);
  const left = wood - howel.depth - heads.croze.depth - cornerStandsBack;
  if (staves.inside === 'flat' && left < 0.4 * wood) staves.inside = 'hollowed';
  const backed = (wider / 2) * (1 - Math.cos(alpha));
  if (staves.inside === 'flat' && backed > 0.15 * staves.thickness) staves.outside = 'flat';
}

/** Measures of what stands in a vessel that isn't full, and of hoops. */
import { yamlOf } from '../bench-test/bench-spec.js';
import { caskWithInside, tubWithInside } from './inside-spec.js';
import { numberIn, type Inputs, type Measure } from './inputs.js';
import { dipAt, drawingOf, figuresFor, lapsOf, plainSpec } from './product.js';
import type { PublishedFigures } from './product.js';

/** A straight tub of 1 m inside; lying, it fills as a circle does. */
const cylinder = yamlOf(
  tubWithInside({ top: 1000, bottom: 1000, depth: 800, thickness: 20, endToHead: 50 }),
);

/** Share of the capacity at a share of the depth. */
function shareAt(yaml: string, posture: 'lying' | 'standing', wet: number): number {
  const { litres, capacity } = dipAt(yaml, posture, wet);
  return litres / capacity;
}

/** A gauger's solid as a cask of staves so thin that they hardly tell: what remains is taken out by extrapolation. */
function lyingShare(inputs: Inputs): number {
  const shares = [8, 16, 24].map((thickness) =>
    shareAt(gauged(inputs, thickness), 'lying', numberIn(inputs, 'wet')),
  ) as [number, number, number];
  return 3 * shares[0] - 3 * shares[1] + shares[2];
}

function gauged(inputs: Inputs, thickness: number): string {
  const profile = inputs.solid === 'spheroid' ? 'ellipse' : 'parabola';
  const head = 800 * numberIn(inputs, 'H');
  return yamlOf(
    caskWithInside({ profile, bilge: 800, head, between: 4800, thickness, endToHead: 72 }),
  );
}

/** The rule as `dip` shows it, as a share: it knows no other dimensions. */
function oldRuleShare(yaml: string, posture: 'lying' | 'standing', wet: number): number {
  const { oldRule, capacity } = dipAt(yaml, posture, wet);
  return (oldRule ?? NaN) / capacity;
}

/** Numbers on the rod of a cylinder go evenly with height: litres between two of them, over the amounts they say. */
function litresPerAmount(): number[] {
  const radius = 500;
  const columns = new Map<string, { amount: number; place: number }[]>();
  for (const { text, at } of drawingOf(cylinder, 'dip-rod')?.letterings ?? []) {
    if (!/^\d+$/.test(text)) continue;
    const key = at.x.toFixed(1);
    columns.set(key, [...(columns.get(key) ?? []), { amount: Number(text), place: at.y }]);
  }
  return [...columns.values()]
    .filter((marks) => marks.length > 2)
    .map((marks) => {
      const [first, last] = [marks[0]!, marks.at(-1)!];
      const height = Math.abs((last.place - first.place) / (last.amount - first.amount));
      return (Math.PI * radius * radius * height) / 1e6;
    });
}

function gallonOnRod({ gallon }: Inputs): number {
  const found = litresPerAmount().sort((a, b) => a - b);
  // litres, US gallons, imperial gallons; the depth's own scale is the last or the first by far
  const gallons = found.filter((litres) => litres > 2 && litres < 6);
  if (gallons.length !== 2) throw new Error(`scales on the rod: ${found.join(', ')}`);
  return gallon === 'us' ? (gallons[0]! * 1e6) / 25.4 ** 3 : gallons[1]!;
}

export const dipMeasures: Record<string, Measure> = {
  segmentOfLyingCylinder: (inputs) =>
    (shareAt(cylinder, 'lying', numberIn(inputs, 'height')) * Math.PI) / 4,
  lyingShare,
  oldRuleOf: (inputs) => {
    const wet = numberIn(inputs, 'wet') / numberIn(inputs, 'depth');
    const posture = inputs.posture === 'lying' ? 'lying' : 'standing';
    return oldRuleShare(plainSpec(cask), posture, wet) * numberIn(inputs, 'capacity');
  },
  lyingRuleError: (inputs) => {
    const rule = oldRuleShare(gauged(inputs, 8), 'lying', numberIn(inputs, 'wet'));
    return rule / lyingShare(inputs) - 1;
  },
  gallonOnRod,
  oimlShare: (inputs) => {
    const { oimlLimitLitres, capacityLitres } = figuresFor(plainSpec(inputs));
    return (oimlLimitLitres ?? NaN) / capacityLitres;
  },
  oimlLitres: (inputs) => figuresFor(plainSpec(inputs)).oimlLimitLitres ?? NaN,
  hoopOverSmallerGirth: (inputs) => {
    const name = String(inputs.hoop);
    const { cutLength, nearGirth, farGirth } = hoopOf(inputs, name);
    return (cutLength - lapOf(inputs, name)) / Math.min(nearGirth, farGirth);
  },
  lapOverWidth: (inputs) => {
    const ratios = ['chime', 'quarter', 'bilge'].map((name) => {
      return lapOf(inputs, name) / hoopOf(inputs, name).width;
    });
    // the furthest from two
    return ratios.reduce((far, ratio) => (Math.abs(ratio - 2) > Math.abs(far - 2) ? ratio : far));
  },
  sectionReduction: (inputs) => 1 / (drawingOf(plainSpec(inputs), 'section')?.scale ?? NaN),
};

const cask: Inputs = { height: 945, bilge: 678, ends: 572, staves: 28 };

function hoopOf(inputs: Inputs, name: string): PublishedFigures['hoops'][number] {
  const hoop = figuresFor(plainSpec(inputs)).hoops.find((each) => each.name === name);
  if (!hoop) throw new Error(`no hoop ${name}`);
  return hoop;
}

function lapOf(inputs: Inputs, name: string): number {
  return lapsOf(plainSpec(inputs)).get(name) ?? NaN;
}

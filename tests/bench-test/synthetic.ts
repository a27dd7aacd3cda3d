/**
 * A stave and a head drawn by another route, so that the bench itself can be tested before it judges anyone:
 * joint planes are cut with section planes in space, stations come from stepping along the profile, and the
 * edges are arcs through three points.
 */
import type { BenchSpec } from './bench-spec.js';
import { outsideProfile } from './profile.js';

type Vec = readonly [number, number, number];
export interface Corner {
  x: number;
  y: number;
  bulge: number;
}

interface Step {
  z: number;
  s: number;
  r: number;
  /** tangent of the profile in (r, z), unit length */
  tangent: readonly [number, number];
  t: number;
}

const steps = 6000;

/** Walks along the profile in small equal steps of z, midpoint rule with Richardson's correction. */
function walk(spec: BenchSpec, from: number, to: number): Step[] {
  const profile = outsideProfile(spec);
  const { thickness, endThickness, neutral } = spec.staves;
  const thicknessAt = (z: number): number =>
    thickness + (endThickness - thickness) * ((2 * z) / spec.height) ** 2;
  const rate = (z: number): number => {
    const { slope, second } = profile.at(z);
    const stretch = Math.hypot(1, slope);
    return stretch + (neutral * thicknessAt(z) * second) / stretch ** 2;
  };
  const h = (to - from) / steps;
  const coarse = (z: number): number => h * rate(z + h / 2);
  const fine = (z: number): number => (h / 2) * (rate(z + h / 4) + rate(z + (3 * h) / 4));
  const list: Step[] = [];
  let s = 0;
  for (let i = 0; i <= steps; i++) {
    const z = from + i * h;
    const { r, slope } = profile.at(z);
    const stretch = Math.hypot(1, slope);
    list.push({ z, s, r, tangent: [slope / stretch, 1 / stretch], t: thicknessAt(z) });
    s += (4 * fine(z) - coarse(z)) / 3;
  }
  return list;
}

/** Where the joint plane cuts a section's line at a depth: half the stave's width there, by vectors in space. */
function halfWidthInSpace(step: Step, depth: number, alpha: number): number {
  const [tr, tz] = step.tangent;
  const inward: Vec = [-tz, 0, tr];
  const start: Vec = [step.r + depth * inward[0], 0, step.z + depth * inward[2]];
  const across: Vec = [0, 1, 0];
  const planeNormal: Vec = [Math.sin(alpha), -Math.cos(alpha), 0];
  return -dot(planeNormal, start) / dot(planeNormal, across);
}

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The two faces of the stave with half-angle `alpha`, as closed curves of arcs. */
export function syntheticFaces(
  spec: BenchSpec,
  alpha: number,
  blankThickness: number,
  arcsPerEdge: number,
): { outline: Corner[]; hidden: Corner[]; ends: [number, number] } {
  const reach = spec.height / 2 + spec.staves.trim + 2 * blankThickness + 2;
  const path = [...walk(spec, 0, -reach).slice(1).reverse(), ...walk(spec, 0, reach)];
  const depthAt = (step: Step): number => blankThickness + step.t - spec.staves.thickness;
  const innerZ = (step: Step): number => step.z + depthAt(step) * step.tangent[0];
  const half = spec.height / 2;
  const outerEnds = [-half, half].map((z) => crossing(path, (p) => p.z - z));
  const innerEnds = [-half, half].map((z) => crossing(path, (p) => innerZ(p) - z));
  const trimmed = [
    Math.min(outerEnds[0] ?? 0, innerEnds[0] ?? 0) - spec.staves.trim,
    Math.max(outerEnds[1] ?? 0, innerEnds[1] ?? 0) + spec.staves.trim,
  ];
  const overlong = spec.staves.ends === 'overlong';
  const face = (ends: number[], depth: (step: Step) => number): Corner[] =>
    outlineOf((s) => halfWidthInSpace(...placeAt(path, s, depth), alpha), ends, arcsPerEdge);
  return {
    outline: face(overlong ? trimmed : outerEnds, () => 0),
    hidden: face(overlong ? trimmed : innerEnds, depthAt),
    ends: [outerEnds[0] ?? 0, outerEnds[1] ?? 0],
  };
}

/** Station at which `f` changes sign, by linear interpolation between close steps. */
function crossing(path: Step[], f: (step: Step) => number): number {
  const index = path.findIndex((step, i) => i > 0 && f(step) > 0);
  const [before, after] = [path[index - 1], path[index]];
  if (!before || !after) throw new Error('the path never crosses');
  const share = f(before) / (f(before) - f(after));
  return before.s + share * (after.s - before.s);
}

function placeAt(path: Step[], s: number, depth: (step: Step) => number): [Step, number] {
  let [low, high] = [0, path.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((path[middle]?.s ?? 0) <= s) low = middle;
    else high = middle;
  }
  const [a, b] = [path[low], path[high]];
  if (!a || !b) throw new Error('off the path');
  const u = (s - a.s) / (b.s - a.s);
  const mix = (p: number, q: number): number => p + (q - p) * u;
  const step: Step = {
    z: mix(a.z, b.z),
    s,
    r: mix(a.r, b.r),
    t: mix(a.t, b.t),
    tangent: [mix(a.tangent[0], b.tangent[0]), mix(a.tangent[1], b.tangent[1])],
  };
  return [step, depth(step)];
}

function outlineOf(
  halfWidth: (s: number) => number,
  ends: number[],
  arcsPerEdge: number,
): Corner[] {
  const [left = 0, right = 0] = ends;
  const at = (i: number): number => left + ((right - left) * i) / arcsPerEdge;
  const lower: Corner[] = [];
  const upper: Corner[] = [];
  for (let i = 0; i <= arcsPerEdge; i++) {
    const last = i === arcsPerEdge;
    lower.push({
      x: at(i),
      y: -halfWidth(at(i)),
      bulge: last ? 0 : bulgeThrough(halfWidth, at(i), at(i + 1)),
    });
    upper.push({
      x: at(arcsPerEdge - i),
      y: halfWidth(at(arcsPerEdge - i)),
      bulge: last ? 0 : bulgeThrough(halfWidth, at(arcsPerEdge - i), at(arcsPerEdge - i - 1)),
    });
  }
  return [...lower, ...upper];
}

/** Bulge of the arc through the middle of the edge: twice its rise over its chord. */
function bulgeThrough(halfWidth: (s: number) => number, from: number, to: number): number {
  const rise = halfWidth((from + to) / 2) - (halfWidth(from) + halfWidth(to)) / 2;
  return (2 * rise) / Math.hypot(to - from, halfWidth(to) - halfWidth(from));
}

export function circleCorners(radius: number): Corner[] {
  return [0, 1, 2, 3].map((i) => ({
    x: radius * Math.cos((i * Math.PI) / 2),
    y: radius * Math.sin((i * Math.PI) / 2),
    bulge: Math.SQRT2 - 1,
  }));
}

/** A small DXF: closed polylines by layer, and cross lines on `station`. */
export function dxfText(layers: Record<string, Corner[]>, crossLines: number[] = []): string {
  const curves = Object.entries(layers).map(([layer, corners]) => [
    '0\nLWPOLYLINE\n8\n' + layer,
    `90\n${corners.length}\n70\n1`,
    ...corners.map(({ x, y, bulge }) => `10\n${x}\n20\n${y}\n42\n${bulge}`),
  ]);
  const lines = crossLines.map((x) => `0\nLINE\n8\nstation\n10\n${x}\n20\n-9\n11\n${x}\n21\n9`);
  return [
    '0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC',
    '0\nSECTION\n2\nENTITIES',
    ...curves.flat(),
    ...lines,
    '0\nENDSEC\n0\nEOF\n',
  ].join('\n');
}

/** One stave's DXF with half-angle `alpha`. */
export function syntheticStave(
  spec: BenchSpec,
  alpha: number,
  blankThickness: number,
  arcsPerEdge: number,
): string {
  const { outline, hidden, ends } = syntheticFaces(spec, alpha, blankThickness, arcsPerEdge);
  return dxfText({ outline, hidden }, ends);
}

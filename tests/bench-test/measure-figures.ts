/** Judges the printed numbers against the exact ones. */
import { ringOf } from './bench-spec.js';
import type { BenchSpec } from './bench-spec.js';
import { exactChimeOpening, exactGroove, exactStave } from './exact.js';
import type { ExactStave } from './exact.js';
import type { BenchFigures } from './figures-shape.js';
import { tolerance } from './tolerances.js';
import type { Notebook } from './verdict.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

export function measureFigures(figures: BenchFigures, spec: BenchSpec, notebook: Notebook): void {
  const { alphas, scale } = ringOf(spec);
  const { stave } = figures;
  notebook.note('figures: stave count', stave.count - alphas.length, tolerance.figure);
  if (spec.staves.widths.length > 0) measureSet(figures, spec, alphas, scale, notebook);
  else measureStaveFigures(stave, spec, exactStave(spec, alphas[0] ?? 0), notebook);
  for (const end of ['top', 'bottom'] as const) {
    const head = figures.heads[end];
    if (!head) continue;
    const exact = exactGroove(spec, end);
    notebook.note('figures: head diameter', head.diameter - exact.head, tolerance.figure);
    notebook.note('figures: croze radius', head.crozeRadius - exact.radius, tolerance.figure);
    const opening = head.chimeOpening - exactChimeOpening(spec, end);
    notebook.note('figures: chime opening', opening, tolerance.figure);
  }
}

function measureSet(
  figures: BenchFigures,
  spec: BenchSpec,
  alphas: readonly number[],
  scale: number,
  notebook: Notebook,
): void {
  const widest = spec.vessel === 'cask' ? spec.bilge : Math.max(spec.top, spec.bottom);
  const closesAt = figures.closesAt ?? NaN;
  notebook.note('figures: closing diameter', closesAt - widest * scale, tolerance.figure);
  alphas.forEach((alpha, i) => {
    const listed = figures.staves?.[i];
    const off = (listed?.alphaDegrees ?? NaN) - degrees(alpha);
    notebook.note('figures: half-angles of the set', off, tolerance.angle);
    const { blankThickness } = exactStave(spec, alpha);
    const thickness = (listed?.blankThickness ?? NaN) - blankThickness;
    notebook.note('figures: blanks of the set', thickness, tolerance.figure);
  });
}

function measureStaveFigures(
  stave: BenchFigures['stave'],
  spec: BenchSpec,
  exact: ExactStave,
  notebook: Notebook,
): void {
  const length = (name: string, value: number, truth: number): void =>
    notebook.note(`figures: ${name}`, value - truth, tolerance.figure);
  const angle = (name: string, value: number, truth: number): void =>
    notebook.note(`figures: ${name}`, value - truth, tolerance.angle);
  const { outerEnd, innerEnd, bend, blankThickness, alpha } = exact;
  const bevelAt = (z: number): number =>
    degrees(Math.atan(Math.tan(alpha) * bend.sectionAt(z).cos));
  length('blank thickness', stave.blankThickness, blankThickness);
  length('outer length', stave.outerLength, outerEnd.top - outerEnd.bottom);
  for (const end of ['top', 'bottom'] as const) {
    const z = end === 'top' ? spec.height / 2 : -spec.height / 2;
    length('end width', stave.endWidth[end], 2 * exact.halfWidth(outerEnd[end], 'outer'));
    angle('bevel at the ends', stave.bevelDegrees[end], bevelAt(z));
  }
  length('inner length', stave.innerLength, innerEnd.top - innerEnd.bottom);
  const longer = { top: innerEnd.top - outerEnd.top, bottom: outerEnd.bottom - innerEnd.bottom };
  for (const end of ['top', 'bottom'] as const) {
    // a thinned blank is thinner than its middle where the saw comes out
    const depth = exact.depthAt(bend.sectionAt(bend.heightOf(innerEnd[end])));
    angle('end cut', stave.endCutDegrees[end], degrees(Math.atan(longer[end] / depth)));
  }
  if (spec.staves.endThickness === spec.staves.thickness)
    length('gap left by one gauge', stave.fixedBevelGap, gaugeGap(spec, exact));
  measureBilge(stave, spec, exact, notebook);
  for (const { s, z, width, bevelDegrees, thickness } of stave.stations) {
    const section = bend.sectionAt(z);
    length('station of a height', s, bend.stationOf(z));
    length('width at a station', width, 2 * exact.halfWidth(s, 'outer'));
    angle('bevel at a station', bevelDegrees, bevelAt(z));
    length('thickness at a station', thickness, exact.depthAt(section));
  }
}

/**
 * A gauge set to the bilge bevel takes `T tan(alpha)` off each edge by depth T where `T cos(phi) tan(alpha)` was
 * due; square to the joint that leaves `T sin(alpha) (1 - cos(phi))` a stave. A tub's bevel is the same all along.
 */
function gaugeGap(spec: BenchSpec, { alpha, bend, blankThickness }: ExactStave): number {
  if (spec.vessel === 'tub') return 0;
  const { cos } = bend.sectionAt(spec.height / 2);
  return 2 * blankThickness * Math.sin(alpha) * (1 - cos);
}

/** "At the bilge" is at the wider end of a tub. */
function measureBilge(
  stave: BenchFigures['stave'],
  spec: BenchSpec,
  exact: ExactStave,
  notebook: Notebook,
): void {
  const { bend, alpha } = exact;
  const half = spec.height / 2;
  const widest = spec.vessel === 'cask' ? 0 : spec.top >= spec.bottom ? half : -half;
  const section = bend.sectionAt(widest);
  const width = 2 * section.r * Math.tan(alpha);
  notebook.note('figures: width at the bilge', stave.bilgeWidth - width, tolerance.figure);
  const bevel = degrees(Math.atan(Math.tan(alpha) * section.cos));
  notebook.note('figures: bevel at the bilge', stave.bevelDegrees.bilge - bevel, tolerance.angle);
  if (spec.vessel === 'tub') {
    // square to the edge instead of square to the stave's middle
    const tilt = degrees(Math.asin(Math.sin(alpha) * section.cos));
    const found = stave.bladeTiltDegrees ?? NaN;
    notebook.note('figures: blade tilt', found - tilt, tolerance.angle);
    return;
  }
  const { t, kappa } = section;
  const strain = spec.staves.neutral * t * kappa;
  if (spec.profile !== 'arc' || spec.staves.endThickness > t) return;
  const percent = (100 * strain) / (1 - strain);
  notebook.note('figures: outer stretch', stave.outerStretchPercent - percent, tolerance.angle);
}

/** Opens the DXF files of a folder, and judges what holds for every file: readable, in millimetres, closed, nothing twice. */
import type { Curve, Point } from '../geometry/curve.js';
import { boundsOf } from '../geometry/measure.js';
import { distance } from '../geometry/vector.js';
import { doubledLine } from './doubled.js';
import { stated, type Check, type Finding } from './finding.js';
import type { PackFile } from './folder.js';
import type { Part } from './parts.js';
import { readDxf, type DxfDrawing } from './read-dxf.js';
import { limits, tolerance } from './tolerance.js';

/** A file's curves, by layer. */
export interface Pattern {
  readonly file: string;
  readonly curves: (layer: string) => readonly Curve[];
}

export interface Opened {
  /** those that can be measured, by file name */
  readonly patterns: ReadonlyMap<string, Pattern>;
  readonly findings: readonly Finding[];
}

/** Where a router or a saw may follow a line. Other lines mark places, and two places may coincide. */
const edgeLayers: readonly string[] = ['outline', 'hidden', 'joint', 'bore'];
/** Views of the whole vessel, where parts that touch share their edges: nobody cuts along them. */
const views: readonly string[] = ['section.dxf', 'raising.dxf'];
const wordLayers: readonly string[] = ['lettering', 'dimension'];
const millimetre = 4;

export function openPatterns(files: readonly PackFile[], parts: readonly Part[]): Opened {
  const patterns = new Map<string, Pattern>();
  const findings: Finding[] = [];
  for (const file of files.filter(({ name }) => name.endsWith('.dxf'))) {
    const part = parts.find((each) => each.file === file.name);
    const opened = open(file, part);
    findings.push(...opened.findings);
    if (opened.pattern) patterns.set(file.name, opened.pattern);
  }
  return { patterns, findings: passesTogether(findings) };
}

function open(
  { name, text, refusal }: PackFile,
  part: Part | undefined,
): { pattern: Pattern | null; findings: Finding[] } {
  const drawing = text === null ? refusal : readDxf(text);
  if (typeof drawing === 'string') {
    return { pattern: null, findings: [stated('file-readable', false, name, drawing)] };
  }
  const curves = drawing.entities.flatMap(({ layer, curve }) => (curve ? [{ layer, curve }] : []));
  const lines = curves.filter(({ layer }) => !wordLayers.includes(layer));
  const count = lines.reduce((sum, { curve }) => sum + curve.vertices.length, 0);
  if (count > limits.segments) {
    return { pattern: null, findings: [stated('file-readable', false, name, 'too-many-lines')] };
  }
  const scale = checkScale(name, drawing, lines, part);
  const pattern: Pattern = {
    file: name,
    curves: (wanted) => curves.filter(({ layer }) => layer === wanted).map(({ curve }) => curve),
  };
  const findings = [
    stated('file-readable', true, name),
    checkUnit(name, drawing),
    scale,
    checkLines(name, drawing),
    ...checkClosed(name, pattern.curves('outline')),
    ...(views.includes(name) ? [] : [checkDoubled(name, lines, part)]),
  ];
  return { pattern: scale.passed ? pattern : null, findings };
}

function checkUnit(name: string, { unit }: DxfDrawing): Finding {
  const finding = stated('units', unit === millimetre, name, `unit-${unit ?? 'none'}`);
  return { ...finding, measured: unit, expected: millimetre };
}

/** By the size that the piece is due to have, or by its lettering, which is 1.8 to 20 mm high on every drawing. */
function checkScale(
  name: string,
  { entities }: DxfDrawing,
  lines: readonly { layer: string; curve: Curve }[],
  part: Part | undefined,
): Finding {
  const outlines = lines.filter(({ layer }) => layer === 'outline').map(({ curve }) => curve);
  const bounds = boundsOf(...outlines);
  if (part?.extent && bounds) {
    const measured = Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY);
    return scaleFinding(name, measured, part.extent, measured / part.extent);
  }
  const heights = entities.flatMap(({ textHeight }) => textHeight ?? []);
  const [least, greatest] = [Math.min(...heights), Math.max(...heights)];
  if (greatest > limits.greatestLettering) return letteringFinding(name, greatest, 20);
  if (least < limits.leastLettering) return letteringFinding(name, least, 2.5);
  return stated('scale', true, name);
}

const letteringFinding = (name: string, measured: number, expected: number): Finding => ({
  ...stated('scale', false, name, 'lettering'),
  measured,
  expected,
  unit: 'mm',
});

function scaleFinding(name: string, measured: number, expected: number, ratio: number): Finding {
  const passed = ratio < limits.scale && ratio > 1 / limits.scale;
  const isInch = (factor: number): boolean => Math.abs(factor / 25.4 - 1) < 0.1;
  const reason = isInch(ratio) ? 'inch-large' : isInch(1 / ratio) ? 'inch-small' : 'scale';
  return {
    ...stated('scale', passed, name, passed ? undefined : reason),
    measured,
    expected,
    unit: 'mm',
  };
}

function checkLines(name: string, { entities }: DxfDrawing): Finding {
  const strange = entities.find(({ curve, textHeight }) => !curve && textHeight === null);
  return stated('known-lines', !strange, name, strange?.type, strange && { layer: strange.layer });
}

function checkClosed(name: string, outlines: readonly Curve[]): Finding[] {
  const open = outlines.filter(({ closed }) => !closed);
  if (open.length === 0) return [stated('closed-contours', true, name)];
  return open.slice(0, 3).map((curve) => {
    const [from, to] = [curve.vertices[0]!, curve.vertices.at(-1)!];
    const gap = distance(from, to);
    const reason = gap > tolerance.closed ? 'open' : 'not-joined';
    const place = { layer: 'outline', x: to.x, y: to.y };
    const finding = stated('closed-contours', false, name, reason, place);
    return { ...finding, measured: gap, expected: 0, unit: 'mm' };
  });
}

function checkDoubled(
  name: string,
  lines: readonly { layer: string; curve: Curve }[],
  part: Part | undefined,
): Finding {
  const edges = lines.filter(({ layer }) => edgeLayers.includes(layer));
  // a rim without clearance stands on the groove's bottom, which is the origin of its section
  const mayTouch = (point: Point): boolean => part?.kind === 'edge' && Math.abs(point.x) < 0.001;
  const found = doubledLine(edges, mayTouch);
  const place = found ? { layer: found.layer, x: found.point.x, y: found.point.y } : {};
  return stated('doubled-lines', !found, name, undefined, place);
}

/** One finding for all files that passed a check, and one for each that did not. */
function passesTogether(findings: readonly Finding[]): Finding[] {
  const passed = new Map<Check, string[]>();
  for (const { check, files } of findings.filter((each) => each.passed))
    passed.set(check, [...(passed.get(check) ?? []), ...files]);
  return [
    ...findings.filter((each) => !each.passed),
    ...[...passed].map(([check, files]) => stated(check, true, files)),
  ];
}

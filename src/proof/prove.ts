/**
 * The proof: what the files of a folder measure, held against what the vessel of its spec should be. Every length that is
 * judged is taken from a DXF file; the staves are bent and set in a ring by this folder's own numbers.
 */
import type { End } from '../spec/spec.js';
import { strapsOf } from '../vessel/strap.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { bendingOf, heightAt, type Bending } from './bending.js';
import { checkBoard } from './board.js';
import { checkCapacity } from './capacity.js';
import { dueStave, ends, towards, type DueStave } from './due.js';
import { stated, type Face, type Finding, type Proof } from './finding.js';
import { checkFolder, wantedFiles, type PackFile } from './folder.js';
import { checkGroove, drawnGroove, dueGrooveHeight } from './groove.js';
import { checkHeadEdge } from './head-edge.js';
import { checkHead, dueRim } from './head.js';
import { checkHoopSheet } from './hoop-sheet.js';
import { checkSeats, checkStraps, hoopSeats } from './hoops.js';
import { partsOf, type Part } from './parts.js';
import { openPatterns, type Pattern } from './patterns.js';
import {
  checkRing,
  measureJoints,
  worstJoint,
  type JointGaps,
  type MeasuredJoint,
} from './ring.js';
import { readLines, stationsAlong, type StaveLines } from './stave-lines.js';
import { checkEnd, takeStave, type DrawnStave } from './stave.js';

export interface WholeProof extends Proof {
  /** the worst joint, all along; null when no ring could be set up */
  readonly joint: JointGaps | null;
  /** patterns of the vessel that the folder was drawn without, by file name: nothing was judged by them */
  readonly notDrawn: readonly string[];
}

/** Judges the files of a folder. Nothing in them makes it throw. */
export function provePack(vessel: Vessel, files: readonly PackFile[]): WholeProof {
  const parts = partsOf(vessel);
  const wanted = wantedFiles(files, parts);
  const opened = openPatterns(files, parts);
  const bending = bendingOf(vessel);
  const bench: Bench = { vessel, bending, parts, patterns: opened.patterns };
  const staves = takeStaves(bench);
  const ring = ringOf(bench, staves);
  const joints = measureJoints(ring ?? [], bending);
  // its lines stand for all: hoops and grooves lie at the same stations of every stave
  const model = staves.find(({ drawn }) => drawn !== null && drawn === ring?.[0]) ?? null;
  const findings = [
    ...checkFolder(files, parts, wanted),
    ...opened.findings,
    ...staves.flatMap((stave) => stave.findings),
    ...standing(bench, ring, joints, staves, wanted),
    ...checkHeads(bench, model),
    ...checkHoops(bench, model),
  ];
  return {
    passed: findings.every(({ passed }) => passed),
    findings,
    joint: joints.length > 0 ? worstJoint(joints) : null,
    notDrawn: parts.map(({ file }) => file).filter((file) => !wanted.includes(file)),
  };
}

interface Bench {
  readonly vessel: Vessel;
  readonly bending: Bending;
  readonly parts: readonly Part[];
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/** A stave's file, and the stave in it if it could be taken off. */
interface Taken {
  readonly part: Part;
  readonly stave: Stave;
  readonly due: DueStave;
  readonly drawn: DrawnStave | null;
  readonly lines: StaveLines;
  readonly findings: readonly Finding[];
}

function takeStaves({ vessel, bending, parts, patterns }: Bench): Taken[] {
  const dues = new Map<number, DueStave>();
  return parts.flatMap((part) => {
    const pattern = patterns.get(part.file);
    if (!pattern || (part.kind !== 'stave' && part.kind !== 'stave-each')) return [];
    const stave = part.kind === 'stave' ? vessel.meanStave : vessel.staves[part.number - 1]!;
    const due = dues.get(stave.alpha) ?? dueStave(vessel.spec, bending, stave.alpha);
    dues.set(stave.alpha, due);
    return [take(vessel, part, stave, due, pattern, bending)];
  });
}

function take(
  vessel: Vessel,
  part: Part,
  stave: Stave,
  due: DueStave,
  pattern: Pattern,
  bending: Bending,
): Taken {
  const lines = readLines(vessel, stave, pattern, due, bending);
  const taken = takeStave(pattern, due, bending);
  if (!('due' in taken)) {
    return { part, stave, due, drawn: null, lines, findings: [...taken, ...lines.findings] };
  }
  const endFindings = ends.flatMap((end) =>
    checkEnd(taken, end, finishedEnd(vessel, taken, lines, end), vessel.spec.height, bending),
  );
  const grooves = ends.flatMap((end) => {
    const groove = vessel.heads[end] && drawnGroove(lines, end, bending);
    return groove ? checkGroove(vessel, end, groove, pattern.file) : [];
  });
  const seats = checkSeats(vessel, hoopSeats(vessel, lines, bending), pattern.file);
  const findings = [...taken.findings, ...endFindings, ...lines.findings, ...grooves, ...seats];
  return { part, stave, due, drawn: taken, lines, findings };
}

/** A cut stave ends there; on an overlong one lines show where to trim it, one for both faces if the cut is square. */
function finishedEnd(
  { spec }: Vessel,
  { due, drawnEnds }: DrawnStave,
  lines: StaveLines,
  end: End,
): Record<Face, number> {
  if (spec.staves.ends === 'cut') return drawnEnds[end];
  const outer = lines.drawnAt('station-line', { station: due.ends[end].outer }) ?? NaN;
  const isSquare = Math.abs(due.ends[end].outer - due.ends[end].inner) < 0.002;
  return { outer, inner: lines.drawnAt('end-line', { end }) ?? (isSquare ? outer : NaN) };
}

/** All staves in order; null when one is missing or cannot be measured. */
function ringOf({ vessel }: Bench, staves: readonly Taken[]): DrawnStave[] | null {
  if (!vessel.spec.staves.widths) {
    const drawn = staves.find(({ part }) => part.kind === 'stave')?.drawn;
    return drawn ? vessel.staves.map(() => drawn) : null;
  }
  const each = staves.filter(({ part }) => part.kind === 'stave-each');
  const ring = each.flatMap(({ drawn }) => drawn ?? []);
  return ring.length === vessel.staves.length ? ring : null;
}

/** What is judged with all staves standing. */
function standing(
  bench: Bench,
  ring: readonly DrawnStave[] | null,
  joints: readonly MeasuredJoint[],
  staves: readonly Taken[],
  wanted: readonly string[],
): Finding[] {
  const { vessel, bending, parts } = bench;
  const first = ring && staves.find(({ drawn }) => drawn === ring[0]);
  if (!ring || !first) {
    const files = parts.filter(({ needed, ends }) => needed && ends.length === 0);
    const names = files.map(({ file }) => file);
    if (!names.some((name) => wanted.includes(name))) return [];
    return [
      stated('joint-gap', false, names, 'not-measured'),
      stated('capacity', false, names, 'not-measured'),
    ];
  }
  const { from, to } = holding(bench, first);
  return [
    ...checkRing(vessel, ring, joints, stationsAlong(vessel, first.stave, first.due), bending),
    checkCapacity(vessel, ring, from, to, bending),
  ];
}

/** Heights of the heads' inside faces in the drawn grooves; a tub holds up to the drawn rim. */
function holding({ vessel, bending }: Bench, taken: Taken): { from: number; to: number } {
  const faceOf = (end: End): number =>
    grooveHeight(vessel, taken, end, bending) -
    towards(end) * vessel.spec.heads[end]!.edge.fromInside;
  if (vessel.heads.top) return { from: faceOf('bottom'), to: faceOf('top') };
  const rim = bending.sectionAtStation(finishedEnd(vessel, taken.drawn!, taken.lines, 'top').outer);
  return { from: faceOf('bottom'), to: rim ? heightAt(rim, 0) : NaN };
}

/** As drawn on the stave or, where it is not, as the spec has it. */
function grooveHeight(vessel: Vessel, taken: Taken | null, end: End, bending: Bending): number {
  const drawn = taken && drawnGroove(taken.lines, end, bending);
  return drawn?.middle ?? dueGrooveHeight(vessel, end);
}

function checkHeads({ vessel, bending, parts, patterns }: Bench, model: Taken | null): Finding[] {
  return parts.flatMap((part) => {
    const pattern = patterns.get(part.file);
    if (!pattern) return [];
    return part.ends.flatMap((end) => {
      const height = grooveHeight(vessel, model, end, bending);
      if (part.kind === 'head') return checkHead(vessel, pattern, end, height, bending);
      if (part.kind === 'edge') return checkHeadEdge(vessel, pattern, end, bending);
      const rim = dueRim(vessel, bending, end, height);
      return checkBoard(vessel, pattern, end, part.number, rim);
    });
  });
}

function checkHoops({ vessel, bending, parts, patterns }: Bench, model: Taken | null): Finding[] {
  const seats = hoopSeats(vessel, model?.lines ?? null, bending);
  const straps = strapsOf(vessel.hoops);
  return parts.flatMap(({ file, kind, number }) => {
    const pattern = patterns.get(file);
    if (!pattern) return [];
    if (kind === 'hoops') return checkStraps(vessel, seats, pattern);
    if (kind !== 'sheet') return [];
    const strap = straps[number - 1]!;
    return checkHoopSheet(strap, seats[vessel.hoops.indexOf(strap.hoop)]!, pattern);
  });
}

/** The whole bench: DXF texts and litres in, a verdict out. Knows the spec and nothing of the product. */
import { ringOf } from './bench-spec.js';
import type { BenchSpec } from './bench-spec.js';
import { exactLitres } from './exact.js';
import { measureHead } from './measure-head.js';
import { measureStave } from './measure-stave.js';
import { readDxf } from './read-dxf.js';
import { measureRing } from './ring.js';
import type { BentStave } from './ring.js';
import { tolerance } from './tolerances.js';
import { Notebook } from './verdict.js';
import type { Verdict } from './verdict.js';

export interface Work {
  /** one stave's DXF for each stave of the ring; equal staves repeat the same text */
  staves: string[];
  heads: { top: string | null; bottom: string };
  litres: number;
}

export function judge(spec: BenchSpec, work: Work): Verdict {
  const notebook = new Notebook();
  const { alphas } = ringOf(spec);
  const bent = new Map<string, BentStave | null>();
  const ring = alphas.map((alpha, i) => {
    const text = work.staves[i] ?? '';
    const key = `${alpha} ${text}`;
    const known = bent.get(key);
    if (known !== undefined) return known;
    const stave = measureStave(readDxf(text), spec, alpha, notebook);
    bent.set(key, stave);
    return stave;
  });
  const standing = ring.filter((stave) => stave !== null);
  if (standing.length === alphas.length) measureRing(standing, notebook);
  if (work.heads.top !== null) measureHead(readDxf(work.heads.top), spec, 'top', notebook);
  measureHead(readDxf(work.heads.bottom), spec, 'bottom', notebook);
  notebook.note('capacity', work.litres / exactLitres(spec) - 1, tolerance.capacity);
  return notebook.verdict();
}

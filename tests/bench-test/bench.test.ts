/**
 * The bench test: the product's own DXF files, bent, set up in a ring and measured by code that shares nothing
 * with it, on 200 random vessels and on the awkward ones by name.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import type { BenchSpec } from './bench-spec.js';
import { randomSpec } from './generate.js';
import { judge } from './judge.js';
import type { Work } from './judge.js';
import { measureFigures } from './measure-figures.js';
import * as spoil from './mutate-dxf.js';
import { namedSpecs, wineCask } from './named-specs.js';
import { describe as inWords, Notebook } from './verdict.js';
import type { Finding, Verdict } from './verdict.js';
import { make } from './workshop.js';
import type { Made } from './workshop.js';

const vessels = 200;
const firstSeed = 1;
/** the generator means every spec to be buildable; a refusal is the product's opinion and is counted */
const refusalsAllowed = 0.03 * vessels;

async function onTheBench(spec: BenchSpec): Promise<Verdict | { refused: string[] }> {
  const made = await make(spec);
  if ('refused' in made) return made;
  const notebook = new Notebook();
  measureFigures(made.figures, spec, notebook);
  const numbers = notebook.verdict();
  const wood = judge(spec, made.work);
  return {
    findings: [...wood.findings, ...numbers.findings],
    complaints: [...wood.complaints, ...numbers.complaints],
  };
}

describe('awkward vessels by name', () => {
  test.each(namedSpecs.map((spec) => ({ name: spec.name, spec })))('$name', async ({ spec }) => {
    const verdict = await onTheBench(spec);
    if ('refused' in verdict) expect(verdict.refused).toEqual([]);
    else expect(verdict.complaints.map(inWords)).toEqual([]);
  });
});

describe(`${vessels} random vessels`, () => {
  const specs = Array.from({ length: vessels }, (_, i) => randomSpec(firstSeed + i));
  const judged: { spec: BenchSpec; verdict: Verdict }[] = [];
  const refused: { spec: BenchSpec; messages: string[] }[] = [];

  beforeAll(async () => {
    for (const spec of specs) {
      const verdict = await onTheBench(spec);
      if ('refused' in verdict) refused.push({ spec, messages: verdict.refused });
      else judged.push({ spec, verdict });
    }
  }, 600_000);

  test('hardly any is refused, and none without a reason', () => {
    expect(judged.length + refused.length).toBe(vessels);
    for (const { messages } of refused) expect(messages.join('')).not.toBe('');
    const why = refused.map(({ spec, messages }) => `${spec.name}: ${messages.join(' | ')}`);
    expect(why.length, why.join('\n')).toBeLessThanOrEqual(refusalsAllowed);
  });

  test('every measurement is in tolerance', () => {
    const table = worstOf(judged.flatMap(({ verdict }) => verdict.findings));
    console.log(`${judged.length} vessels measured, worst of each:\n${table.join('\n')}`);
    const bad = judged
      .filter(({ verdict }) => verdict.complaints.length > 0)
      .map(({ spec, verdict }) => `${spec.name}: ${verdict.complaints.map(inWords).join('; ')}`);
    expect(bad).toEqual([]);
  });
});

function worstOf(findings: Finding[]): string[] {
  const worst = new Map<string, Finding>();
  for (const finding of findings) {
    const known = worst.get(finding.check);
    if (!known || finding.value / finding.allowed > known.value / known.allowed)
      worst.set(finding.check, finding);
  }
  return [...worst.values()].map((finding) => `  ${inWords(finding)}`);
}

describe("the product's own files, spoilt, are rejected for the right reason", () => {
  let work: Work;
  beforeAll(async () => {
    work = ((await make(wineCask)) as Made).work;
  });
  const reasons = (change: (text: string) => string): string[] =>
    judge(wineCask, { ...work, staves: work.staves.map(change) }).complaints.map((c) => c.check);

  test('one edge moved by 0.1 mm', () => {
    const found = reasons((text) => spoil.edgeMoved(text, 'outline', 0.1));
    expect(found).toEqual(expect.arrayContaining(['outline edge', 'joint gap']));
    expect(found).not.toContain('hidden edge');
  });

  test('scaled by 25.4', () => {
    expect(reasons((text) => spoil.scaled(text, 25.4))).toContain('outer face length');
  });

  test('marked as inches', () => {
    expect(reasons((text) => spoil.unitChanged(text, 1))).toEqual(['unit of the file']);
  });

  test('an arc replaced by its chord', () => {
    expect(reasons((text) => spoil.arcFlattened(text, 'outline'))).toEqual(
      expect.arrayContaining(['outline edge', 'joint gap']),
    );
  });

  test('faces swapped', () => {
    expect(reasons((text) => spoil.layersSwapped(text, 'outline', 'hidden'))).toEqual(
      expect.arrayContaining(['outer face length', 'inner face length']),
    );
  });

  test('a head 0.1 mm too wide', () => {
    const bottom = spoil.scaled(work.heads.bottom, 1 + 0.1 / 556.4);
    const verdict = judge(wineCask, { ...work, heads: { ...work.heads, bottom } });
    expect(verdict.complaints.map((c) => c.check)).toContain('head rim in its groove');
  });
});

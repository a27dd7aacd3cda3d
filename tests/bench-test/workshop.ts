/** Has the product make the work that the bench judges; the only file here that calls the product. */
import { figuresOf, planVessel, renderVessel } from '../../src/index.js';
import { yamlOf } from './bench-spec.js';
import type { BenchSpec } from './bench-spec.js';
import type { BenchFigures } from './figures-shape.js';
import type { Work } from './judge.js';

export interface Made {
  work: Work;
  figures: BenchFigures;
}

/** The messages, where the product refuses the spec. */
export async function make(spec: BenchSpec): Promise<Made | { refused: string[] }> {
  const { vessel, messages } = planVessel(yamlOf(spec), `${spec.name}.yaml`);
  if (vessel === null) {
    return { refused: messages.filter((m) => m.severity === 'error').map((m) => m.text) };
  }
  const figures = figuresOf(vessel) as unknown as BenchFigures;
  const pieces = [spec.staves.widths.length > 0 ? 'stave-each' : 'stave', 'head'];
  const files = await renderVessel(vessel, { formats: ['dxf'], pieces });
  const texts = new Map(files.map((file) => [file.name, String(file.content)]));
  const text = (name: string): string | undefined => texts.get(`${name}.dxf`);
  const head = (end: string): string => text(`head-${end}`) ?? text('head') ?? '';
  return {
    figures,
    work: {
      staves: staveNames(spec).map((name) => text(name) ?? ''),
      heads: { top: spec.vessel === 'cask' ? head('top') : null, bottom: head('bottom') },
      litres: figures.capacityLitres,
    },
  };
}

/** One drawing serves every stave of equal width; a mixed set has one for each. */
function staveNames({ staves: { count, widths } }: BenchSpec): string[] {
  if (widths.length === 0) return Array.from({ length: count }, () => 'stave');
  return widths.map((_, i) => `stave-${String(i + 1).padStart(2, '0')}`);
}

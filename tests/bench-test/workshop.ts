/** Has the product make the work that the bench judges; the only file here that calls the product. */
import { drawPieces, dxfOf, figuresOf, planVessel } from '../../src/index.js';
import { yamlOf } from './bench-spec.js';
import type { BenchSpec } from './bench-spec.js';
import type { BenchFigures } from './figures-shape.js';
import type { Work } from './judge.js';

export interface Made {
  work: Work;
  figures: BenchFigures;
}

/** The messages, where the product refuses the spec. */
export function make(spec: BenchSpec): Made | { refused: string[] } {
  const { vessel, messages } = planVessel(yamlOf(spec), `${spec.name}.yaml`);
  if (vessel === null) return { refused: messages.map((m) => m.text) };
  const figures = figuresOf(vessel) as unknown as BenchFigures;
  const texts = new Map(
    drawPieces(vessel, { pieces: ['stave', 'head'] }).map((d) => [d.name, dxfOf(d)]),
  );
  const count = spec.staves.widths.length > 0 ? spec.staves.widths.length : spec.staves.count;
  const head = (end: string): string => texts.get(`head-${end}`) ?? texts.get('head') ?? '';
  return {
    figures,
    work: {
      staves: Array.from({ length: count }, () => texts.get('stave') ?? ''),
      heads: { top: spec.vessel === 'cask' ? head('top') : null, bottom: head('bottom') },
      litres: figures.capacityLitres,
    },
  };
}

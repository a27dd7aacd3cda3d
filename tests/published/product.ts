/** The product's answers to a spec, or an error that repeats its messages. */
import { drawVessel, figuresOf, planVessel, renderVessel } from '../../src/index.js';
import type { BenchFigures } from '../bench-test/figures-shape.js';

function vesselOf(yaml: string): NonNullable<ReturnType<typeof planVessel>['vessel']> {
  const { vessel, messages } = planVessel(yaml, 'published.yaml');
  if (vessel === null) throw new Error(messages.map((m) => m.text).join('\n'));
  return vessel;
}

export type PublishedFigures = BenchFigures & { laidWidth: number; warnings: unknown[] };

export function figuresFor(yaml: string): PublishedFigures {
  return figuresOf(vesselOf(yaml)) as unknown as PublishedFigures;
}

/** The DXF file of one piece. */
export async function dxfOf(yaml: string, piece: string): Promise<string> {
  const [file] = await renderVessel(vesselOf(yaml), { formats: ['dxf'], pieces: [piece] });
  if (file === undefined) throw new Error(`no drawing of ${piece}`);
  return String(file.content);
}

/** Heights of all lettering on one piece, mm. */
export function letteringHeights(yaml: string, piece: string): number[] {
  return drawVessel(vesselOf(yaml), { pieces: [piece] }).flatMap((drawing) =>
    drawing.letterings.map((lettering) => lettering.height),
  );
}

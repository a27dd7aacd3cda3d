/** Judges a head's DXF: its rim against the groove that the staves give it. */
import { areaOf, pointOn } from './arcs.js';
import type { BenchSpec } from './bench-spec.js';
import { exactGroove } from './exact.js';
import type { BenchDrawing } from './read-dxf.js';
import { tolerance } from './tolerances.js';
import type { Notebook } from './verdict.js';

export function measureHead(
  drawing: BenchDrawing,
  spec: BenchSpec,
  end: 'top' | 'bottom',
  notebook: Notebook,
): void {
  if (drawing.unit !== 4) notebook.fail('unit of the file');
  const closed = (drawing.layers.get('outline') ?? []).filter((chain) => chain.closed);
  const rims = closed.sort((a, b) => Math.abs(areaOf(b.segments)) - Math.abs(areaOf(a.segments)));
  const [rim] = rims;
  if (rim === undefined) {
    notebook.fail('closed rim on outline');
    return;
  }
  const radius = exactGroove(spec, end).head / 2;
  const across = radius + spec.heads.crossGrain / 2;
  for (const segment of rim.segments) {
    for (let i = 0; i <= 32; i++) {
      const { x, y } = pointOn(segment, i / 32);
      // a cross-grain allowance stretches the rim across the boards, which lie along x
      const off = (Math.hypot(x / radius, y / across) - 1) * radius;
      notebook.note('head rim in its groove', off, tolerance.head);
    }
  }
  const drawnDiameter = 2 * Math.sqrt(Math.abs(areaOf(rim.segments)) / Math.PI);
  notebook.note('head diameter', drawnDiameter - 2 * Math.sqrt(radius * across), tolerance.head);
}

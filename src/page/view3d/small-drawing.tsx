/** A drawing's lines, as large as there is room. */
import type { JSX } from 'preact';
import type { Drawing } from '../../index.js';
import { sheetLines } from '../pieces/sheet-lines.js';

export function SmallDrawing({ drawing }: { drawing: Drawing }): JSX.Element {
  const { viewBox, layers } = sheetLines(drawing);
  return (
    <svg viewBox={viewBox} aria-hidden="true">
      {layers.map(({ layer, data }) => (
        <path key={layer} class={layer} d={data} />
      ))}
    </svg>
  );
}

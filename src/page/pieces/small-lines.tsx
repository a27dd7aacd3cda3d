/** A drawing's lines as a small picture. */
import type { JSX } from 'preact';
import type { SheetLines } from './sheet-lines.js';

export function SmallLines({ lines: { viewBox, layers } }: { lines: SheetLines }): JSX.Element {
  return (
    <svg viewBox={viewBox} aria-hidden="true">
      {layers.map(({ layer, data }) => (
        <path key={layer} class={layer} d={data} />
      ))}
    </svg>
  );
}

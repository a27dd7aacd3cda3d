/** The strip of small live drawings below the vessel; each opens full size. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Drawing } from '../../index.js';
import { words } from '../words/index.js';
import { drawingsOf, pieceNames, waiting } from './drawings.js';
import { watch } from './in-view.js';
import { sheetLines } from './sheet-lines.js';
import { openDrawing } from './viewer-state.js';

export function Strip(): JSX.Element {
  return (
    <section class="strip" aria-label={words.value.strip.title} aria-busy={waiting.value > 0}>
      <h2>{words.value.strip.title}</h2>
      <ul class="sheets" tabIndex={-1}>
        {pieceNames.map((name) => (
          <Piece key={name} name={name} />
        ))}
      </ul>
    </section>
  );
}

/** Usually one drawing; none where the vessel has none of it, several where it has several. */
function Piece({ name }: { name: string }): JSX.Element {
  return (
    <>
      {drawingsOf(name).value.map((drawing) => (
        <Sheet key={drawing.name} piece={name} drawing={drawing} />
      ))}
    </>
  );
}

function Sheet({ piece, drawing }: { piece: string; drawing: Drawing }): JSX.Element {
  const element = useRef<HTMLLIElement>(null);
  useEffect(() => watch(element.current!, piece), [piece]);
  const { viewBox, layers } = sheetLines(drawing);
  return (
    <li ref={element}>
      <button type="button" class="sheet" onClick={() => openDrawing(drawing.name)}>
        <svg viewBox={viewBox} aria-hidden="true">
          {layers.map(({ layer, data }) => (
            <path key={layer} class={layer} d={data} />
          ))}
        </svg>
        <span>{drawing.title}</span>
      </button>
    </li>
  );
}

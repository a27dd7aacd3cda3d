/** The strip of small live drawings below the vessel; each opens full size. */
import type { JSX } from 'preact';
import { words } from '../words/index.js';
import type { SmallSheet } from './draw-aside.js';
import { lagging, pieceNames, sheetsOf } from './drawings.js';
import { SmallLines } from './small-lines.js';
import { openDrawing } from './viewer-state.js';

export function Strip(): JSX.Element {
  return (
    <section class="strip" aria-label={words.value.strip.title} aria-busy={lagging.value}>
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
      {sheetsOf(name).value.map((sheet) => (
        <Sheet key={sheet.name} sheet={sheet} />
      ))}
    </>
  );
}

function Sheet({ sheet }: { sheet: SmallSheet }): JSX.Element {
  return (
    <li>
      <button type="button" class="sheet" onClick={() => openDrawing(sheet.name)}>
        <SmallLines lines={sheet} />
        <span>{sheet.title}</span>
      </button>
    </li>
  );
}

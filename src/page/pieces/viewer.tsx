/** One drawing over the whole screen: to look at closely, to measure in, to take away as a file. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Drawing } from '../../index.js';
import { PieceFiles } from '../output/piece-files.js';
import { words } from '../words/index.js';
import { SheetCanvas } from './sheet-canvas.js';
import { closeDrawing, openSheet, stepDrawing } from './viewer-state.js';
import { Headings } from '../tables/headings.js';

export function Viewer(): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const isOpen = openSheet.value !== null;
  useEffect(() => {
    const element = dialog.current!;
    if (isOpen && !element.open) element.showModal();
    if (!isOpen && element.open) element.close();
  }, [isOpen]);
  return (
    <dialog class="viewer" ref={dialog} onClose={closeDrawing} aria-labelledby="viewer-title">
      {openSheet.value && (
        <Opened piece={openSheet.value.piece} drawing={openSheet.value.drawing} />
      )}
    </dialog>
  );
}

function Opened({ piece, drawing }: { piece: string; drawing: Drawing }): JSX.Element {
  const { viewer, close } = words.value;
  return (
    <>
      <header>
        <h2 id="viewer-title">{drawing.title}</h2>
        <div class="tools">
          <button type="button" onClick={() => stepDrawing(-1)}>
            {viewer.before}
          </button>
          <button type="button" onClick={() => stepDrawing(1)}>
            {viewer.after}
          </button>
          <button type="button" onClick={closeDrawing}>
            {close}
          </button>
        </div>
      </header>
      <SheetCanvas key={drawing.name} piece={piece} drawing={drawing} />
      <PieceFiles piece={piece} drawing={drawing} />
      <LegendText drawing={drawing} />
    </>
  );
}

function LegendText({ drawing: { legend } }: { drawing: Drawing }): JSX.Element {
  return (
    <details class="legend">
      <summary>{words.value.viewer.notes}</summary>
      <ul>
        {legend.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      {legend.tables.map(({ title, headings, rows }) => (
        <table key={title}>
          <caption>{title}</caption>
          <Headings of={headings} />
          <tbody>
            {rows.map((row, i) => (
              <tr key={i}>
                {row.map((cell, k) => (
                  <td key={k}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </details>
  );
}

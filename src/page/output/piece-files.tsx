/** The files of one drawing. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { formats, type Drawing, type Format } from '../../index.js';
import { download } from '../file/download.js';
import { words } from '../words/index.js';
import { pieceFile } from './output-state.js';

export function PieceFiles({ piece, drawing }: { piece: string; drawing: Drawing }): JSX.Element {
  const busy = useSignal<Format | null>(null);
  const give = async (format: Format): Promise<void> => {
    busy.value = format;
    const file = await pieceFile(piece, drawing.name, format).finally(() => (busy.value = null));
    if (file) download(file);
  };
  return (
    <div class="tools" aria-busy={busy.value !== null}>
      {formats.map((format) => (
        <button type="button" key={format} onClick={() => void give(format)}>
          {words.value.output.give(format.toUpperCase())}
        </button>
      ))}
    </div>
  );
}

/** The chosen body: its numbers, and its drawing, which opens full size. */
import type { JSX } from 'preact';
import { drawingNamed } from '../pieces/drawings.js';
import { sheetLines } from '../pieces/sheet-lines.js';
import { SmallLines } from '../pieces/small-lines.js';
import { openDrawing } from '../pieces/viewer-state.js';
import { vessel } from '../state/store.js';
import { PlainTable } from '../tables/plain-table.js';
import { words } from '../words/index.js';
import { partNumbers } from './part-numbers.js';
import { chosen } from './space-state.js';

export function ChosenPart(): JSX.Element {
  if (!chosen.value) return <p class="chosen">{words.value.space.chooseOne}</p>;
  const { title, rows, drawings } = partNumbers(vessel.value!, chosen.value);
  const [drawing] = drawings.flatMap((name) => drawingNamed(name)?.drawing ?? []);
  return (
    <div class="chosen" aria-live="polite">
      <PlainTable title={title} rows={rows} />
      {drawing && (
        <button type="button" class="sheet" onClick={() => openDrawing(drawing.name)}>
          <SmallLines lines={sheetLines(drawing)} />
          <span>{drawing.title}</span>
        </button>
      )}
    </div>
  );
}

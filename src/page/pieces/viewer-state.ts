/** Which drawing is open full size. */
import { computed, signal } from '@preact/signals';
import { allDrawings, freshen } from './drawings.js';

export const openName = signal<string | null>(null);
export const openSheet = computed(
  () => allDrawings.value.find(({ drawing }) => drawing.name === openName.value) ?? null,
);

export const closeDrawing = (): void => void (openName.value = null);

/** Up to date, even where its turn hasn't come yet. */
export function openDrawing(name: string): void {
  const piece = allDrawings.value.find(({ drawing }) => drawing.name === name)?.piece;
  if (piece !== undefined) freshen(piece);
  openName.value = name;
}

/** The one before or after, in the order of the strip, round and round. */
export function stepDrawing(by: 1 | -1): void {
  const all = allDrawings.value;
  const at = all.findIndex(({ drawing }) => drawing.name === openName.value);
  const next = all.at((at + by + all.length) % all.length);
  if (next) openDrawing(next.drawing.name);
}

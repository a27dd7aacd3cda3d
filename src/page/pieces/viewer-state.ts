/** Which drawing is open full size. */
import { computed, signal } from '@preact/signals';
import { allDrawings } from './drawings.js';

export const openName = signal<string | null>(null);
export const openSheet = computed(
  () => allDrawings.value.find(({ drawing }) => drawing.name === openName.value) ?? null,
);

export const openDrawing = (name: string): void => void (openName.value = name);
export const closeDrawing = (): void => void (openName.value = null);

/** The one before or after, in the order of the strip, round and round. */
export function stepDrawing(by: 1 | -1): void {
  const all = allDrawings.value;
  const at = all.findIndex(({ drawing }) => drawing.name === openName.value);
  openName.value = all.at((at + by + all.length) % all.length)?.drawing.name ?? null;
}

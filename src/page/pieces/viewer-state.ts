/** Which drawing is open full size. */
import { computed, signal } from '@preact/signals';
import { allSheets, drawingNamed } from './drawings.js';

export const openName = signal<string | null>(null);
export const openSheet = computed(() => drawingNamed(openName.value));

export const openDrawing = (name: string): void => void (openName.value = name);
export const closeDrawing = (): void => void (openName.value = null);

/** The one before or after, in the order of the strip, round and round. */
export function stepDrawing(by: 1 | -1): void {
  const all = allSheets.value;
  const at = all.findIndex(({ name }) => name === openName.value);
  openName.value = all.at((at + by + all.length) % all.length)?.name ?? null;
}

/** What the view in space shows: which body is chosen, and how far the vessel is taken apart. */
import { computed, signal } from '@preact/signals';
import { vessel } from '../state/store.js';
import { keyOfPart, type PartId } from './parts.js';

export const apart = signal(0);

const wanted = signal<PartId | null>({ kind: 'stave', index: 0 });

/** Null where nothing is chosen, or the vessel has no such body any more. */
export const chosen = computed(() => {
  const id = wanted.value;
  return id && vessel.value && exists(id) ? id : null;
});
export const chosenKey = computed(() => chosen.value && keyOfPart(chosen.value));

export const choose = (id: PartId | null): void => void (wanted.value = id);

function exists(id: PartId): boolean {
  const { staves, hoops, heads } = vessel.value!;
  if (id.kind === 'stave') return id.index < staves.length;
  if (id.kind === 'hoop') return id.index < hoops.length;
  return id.index < (heads[id.end]?.boards.length ?? 0);
}

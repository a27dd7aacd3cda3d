/** What the page knows: the spec's text, which is the truth, and what follows from it. */
import { batch, computed, effect, signal } from '@preact/signals';
import { planVessel, type Message, type Vessel } from '../../index.js';
import { lookInto, removeFromSpec, type Path } from './edit-spec.js';
import { begin, record, redo, settle, undo, type History } from './history.js';
import { inOtherUnits } from './convert-units.js';
import type { Units } from './read-length.js';
import { kept, keepSoon } from './kept.js';
import { firstTemplate } from '../file/templates.js';
import { wordings } from '../words/language.js';

const history = signal<History>(begin(kept('spec') ?? firstTemplate));

/** As messages name it, and as it is saved. */
export const fileName = signal(kept('file') ?? 'my-vessel.yaml');

export const text = computed(() => history.value.present.text);
export const canUndo = computed(() => history.value.past.length > 0);
export const canRedo = computed(() => history.value.future.length > 0);

export const plan = computed(() =>
  planVessel(lookInto(text.value), fileName.value, wordings.value),
);
/** The text as YAML with places, or null while it is broken. */
export const spec = computed(() => lookInto(text.value).document);

let lastGood: Vessel | null = null;
/** The vessel of the text, or the last one that could be built; null before there was any. */
export const vessel = computed<Vessel | null>(() => (lastGood = plan.value.vessel ?? lastGood));
/** Whether the drawings lag behind the text. */
export const outOfDate = computed(() => plan.value.vessel === null);
export const units = computed<Units>(() => vessel.value?.spec.units ?? 'mm');
export const messages = computed<readonly Message[]>(() => plan.value.messages);

effect(() => {
  keepSoon('spec', text.value);
  keepSoon('file', fileName.value);
});

/** What changes are made of; `group` as in `record`. */
export function writeText(changed: string, group: string | null = null): void {
  history.value = record(history.value, changed, group);
}

/** Leaves the key to its default; false where the text is not YAML, so that no key can be changed in it. */
export function clearKey(path: Path, group: string | null = null): boolean {
  return written(removeFromSpec(text.value, path), group);
}

export function changeUnits(): boolean {
  return written(inOtherUnits(text.value, units.value), null);
}

function written(changed: string | null, group: string | null): boolean {
  if (changed === null) return false;
  writeText(changed, group);
  return true;
}

export const endStep = (): void => void (history.value = settle(history.value));
export const stepBack = (): void => void (history.value = undo(history.value));
export const stepForward = (): void => void (history.value = redo(history.value));

/** Another spec in place of this one; undo brings this one back. */
export function openSpec(name: string, content: string): void {
  batch(() => {
    fileName.value = name;
    writeText(content);
  });
}

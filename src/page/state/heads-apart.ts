/** Whether the heads have boxes of their own: where the spec says something of one head alone, or on request. */
import { computed, signal } from '@preact/signals';
import { saysOfOneHead } from './head-keys.js';
import { clearKey, endStep, spec } from './store.js';

const wanted = signal(false);

export const headsApart = computed(() => wanted.value || saysOfOneHead(spec.value));

/** With false, what is said of one head alone goes out of the spec. */
export function setHeadsApart(apart: boolean): void {
  wanted.value = apart;
  if (apart) return;
  endStep();
  for (const end of ['top', 'bottom']) clearKey(['heads', end], 'heads alike');
  endStep();
}

/** What the vessel holds, in its middle; a way to the sizing. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { capacityLitres } from '../../index.js';
import { vessel } from '../state/store.js';
import { openPart } from '../parts.js';
import { numberText, words } from '../words/index.js';
import type { Spot } from './layout.js';

export const litres = computed(() => (vessel.value ? capacityLitres(vessel.value) : 0));

export function Capacity({ at }: { at: Spot }): JSX.Element {
  return (
    <button
      type="button"
      class="capacity"
      style={{ left: `${at.x}px`, top: `${at.y}px` }}
      onClick={() => openPart('sizing')}
    >
      <strong>{numberText(litres.value, 1)}</strong> {words.value.vessel.litres}
    </button>
  );
}

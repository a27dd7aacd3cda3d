/** What is asked of the rack, as typed; empty boxes leave it to what is usual. */
import { computed, effect, signal } from '@preact/signals';
import { requestFor, type MatchRequest } from '../../index.js';
import { keep, kept } from '../state/kept.js';
import { units, vessel } from '../state/store.js';
import { readWishes, type WishBox } from './wishes.js';

export const typed = signal<Readonly<Record<WishBox, string>>>({
  vessels: '1',
  count: '',
  tolerance: '',
  plane: '',
  bung: '',
});
export const asMany = signal(false);
export const noBung = signal(false);
export const measured = signal<'blank' | 'backed'>(
  kept('measured') === 'backed' ? 'backed' : 'blank',
);
effect(() => keep('measured', measured.value));

export const wished = computed(() =>
  readWishes(typed.value, {
    asMany: asMany.value,
    noBung: noBung.value,
    measured: measured.value,
    units: units.value,
  }),
);

/** What is usual for this vessel, to show in empty boxes. */
export const usual = computed<MatchRequest | null>(
  () => vessel.value && requestFor(vessel.value, {}),
);

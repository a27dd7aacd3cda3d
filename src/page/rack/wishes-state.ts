/** What is asked of the rack, as typed; empty boxes leave it to what is usual. */
import { computed, effect, signal } from '@preact/signals';
import { requestFor, type MatchRequest } from '../../index.js';
import { keep, kept } from '../state/kept.js';
import { units, vessel } from '../state/store.js';
import { stock } from './rack-state.js';
import { marksIn, standingIssues, toggled } from './standing.js';
import { countOf, readWishes, tooManyVessels, type WishBox } from './wishes.js';

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
/** Marks of staves that stand already. */
export const standing = signal(kept('standing') ?? '');
effect(() => {
  keep('measured', measured.value);
  keep('standing', standing.value);
});

export const toggleStanding = (mark: string): void =>
  void (standing.value = toggled(standing.value, mark));
export const standingMarks = computed<ReadonlySet<string>>(() => new Set(marksIn(standing.value)));

/** One of them gave its place to another. */
export const changeStanding = (from: string, to: string): void =>
  void (standing.value = marksIn(standing.value)
    .map((mark) => (mark === from ? to : mark))
    .join(', '));

/** They are part of a vessel that has left the rack. */
export const leaveStanding = (marks: readonly string[]): void =>
  void (standing.value = marksIn(standing.value)
    .filter((mark) => !marks.includes(mark))
    .join(', '));

export const wished = computed(() =>
  readWishes(typed.value, {
    asMany: asMany.value,
    noBung: noBung.value,
    measured: measured.value,
    units: units.value,
    standing: standing.value,
  }),
);

/** What is usual for this vessel, to show in empty boxes. */
export const usual = computed<MatchRequest | null>(
  () => vessel.value && requestFor(vessel.value, {}),
);

const count = computed(() => countOf(typed.value.count) ?? usual.value?.count);

/** What is wrong with the staves that stand, to be said beside their box. */
export const standingWrong = computed(() =>
  stock.value && usual.value
    ? standingIssues(stock.value, usual.value, count.value, marksIn(standing.value))
    : [],
);

/** For how many vessels the rack has staves, where more are asked for. */
export const enoughFor = computed(() =>
  count.value && !asMany.value
    ? tooManyVessels(typed.value.vessels, stock.value?.staves.length ?? 0, count.value.min)
    : null,
);
export const fewestStaves = computed(() => count.value?.min ?? 0);

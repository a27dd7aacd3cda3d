/** The staves on the rack, kept in the browser. */
import { computed, effect, signal } from '@preact/signals';
import { readStock, type StockIssue, type StockStave } from '../../index.js';
import { keep, kept } from '../state/kept.js';
import { units } from '../state/store.js';
import { nextMark } from './marks.js';
import { keptRack, stockOf } from './rack-text.js';

export const rackOpen = signal(false);

/** In the order in which they came. */
export const staves = signal<readonly StockStave[]>(keptRack(kept('rack')) ?? []);
export const stock = computed(() => stockOf(staves.value).stock);

/** What the next stave is called; may be typed over. */
export const mark = signal(kept('mark') ?? '');
/** What was wrong with the last table that was opened or pasted. */
export const faults = signal<readonly StockIssue[]>([]);

effect(() => {
  keep('rack', JSON.stringify(staves.value));
  keep('mark', mark.value);
});

const taken = (): Set<string> => new Set(staves.value.map((stave) => stave.mark));

/** The mark that the next stave gets: the typed one while it is free, else the next in its row. */
export const freeMark = computed(() => {
  const wanted = mark.value.trim();
  const marks = taken();
  return wanted !== '' && !marks.has(wanted) ? wanted : nextMark(wanted, marks);
});

export function addWidths(widths: readonly number[]): void {
  for (const width of widths) {
    const own = freeMark.value;
    const rest = { length: null, thickness: null, bung: null, note: '' };
    staves.value = [...staves.value, { mark: own, width, ...rest }];
    mark.value = nextMark(own, taken());
  }
}

/** Staves of a table take the place of those with the same marks. Nothing is taken from one with errors. */
export function addTable(text: string): void {
  const { stock: read, issues } = readStock(text, units.value);
  faults.value = issues;
  if (!read) return;
  const marks = new Set(read.staves.map((stave) => stave.mark));
  staves.value = [...staves.value.filter((stave) => !marks.has(stave.mark)), ...read.staves];
}

/** The rack before staves were last taken away. */
const earlier = signal<readonly StockStave[] | null>(null);
export const canBringBack = computed(() => earlier.value !== null);

export function bringBack(): void {
  if (!earlier.value) return;
  const gone = earlier.value;
  const marks = new Set(gone.map((stave) => stave.mark));
  // with those that have come since
  staves.value = [...gone, ...staves.value.filter((stave) => !marks.has(stave.mark))];
  earlier.value = null;
}

export function takeAway(marks: readonly string[]): void {
  const gone = new Set(marks);
  earlier.value = staves.value;
  staves.value = staves.value.filter((stave) => !gone.has(stave.mark));
}

export function clearRack(): void {
  earlier.value = staves.value;
  staves.value = [];
  mark.value = '';
}

export function mayBeBung(of: string, may: boolean | null): void {
  staves.value = staves.value.map((stave) => (stave.mark === of ? { ...stave, bung: may } : stave));
}

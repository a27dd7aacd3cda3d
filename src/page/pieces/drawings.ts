/**
 * The drawings of all pieces, kept up with the vessel. The picture in the middle comes first; then, one by one between frames,
 * the pieces that are on the screen; then the others, once nothing has been typed for a moment. A new keystroke begins them
 * anew. Whoever needs a piece at once asks for it by `freshen`.
 */
import { computed, effect, signal, type Signal } from '@preact/signals';
import { drawVessel, pieces, type Drawing } from '../../index.js';
import { vessel } from '../state/store.js';
import { drawingWords } from '../words/index.js';
import { isInView, onEntryOf } from './in-view.js';

export const pieceNames: readonly string[] = pieces.map(({ name }) => name);

const drawn = new Map<string, Signal<readonly Drawing[]>>(
  pieceNames.map((name) => [name, signal<readonly Drawing[]>([])]),
);

export const drawingsOf = (piece: string): Signal<readonly Drawing[]> => drawn.get(piece)!;

/** How many pieces are still as they were before the last change. */
export const waiting = signal(0);

/** By the name of the drawing, with the piece that it is of. */
export const allDrawings = computed(() =>
  pieceNames.flatMap((piece) => drawingsOf(piece).value.map((drawing) => ({ piece, drawing }))),
);

/** After this long, ms, the browser gets a turn. */
const longestTurn = 6;
/** Whoever types on does so within this time, ms. */
const pause = 250;

const stale = new Set<string>();
/** Whether those out of view have their turn too. */
let all = true;
let running = false;
let later: ReturnType<typeof setTimeout> | undefined;
const channel = new MessageChannel();
channel.port1.onmessage = () => turn();

effect(() => {
  if (!vessel.value || !drawingWords.value) return;
  const isFirst = allDrawings.peek().length === 0;
  for (const name of pieceNames) stale.add(name);
  waiting.value = stale.size;
  clearTimeout(later);
  run(isFirst);
  if (!isFirst) later = setTimeout(run, pause, true);
});

function run(everything: boolean): void {
  all = everything;
  if (!running) channel.port2.postMessage(null);
  running = true;
}

function turn(): void {
  const end = performance.now() + longestTurn;
  let next = nextStale();
  while (next !== undefined && performance.now() < end) {
    freshen(next);
    next = nextStale();
  }
  running = next !== undefined;
  if (running) channel.port2.postMessage(null);
  // for whoever measures how long it takes
  else performance.mark('drawn');
}

const nextStale = (): string | undefined =>
  pieceNames.find((name) => stale.has(name) && (all || isInView(name)));

/** Brings a piece up to date before its turn. */
export function freshen(piece: string): void {
  if (!stale.delete(piece) || !vessel.peek()) return;
  const words = drawingWords.peek();
  drawingsOf(piece).value = drawVessel(vessel.peek()!, { words, pieces: [piece] });
  waiting.value = stale.size;
}

/** A stale piece that comes into view has its turn. */
onEntryOf((piece) => stale.has(piece) && run(all));

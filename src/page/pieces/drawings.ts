/**
 * The drawings of all pieces, kept up with the vessel. The picture in the middle comes first; the pieces follow one by one
 * between frames, those in view before the others, and a new keystroke begins them anew.
 */
import { computed, effect, signal, type Signal } from '@preact/signals';
import { drawVessel, pieces, type Drawing, type Vessel, type Words } from '../../index.js';
import { vessel } from '../state/store.js';
import { drawingWords } from '../words/index.js';

export const pieceNames: readonly string[] = pieces.map(({ name }) => name);

const drawn = new Map<string, Signal<readonly Drawing[]>>(
  pieceNames.map((name) => [name, signal<readonly Drawing[]>([])]),
);

export const drawingsOf = (piece: string): Signal<readonly Drawing[]> => drawn.get(piece)!;

/** How many pieces are still as they were before the last change. */
export const waiting = signal(0);

/** Pieces that are on the screen; the strip keeps it. */
export const inView = new Set<string>();

/** By the name of the drawing, with the piece that it is of. */
export const allDrawings = computed(() =>
  pieceNames.flatMap((piece) => drawingsOf(piece).value.map((drawing) => ({ piece, drawing }))),
);

/** After this long, ms, the browser gets a turn. */
const longestTurn = 6;

let queue: string[] = [];
let running = false;
const channel = new MessageChannel();
channel.port1.onmessage = () => turn();

effect(() => {
  if (!vessel.value || !drawingWords.value) return;
  queue = [...pieceNames].sort((a, b) => Number(inView.has(b)) - Number(inView.has(a)));
  waiting.value = queue.length;
  if (!running) channel.port2.postMessage(null);
  running = true;
});

function turn(): void {
  const end = performance.now() + longestTurn;
  do {
    const name = queue.shift();
    if (name !== undefined) drawPiece(name, vessel.peek(), drawingWords.peek());
  } while (queue.length > 0 && performance.now() < end);
  running = queue.length > 0;
  if (running) channel.port2.postMessage(null);
  waiting.value = queue.length;
}

function drawPiece(name: string, of: Vessel | null, words: Words): void {
  if (of) drawingsOf(name).value = drawVessel(of, { words, pieces: [name] });
}

/**
 * The drawings of all pieces, kept up with the vessel. The small ones come from a helper beside the page, so that nobody's typing
 * waits for them; the page itself draws a piece when somebody looks at it closely.
 */
import { batch, computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { drawVessel, pieces, type Drawing } from '../../index.js';
import { afterPicture } from '../helper/after-picture.js';
import { startHelper } from '../helper/start-helper.js';
import { vessel } from '../state/store.js';
import { drawingWords, language } from '../words/index.js';
import { draw, type DrawAnswer, type DrawQuestion, type SmallSheet } from './draw-aside.js';

export const pieceNames: readonly string[] = pieces.map(({ name }) => name);

const small = new Map<string, Signal<readonly SmallSheet[]>>(
  pieceNames.map((name) => [name, signal<readonly SmallSheet[]>([])]),
);

/** The small drawings of a piece. */
export const sheetsOf = (piece: string): ReadonlySignal<readonly SmallSheet[]> => small.get(piece)!;

/** Whether small drawings are still as they were before the last change. */
export const lagging = signal(false);

/** By the name of the drawing, with the piece that it is of. */
export const allSheets = computed(() =>
  pieceNames.flatMap((piece) => sheetsOf(piece).value.map(({ name }) => ({ piece, name }))),
);

const whole = new Map<string, ReadonlySignal<readonly Drawing[]>>(
  pieceNames.map((name) => [
    name,
    computed(() =>
      vessel.value ? drawVessel(vessel.value, { words: drawingWords.value, pieces: [name] }) : [],
    ),
  ]),
);

/** The drawings of a piece in full. */
export const drawingsOf = (piece: string): ReadonlySignal<readonly Drawing[]> => whole.get(piece)!;

/** A drawing in full with the piece that it is of, or null where the vessel has none of that name. */
export function drawingNamed(wanted: string | null): { piece: string; drawing: Drawing } | null {
  const piece = allSheets.value.find(({ name }) => name === wanted)?.piece;
  if (piece === undefined) return null;
  const drawing = drawingsOf(piece).value.find(({ name }) => name === wanted);
  return drawing ? { piece, drawing } : null;
}

let turn = 0;
let helper = startHelper(show, drawAlone);
let last: DrawQuestion | null = null;
let asked = 0;

effect(() => {
  if (!vessel.value) return;
  last = { task: 'draw', turn: ++turn, spec: vessel.value.spec, language: language.value };
  lagging.value = true;
  afterPicture(askForLast);
});

/** Of several changes in one go the last counts. */
function askForLast(): void {
  if (last && last.turn > asked) helper.ask(last);
  asked = last?.turn ?? 0;
}

function show(answer: DrawAnswer): void {
  if (answer.turn !== turn) return;
  batch(() => {
    for (const [piece, sheets] of answer.drawn) small.get(piece)!.value = sheets;
    lagging.value = !answer.isLast;
  });
  // for whoever measures how long it takes
  if (answer.isLast) performance.mark('drawn');
}

/** Where the browser gives no helper, the page draws by itself. */
function drawAlone(): void {
  helper.stop();
  helper = { ask: (question) => void draw(question as DrawQuestion, show), stop: () => {} };
  if (last) helper.ask(last);
}

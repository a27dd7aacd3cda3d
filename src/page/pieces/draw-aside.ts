/** Small pictures of all pieces, drawn by a helper beside the page. */
import { drawVessel, pieces, pieceWords, wordsIn, type Language, type Spec } from '../../index.js';
import { vesselOf } from '../helper/vessel-of.js';
import { sheetLines, type SheetLines } from './sheet-lines.js';

export interface DrawQuestion {
  readonly task: 'draw';
  readonly turn: number;
  readonly spec: Spec;
  readonly language: Language;
}

/** A drawing as it lies in the strip. */
export interface SmallSheet extends SheetLines {
  readonly name: string;
  readonly title: string;
}

/** The pieces that are drawn since the answer before. */
export interface DrawAnswer {
  readonly turn: number;
  readonly drawn: readonly (readonly [piece: string, sheets: readonly SmallSheet[]])[];
  /** whether that was all */
  readonly isLast: boolean;
}

/** After this long, ms, it looks whether something else is asked. */
const longestTurn = 8;
/** After this long, ms, it answers with what it has: showing all at once costs the page less, and a warm helper is done before. */
const longestWait = 60;
let newest = -1;

export async function draw(
  { turn, spec, language }: DrawQuestion,
  reply: (answer: DrawAnswer) => void,
): Promise<void> {
  newest = turn;
  const words = await wordsIn(pieceWords, language);
  if (newest !== turn) return;
  const vessel = vesselOf(spec);
  let drawn: [string, SmallSheet[]][] = [];
  let end = performance.now() + longestTurn;
  let due = performance.now() + longestWait;
  for (const { name } of pieces) {
    const drawings = drawVessel(vessel, { words, pieces: [name] });
    const sheets = drawings.map((each) => ({
      name: each.name,
      title: each.title,
      ...sheetLines(each),
    }));
    drawn.push([name, sheets]);
    if (performance.now() < end) continue;
    await breath();
    if (newest !== turn) return;
    if (performance.now() >= due) {
      reply({ turn, drawn, isLast: false });
      drawn = [];
      due = performance.now() + longestWait;
    }
    end = performance.now() + longestTurn;
  }
  reply({ turn, drawn, isLast: true });
}

const { port1, port2 } = new MessageChannel();

/** Lets messages in; `setTimeout` would wait for milliseconds. */
function breath(): Promise<void> {
  return new Promise((go) => {
    port1.onmessage = () => go();
    port2.postMessage(null);
  });
}

/** What a helper beside the page does: it draws, packs files, or searches the rack, while the page stays at hand. */
import { pack, type PackQuestion } from '../output/pack-aside.js';
import { draw, type DrawQuestion } from '../pieces/draw-aside.js';
import { choose, stopChoosing, type ChooseQuestion } from '../rack/choose-aside.js';

export type Question =
  DrawQuestion | ChooseQuestion | PackQuestion | { readonly task: 'stop choosing' };

const reply = (answer: unknown): void => postMessage(answer);

export function answer(question: Question): void {
  if (question.task === 'draw') draw(question, reply).catch(breakDown);
  else if (question.task === 'choose') choose(question, reply).catch(breakDown);
  else if (question.task === 'pack') pack(question, reply).catch(breakDown);
  else stopChoosing();
}

/** The page hears of what is thrown, but not of a promise that is rejected. */
function breakDown(error: unknown): void {
  setTimeout(() => {
    throw error;
  });
}

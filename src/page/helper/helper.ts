/** What a helper beside the page does: it draws, packs files, of the vessel or of a set, or searches the rack, while the page stays at hand. */
import { pack, type PackQuestion } from '../output/pack-aside.js';
import { draw, type DrawQuestion } from '../pieces/draw-aside.js';
import { choose, stopChoosing, type ChooseQuestion } from '../rack/choose-aside.js';
import { setFilesAside, type SetFilesQuestion } from '../rack/set-files-aside.js';

export type Question =
  | DrawQuestion
  | ChooseQuestion
  | PackQuestion
  | SetFilesQuestion
  | { readonly task: 'stop choosing' };

const reply = (answer: unknown): void => postMessage(answer);

export function answer(question: Question): void {
  if (question.task === 'draw') draw(question, reply).catch(breakDown);
  else if (question.task === 'choose') choose(question, reply).catch(breakDown);
  else if (question.task === 'pack') pack(question, reply).catch(breakDown);
  else if (question.task === 'set files') setFilesAside(question, reply).catch(breakDown);
  else stopChoosing();
}

/** The page hears of what is thrown, but not of a promise that is rejected. */
function breakDown(error: unknown): void {
  setTimeout(() => {
    throw error;
  });
}

/** What a helper beside the page does: it draws, or searches the rack, while the page stays at hand. */
import { draw, type DrawQuestion } from '../pieces/draw-aside.js';
import { choose, stopChoosing, type ChooseQuestion } from '../rack/choose-aside.js';

export type Question = DrawQuestion | ChooseQuestion | { readonly task: 'stop choosing' };

const reply = (answer: unknown): void => postMessage(answer);

export function answer(question: Question): void {
  if (question.task === 'draw') void draw(question, reply);
  else if (question.task === 'choose') void choose(question, reply);
  else stopChoosing();
}

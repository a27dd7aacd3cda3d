/** The view of a drawing that is printed where its full length would only waste paper. */
import type { Drawing } from './drawing.js';

/** The drawing with its shorter view in place of its own lines, or as it is when it has none. */
export function paperView({ forPaper, ...drawing }: Drawing): Drawing {
  return { ...drawing, ...forPaper };
}

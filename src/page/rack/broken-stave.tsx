/** What takes the place of a broken stave of a set, and how wide a new one is cut. */
import type { JSX } from 'preact';
import type { Replacement, Swap } from '../../index.js';
import { lengthWords, words } from '../words/index.js';

interface BrokenProps {
  readonly swap: Swap;
  /** how many staves the ring has */
  readonly of: number;
  readonly take: (replacement: Replacement) => void;
}

export function BrokenStave({ swap, of, take }: BrokenProps): JSX.Element {
  const { broken: say } = words.value.rack;
  const { broken, place, isBungStave, replacements, cut } = swap;
  return (
    <div class="broken" role="group" aria-label={say.ask(broken.mark)}>
      <p>
        {say.about(broken.mark, place, of, lengthWords(broken.width))}{' '}
        {isBungStave && say.bungStave}
      </p>
      {replacements.length === 0 && <p>{say.none}</p>}
      <ul>
        {replacements.map((each) => (
          <li key={each.mark}>
            <button type="button" onClick={() => take(each)}>
              {say.take(each.mark)}
            </button>{' '}
            <span>{replacementText(each)}</span>
          </li>
        ))}
      </ul>
      <p>
        {say.cut(lengthWords(cut.width, 2), lengthWords(cut.from), lengthWords(cut.to))}{' '}
        {replacements.length > 0 && say.leaves(broken.mark)}
      </p>
    </div>
  );
}

function replacementText({ width, planeOff, closesAt }: Replacement): string {
  const { broken: say } = words.value.rack;
  const planed = planeOff > 0 ? say.plane(lengthWords(planeOff, 2)) : say.asItIs;
  return `${lengthWords(width, 2)}, ${planed}; ${say.closes(lengthWords(closesAt, 2))}`;
}

/** The staves of a set in setting order, to mark as set up; a touch on a mark asks what takes its place. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { runningTotals, type MatchedStave, type Replacement } from '../../index.js';
import { units } from '../state/store.js';
import { lengthFigures, words } from '../words/index.js';
import { BrokenStave } from './broken-stave.js';
import { found, markSetUp, putInPlace } from './choosing.js';
import { staves } from './rack-state.js';
import { swapFor } from './replacing.js';
import type { SetProps } from './set-card.js';
import { Headings } from '../tables/headings.js';

export function SetStaves({ set, number }: SetProps): JSX.Element {
  const { rack } = words.value;
  const totals = runningTotals(set);
  const asked = useSignal<string | null>(null);
  const told = useSignal('');
  const ask = (mark: string): void => void (asked.value = asked.value === mark ? null : mark);
  const take = (place: number, replacement: Replacement): void => {
    const gone = set.staves[place - 1]!.mark;
    putInPlace({ number, place }, replacement);
    told.value = rack.broken.taken(gone, replacement.mark);
    asked.value = null;
    // the button that was pressed is gone
    setTimeout(() => document.getElementById(buttonId(number, place))?.focus());
  };
  return (
    <div class="set-staves">
      <p>{rack.broken.hint}</p>
      <p class="said" role="status">
        {told.value}
      </p>
      <table>
        <Headings of={rack.headings(units.value)} />
        <tbody>
          {set.staves.map((stave, i) => (
            <StaveRow
              key={stave.mark}
              {...{ stave, set, number, ask, take }}
              place={i + 1}
              total={totals[i]!}
              isAsked={asked.value === stave.mark}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** A fraction of an inch may stand on a line of its own, whole. */
const figures = (mm: number, decimals: number): string =>
  lengthFigures(mm, decimals).replace(/\((\d+) /, '($1\u00a0');

const buttonId = (number: number, place: number): string => `set-${number}-stave-${place}`;

interface RowProps extends SetProps {
  readonly stave: MatchedStave;
  readonly place: number;
  readonly total: number;
  readonly isAsked: boolean;
  readonly ask: (mark: string) => void;
  readonly take: (place: number, replacement: Replacement) => void;
}

function StaveRow(props: RowProps): JSX.Element {
  const { rack } = words.value;
  const { set, number, stave, place, total, isAsked, ask } = props;
  const { mark, width, planeOff } = stave;
  return (
    <>
      <tr>
        <td class="ticks">
          <label>
            <input
              type="checkbox"
              checked={found.value!.setUp.includes(mark)}
              aria-label={rack.stands(mark)}
              onChange={({ currentTarget }) => markSetUp(mark, currentTarget.checked)}
            />
          </label>
        </td>
        <td>{place}</td>
        <th scope="row">
          <button
            type="button"
            id={buttonId(number, place)}
            aria-label={rack.broken.ask(mark)}
            aria-expanded={isAsked}
            onClick={() => ask(mark)}
          >
            {mark}
          </button>
          {mark === set.bungStave && ` (${rack.bung})`}
        </th>
        <td>{figures(width, 2)}</td>
        <td>{planeOff > 0 ? figures(planeOff, 2) : '–'}</td>
        <td>{figures(total, 1)}</td>
      </tr>
      {isAsked && <Answer {...props} />}
    </>
  );
}

function Answer({ set, number, place, take }: RowProps): JSX.Element | null {
  const swap = swapFor(found.value!, { number, place }, staves.value);
  if (!swap) return null;
  return (
    <tr>
      <td colSpan={words.value.rack.headings('').length} class="answer">
        <BrokenStave swap={swap} of={set.count} take={(replacement) => take(place, replacement)} />
      </td>
    </tr>
  );
}

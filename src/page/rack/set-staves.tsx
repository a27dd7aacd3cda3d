/** The staves of a set in setting order, to mark as set up. */
import type { JSX } from 'preact';
import { runningTotals, type MatchedSet } from '../../index.js';
import { lengthWords, words } from '../words/index.js';
import { found, markSetUp } from './choosing.js';

export function SetStaves({ set }: { set: MatchedSet }): JSX.Element {
  const { rack } = words.value;
  const totals = runningTotals(set);
  const { setUp } = found.value!;
  return (
    <div class="scroll">
      <table>
        <thead>
          <tr>
            {rack.headings.map((heading) => (
              <th key={heading} scope="col">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {set.staves.map(({ mark, width, planeOff }, i) => (
            <tr key={mark}>
              <td class="ticks">
                <label>
                  <input
                    type="checkbox"
                    checked={setUp.includes(mark)}
                    aria-label={rack.stands(mark)}
                    onChange={({ currentTarget }) => markSetUp(mark, currentTarget.checked)}
                  />
                </label>
              </td>
              <td>{i + 1}</td>
              <th scope="row">
                {mark}
                {mark === set.bungStave && ` (${rack.bung})`}
              </th>
              <td>{lengthWords(width, 2)}</td>
              <td>{planeOff > 0 ? lengthWords(planeOff, 2) : '–'}</td>
              <td>{lengthWords(totals[i]!)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The sets that were chosen: each as a ring from above, with its staves in setting order to mark as set up. */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { drawingBounds, runningTotals, settingPlan, type MatchedSet } from '../../index.js';
import { Lines } from '../pieces/sheet-picture.js';
import { openSpec } from '../state/store.js';
import { drawingWords, lengthWords, words } from '../words/index.js';
import { found, forgetSets, markSetUp, type Chosen } from './choosing.js';
import { rackOpen, takeAway } from './rack-state.js';
import { setSpec, setVessel } from './set-vessel.js';

export function SetsView(): JSX.Element | null {
  const chosen = found.value;
  if (!chosen) return null;
  const { rack } = words.value;
  const { result } = chosen;
  return (
    <section class="sets" aria-label={rack.sets}>
      <h2 aria-live="polite">{summary(chosen)}</h2>
      {result.shortfall && <p>{shortfallText(chosen)}</p>}
      {result.sets.map((set, i) => (
        <SetCard key={set.staves.map(({ mark }) => mark).join(' ')} set={set} number={i + 1} />
      ))}
      {result.left.length > 0 && (
        <p>
          {rack.left(result.left.length)} {result.left.join(', ')}
        </p>
      )}
      <button type="button" onClick={forgetSets}>
        {rack.forget}
      </button>
    </section>
  );
}

function summary({ title, wanted, result }: Chosen): string {
  const { rack } = words.value;
  const { sets, proven, upperBound } = result;
  const bound = sets.length === wanted ? '' : ` ${(proven ? rack.proven : rack.bound)(upperBound)}`;
  return `${title}: ${rack.found(sets.length)}${bound}`;
}

function shortfallText({ result: { shortfall, help } }: Chosen): string {
  const { rack } = words.value;
  const why = rack.reasons[shortfall!.reason](lengthWords(shortfall!.girthMissing));
  if (!help) return why;
  const { staves, fromWidth, toWidth } = help;
  return `${why} ${rack.help(staves, lengthWords(fromWidth), lengthWords(toWidth))}`;
}

function SetCard({ set, number }: { set: MatchedSet; number: number }): JSX.Element {
  const { rack } = words.value;
  const chosen = found.value!;
  const marks = set.staves.map(({ mark }) => mark);
  const done = marks.filter((mark) => chosen.setUp.includes(mark)).length;
  const draw = (): void => {
    openSpec(`set-${number}.yaml`, setSpec(chosen, set, number));
    rackOpen.value = false;
  };
  return (
    <article class="set" aria-label={rack.set(number)}>
      <h3>{rack.set(number)}</h3>
      <p>
        {rack.closes(lengthWords(set.closesAt, 2), set.count, lengthWords(set.laidWidth))}{' '}
        {rack.standing(done, set.count)}
      </p>
      <div class="ring-and-list">
        <Ring set={set} number={number} />
        <SetStaves set={set} />
      </div>
      <p class="caution">{rack.caution}</p>
      <div class="tools">
        <button type="button" onClick={draw}>
          {rack.draw}
        </button>
        <button type="button" disabled={done < set.count} onClick={() => takeAway(marks)}>
          {rack.offTheRack}
        </button>
      </div>
    </article>
  );
}

function Ring({ set, number }: { set: MatchedSet; number: number }): JSX.Element | null {
  const chosen = found.value!;
  const say = drawingWords.value;
  const drawing = useMemo(() => {
    const vessel = setVessel(chosen, set, number);
    return vessel && settingPlan({ vessel, set, number }, say);
  }, [chosen.spec, set, number, say]);
  if (!drawing) return null;
  const { minX, minY, maxX, maxY } = drawingBounds(drawing);
  return (
    <div class="ring" role="img" aria-label={drawing.title}>
      <Lines drawing={drawing} viewBox={`${minX} ${-maxY} ${maxX - minX} ${maxY - minY}`} />
    </div>
  );
}

function SetStaves({ set }: { set: MatchedSet }): JSX.Element {
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

/** One chosen set: the ring from above, its staves in setting order, and what can be done with it. */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { ActButton } from '../act-button.js';
import { drawingBounds, settingPlan, type MatchedSet } from '../../index.js';
import { Lines } from '../pieces/sheet-picture.js';
import { openSpec } from '../state/store.js';
import { drawingWords, lengthWords, words } from '../words/index.js';
import { found } from './choosing.js';
import { rackOpen, takeAway } from './rack-state.js';
import { SetFilesButton } from './set-files-button.js';
import { SetStaves } from './set-staves.js';
import { setSpec, setVessel } from './set-vessel.js';
import { leaveStanding } from './wishes-state.js';

export interface SetProps {
  readonly set: MatchedSet;
  /** from 1 */
  readonly number: number;
}

export function SetCard({ set, number }: SetProps): JSX.Element {
  const { rack } = words.value;
  const chosen = found.value!;
  const marks = set.staves.map(({ mark }) => mark);
  const done = marks.filter((mark) => chosen.setUp.includes(mark)).length;
  const draw = (): void => {
    openSpec(`set-${number}.yaml`, setSpec(chosen, number));
    rackOpen.value = false;
  };
  const offTheRack = (): void => {
    takeAway(marks);
    leaveStanding(marks);
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
        <SetStaves set={set} number={number} />
      </div>
      <p class="caution">{rack.caution}</p>
      <div class="tools">
        <button type="button" onClick={draw}>
          {rack.draw}
        </button>
        <SetFilesButton number={number} />
        <ActButton off={done < set.count} act={offTheRack}>
          {rack.offTheRack}
        </ActButton>
      </div>
    </article>
  );
}

function Ring({ set, number }: SetProps): JSX.Element | null {
  const chosen = found.value!;
  const say = drawingWords.value;
  const drawing = useMemo(() => {
    const vessel = setVessel(chosen, number);
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

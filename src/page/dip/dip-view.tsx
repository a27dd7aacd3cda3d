/** What a wet rod means: a picture of the level, and the table of dips. */
import { computed, signal } from '@preact/signals';
import type { JSX } from 'preact';
import {
  dipTable,
  fullDip,
  litresAtDip,
  postures,
  usualPosture,
  type Posture,
} from '../../index.js';
import { readLength } from '../state/read-length.js';
import { units, vessel } from '../state/store.js';
import { lengthWords, numberText, words } from '../words/index.js';
import { DipPicture } from './dip-picture.js';
import { Scroll } from '../tables/plain-table.js';
import { Headings } from '../tables/headings.js';

const chosen = signal<Posture | null>(null);
const typed = signal('');

const posture = computed<Posture>(
  () => chosen.value ?? (vessel.value ? usualPosture(vessel.value) : 'lying'),
);
const full = computed(() => (vessel.value ? fullDip(vessel.value, posture.value) : 0));

/** Half full unless something is typed; null where it cannot be read or is more than the vessel's depth. */
const depth = computed<number | null>(() => {
  if (typed.value.trim() === '') return full.value / 2;
  const read = readLength(typed.value, units.value);
  return 'mm' in read && read.mm >= 0 && read.mm <= full.value + 1e-6 ? read.mm : null;
});

export function DipView(): JSX.Element {
  const { dip } = words.value;
  if (!vessel.value) return <p>{words.value.vessel.outOfDate}</p>;
  return (
    <>
      <PostureChoice />
      <div class="dip">
        <div>
          <DepthBox />
          <output aria-live="polite">
            {depth.value === null
              ? dip.tooDeep(lengthWords(full.value))
              : dip.holds(numberText(litresAtDip(vessel.value, posture.value, depth.value), 1))}
          </output>
        </div>
        <DipPicture vessel={vessel.value} posture={posture.value} depth={depth.value ?? 0} />
      </div>
      <DipTableView />
      <p>{dip.notForSale}</p>
    </>
  );
}

function PostureChoice(): JSX.Element {
  const { dip } = words.value;
  return (
    <fieldset class="ticks">
      <legend>{dip.posture}</legend>
      {postures.map((each) => (
        <label key={each}>
          <input
            type="radio"
            name="posture"
            checked={posture.value === each}
            onChange={() => (chosen.value = each)}
          />
          {dip.postures[each]}
        </label>
      ))}
    </fieldset>
  );
}

function DepthBox(): JSX.Element {
  const { dip } = words.value;
  return (
    <div class={`field${depth.value === null ? ' bad' : ''}`}>
      <label for="dip-depth">{dip.depth(units.value)}</label>
      <input
        id="dip-depth"
        class="number"
        value={typed.value}
        placeholder={numberText(full.value / 2 / (units.value === 'in' ? 25.4 : 1), 1)}
        aria-invalid={depth.value === null}
        autocomplete="off"
        onInput={({ currentTarget }) => (typed.value = currentTarget.value)}
      />
      <input
        type="range"
        aria-label={dip.depth(units.value)}
        min="0"
        max={full.value}
        step="1"
        value={depth.value ?? 0}
        onInput={({ currentTarget }) => (typed.value = `${currentTarget.value} mm`)}
      />
    </div>
  );
}

const steps = { mm: 20, in: 25.4 } as const;

function DipTableView(): JSX.Element {
  const { dip } = words.value;
  const table = dipTable(vessel.value!, posture.value, steps[units.value]);
  return (
    <Scroll title={dip.table}>
      <table>
        <caption>{dip.table}</caption>
        <Headings of={dip.headings(units.value)} />
        <tbody>
          {table.rows.map((row) => (
            <tr key={row.dip}>
              <td>{lengthWords(row.dip)}</td>
              <td>{numberText(row.litres, 1)}</td>
              <td>{numberText((100 * row.dip) / table.full, 0)} %</td>
              <td>{row.oldRule === null ? '–' : numberText(row.oldRule, 1)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

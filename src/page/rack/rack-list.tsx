/** The staves on the rack, the latest first, and the way from and to a file. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { ActButton } from '../act-button.js';
import type { StockStave } from '../../index.js';
import { download } from '../file/download.js';
import { units } from '../state/store.js';
import { lengthFigures, words } from '../words/index.js';
import { goToNextRow } from './keep-place.js';
import {
  addTable,
  bringBack,
  canBringBack,
  clearRack,
  faults,
  mayBeBung,
  staves,
  takeAway,
} from './rack-state.js';
import { savedRack } from './rack-text.js';
import { standingMarks, toggleStanding } from './wishes-state.js';

export function RackList(): JSX.Element {
  const { rack } = words.value;
  return (
    <section aria-label={rack.list}>
      <RackFiles />
      <Faults />
      <div class="staves" tabIndex={0} aria-label={rack.list} role="group">
        <ul>
          {[...staves.value].reverse().map((stave) => (
            <Row key={stave.mark} stave={stave} />
          ))}
        </ul>
      </div>
    </section>
  );
}

function Row({ stave: { mark, width, bung } }: { stave: StockStave }): JSX.Element {
  const { rack } = words.value;
  return (
    <li>
      <b>{mark}</b> <span>{lengthFigures(width, 2)}</span>
      <button
        type="button"
        aria-pressed={bung === true}
        aria-label={rack.bungOf(mark)}
        onClick={() => mayBeBung(mark, bung === true ? null : true)}
      >
        {rack.bung}
      </button>
      <button
        type="button"
        aria-pressed={standingMarks.value.has(mark)}
        aria-label={rack.standsNowOf(mark)}
        onClick={() => toggleStanding(mark)}
      >
        {rack.standsNow}
      </button>
      <button
        type="button"
        aria-label={rack.remove(mark)}
        onClick={({ currentTarget }) => {
          goToNextRow(currentTarget);
          takeAway([mark]);
        }}
      >
        ×
      </button>
    </li>
  );
}

function RackFiles(): JSX.Element {
  const { rack } = words.value;
  const input = useRef<HTMLInputElement>(null);
  const opened = async (): Promise<void> => {
    const file = input.current?.files?.[0];
    if (file) addTable(await file.text());
    if (input.current) input.current.value = '';
  };
  const save = (): void =>
    download({ name: 'rack.csv', content: savedRack(staves.value, units.value) });
  return (
    <div class="tools">
      <button type="button" onClick={() => input.current?.click()}>
        {rack.open}
      </button>
      <input
        ref={input}
        type="file"
        accept=".csv,.txt,text/csv"
        aria-label={rack.open}
        hidden
        onChange={() => void opened()}
      />
      <ActButton off={staves.value.length === 0} act={save}>
        {rack.save}
      </ActButton>
      <ActButton off={staves.value.length === 0} act={clearRack}>
        {rack.clear}
      </ActButton>
      <ActButton off={!canBringBack.value} act={bringBack}>
        {rack.bringBack}
      </ActButton>
    </div>
  );
}

/** As many as help: the rest is mended by then, or of the same kind. */
const mostFaults = 6;

function Faults(): JSX.Element | null {
  const { rack } = words.value;
  if (faults.value.length === 0) return null;
  const refused = faults.value.some(({ severity }) => severity === 'error');
  return (
    <div class="refusal" role="alert">
      {refused && <p>{rack.nothingTaken}</p>}
      <ul>
        {faults.value.slice(0, mostFaults).map(({ code, line, found, heading, detail }, i) => (
          <li key={i}>
            {rack.line(line)} {rack.faults[code](found === '' ? heading : found, detail)}
          </li>
        ))}
      </ul>
      <button type="button" onClick={() => (faults.value = [])}>
        {words.value.close}
      </button>
    </div>
  );
}

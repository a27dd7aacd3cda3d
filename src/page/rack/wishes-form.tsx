/** What the sets are to be like, and the button that has them chosen. */
import type { JSX } from 'preact';
import { ActButton } from '../act-button.js';
import { Choice } from '../choice.js';
import { units, vessel } from '../state/store.js';
import { lengthWords, words } from '../words/index.js';
import { chooseButton } from './keep-place.js';
import { failed, progress, running, startChoosing, stopChoosing, wrong } from './choosing.js';
import { stock } from './rack-state.js';
import { StandingBox } from './standing-box.js';
import {
  asMany,
  enoughFor,
  fewestStaves,
  measured,
  noBung,
  standingWrong,
  typed,
  usual,
  wished,
} from './wishes-state.js';
import type { WishBox } from './wishes.js';

export function WishesForm(): JSX.Element {
  const { rack } = words.value;
  const count = usual.value?.count;
  const lengthHint = (mm: number | null | undefined): string =>
    typeof mm === 'number' ? lengthWords(mm) : '';
  return (
    <section aria-label={rack.choose}>
      <div class="fields">
        <Box box="vessels" label={rack.vessels} off={asMany.value} note={enoughText()} />
        <Tick label={rack.asMany} on={asMany} />
        <Choice
          id="rack-measured"
          label={rack.measuredAs}
          chosen={measured.value}
          names={['blank', 'backed']}
          say={(name) => rack.measured[name]}
          choose={(name) => void (measured.value = name)}
          class="row"
        />
        <StandingBox />
      </div>
      <details>
        <summary>{rack.more}</summary>
        <div class="fields">
          <Box box="count" label={rack.count} hint={count ? `${count.min}-${count.max}` : ''} />
          <Box
            box="tolerance"
            label={rack.tolerance(units.value)}
            hint={lengthHint(usual.value?.tolerance)}
          />
          <Box box="plane" label={rack.plane(units.value)} hint={lengthHint(usual.value?.plane)} />
          <Box
            box="bung"
            label={rack.bungWidth(units.value)}
            hint={lengthHint(usual.value?.bung)}
            off={noBung.value}
          />
          <Tick label={rack.noBung} on={noBung} />
        </div>
      </details>
      <Run />
    </section>
  );
}

/** More vessels than the rack has staves for. */
function enoughText(): string {
  const most = enoughFor.value;
  const have = stock.value?.staves.length ?? 0;
  return most === null ? '' : words.value.rack.enough(have, fewestStaves.value, most);
}

interface BoxProps {
  readonly box: WishBox;
  readonly label: string;
  readonly hint?: string;
  readonly off?: boolean;
  readonly note?: string;
}

function Box({ box, label, hint = '', off = false, note = '' }: BoxProps): JSX.Element {
  const problem = 'problems' in wished.value ? wished.value.problems[box] : undefined;
  return (
    <div class={problem ? 'field bad' : 'field'}>
      <label for={`rack-${box}`}>{label}</label>
      <input
        id={`rack-${box}`}
        value={typed.value[box]}
        placeholder={hint}
        disabled={off}
        autoComplete="off"
        aria-invalid={problem !== undefined}
        aria-describedby={`rack-${box}-said`}
        onInput={({ currentTarget }) =>
          (typed.value = { ...typed.value, [box]: currentTarget.value })
        }
      />
      <div class="sayings" id={`rack-${box}-said`} aria-live="polite">
        {problem && <p>{problemText(problem)}</p>}
        {!problem && note && <p>{note}</p>}
      </div>
    </div>
  );
}

function problemText(problem: keyof typeof words.value.problems | 'no-vessels' | 'no-count') {
  const { rack, problems } = words.value;
  return problem === 'no-vessels' || problem === 'no-count'
    ? rack.problems[problem]
    : problems[problem];
}

function Tick({ label, on }: { label: string; on: typeof asMany }): JSX.Element {
  return (
    <div class="ticks">
      <label>
        <input
          type="checkbox"
          checked={on.value}
          onChange={({ currentTarget }) => (on.value = currentTarget.checked)}
        />
        {label}
      </label>
    </div>
  );
}

function Run(): JSX.Element {
  const { rack } = words.value;
  const isAsked = 'wishes' in wished.value && standingWrong.value.length === 0;
  const ready = vessel.value && stock.value && isAsked;
  return (
    <>
      <div class="tools">
        <ActButton
          id={chooseButton}
          class="main"
          off={running.value || !ready || stock.value?.staves.length === 0}
          act={startChoosing}
        >
          {rack.choose}
        </ActButton>
        <ActButton off={!running.value} act={stopChoosing}>
          {rack.stop}
        </ActButton>
      </div>
      <p class="said" role="status">
        {running.value && (progress.value ? rack.progress(progress.value) : rack.searching)}
        {failed.value && rack.failed}
        {wrong.value.map(({ code, found, allowed }) => (
          <span key={code}>{rack.wrong[code](found, allowed)} </span>
        ))}
      </p>
    </>
  );
}

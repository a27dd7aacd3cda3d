/** The box for staves that stand already: a ring that is begun is completed. */
import type { JSX } from 'preact';
import { words } from '../words/index.js';
import { standing, standingWrong } from './wishes-state.js';

export function StandingBox(): JSX.Element {
  const { rack } = words.value;
  const issues = standingWrong.value;
  return (
    <div class={issues.length > 0 ? 'field row bad' : 'field row'}>
      <label for="rack-standing">{rack.begun}</label>
      <input
        id="rack-standing"
        value={standing.value}
        placeholder="A4, B17"
        autoComplete="off"
        aria-invalid={issues.length > 0}
        aria-describedby="rack-standing-said rack-standing-hint"
        onInput={({ currentTarget }) => (standing.value = currentTarget.value)}
      />
      <div class="sayings" id="rack-standing-said" aria-live="polite">
        {issues.map(({ code, found, allowed }) => (
          <p key={`${code} ${found}`}>{rack.wrong[code](found, allowed.replace(/^<= /, ''))}</p>
        ))}
      </div>
      <p id="rack-standing-hint">{rack.begunHint}</p>
    </div>
  );
}

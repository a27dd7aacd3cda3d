/** The sets that were chosen, and why there are no more. */
import type { JSX } from 'preact';
import { lengthWords, words } from '../words/index.js';
import type { Chosen } from './chosen.js';
import { found, forgetSets } from './choosing.js';
import { goToChoosing } from './keep-place.js';
import { SetCard } from './set-card.js';
import { shortfallText } from './shortfall-text.js';

export function SetsView(): JSX.Element | null {
  const chosen = found.value;
  if (!chosen) return null;
  const { rack } = words.value;
  const { result } = chosen;
  return (
    <section class="sets" aria-label={rack.sets}>
      <h2 aria-live="polite">{summary(chosen)}</h2>
      {result.shortfall && <p>{shortfallText(chosen, rack, lengthWords)}</p>}
      {result.sets.map((set, i) => (
        <SetCard key={i} set={set} number={i + 1} />
      ))}
      {result.left.length > 0 && (
        <p>
          {rack.left(result.left.length)} {result.left.join(', ')}
        </p>
      )}
      <button
        type="button"
        onClick={() => {
          goToChoosing();
          forgetSets();
        }}
      >
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

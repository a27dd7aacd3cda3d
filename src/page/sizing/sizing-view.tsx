/** Dimensions for a capacity: what would have to change, and round sizes near it. */
import { computed, signal } from '@preact/signals';
import type { JSX } from 'preact';
import { keeps, sizeFor, type Keep, type Sized } from '../../index.js';
import { readDecimal, readLength } from '../state/read-length.js';
import { vessel } from '../state/store.js';
import { litres } from '../vessel/capacity.js';
import { lengthWords, numberText, words } from '../words/index.js';
import { applyChanges } from './apply.js';
import { NearbySizes } from './nearby-sizes.js';

const typed = signal('');
const typedLength = signal('');
const keep = signal<Keep>('proportions');

type Answer = Sized | { readonly problem: string } | null;

const answer = computed<Answer>(() => {
  const { sizing, problems } = words.value;
  if (!vessel.value || typed.value.trim() === '') return null;
  const wanted = readDecimal(typed.value.trim().replace(/\s*l$/i, ''));
  if (typeof wanted !== 'number' || !(wanted > 0 && wanted < 1e6))
    return { problem: sizing.notLitres };
  const { units } = vessel.value.spec;
  const given = typedLength.value.trim() !== '' && keep.value !== 'height';
  const length = given ? readLength(typedLength.value, units) : null;
  if (length && 'problem' in length) return { problem: problems[length.problem] };
  const request = { litres: wanted, keep: keep.value, ...(length && { staveLength: length.mm }) };
  const found = sizeFor(vessel.value.spec, request);
  if (!('unreachable' in found)) return found;
  const { nearest } = found.unreachable;
  return { problem: sizing.unreachable(nearest === null ? null : numberText(nearest, 1)) };
});

export function SizingView(): JSX.Element {
  const { sizing } = words.value;
  return (
    <>
      <p>{sizing.now(numberText(litres.value, 2))}</p>
      <div class="fields">
        <div class="field">
          <label for="litres">{sizing.litres}</label>
          <input
            id="litres"
            class="number"
            value={typed.value}
            inputMode="decimal"
            autocomplete="off"
            onInput={({ currentTarget }) => (typed.value = currentTarget.value)}
          />
        </div>
        <div class="field">
          <label for="stave-length">{sizing.staveLength}</label>
          <input
            id="stave-length"
            class="number"
            value={typedLength.value}
            autocomplete="off"
            disabled={keep.value === 'height'}
            onInput={({ currentTarget }) => (typedLength.value = currentTarget.value)}
          />
        </div>
      </div>
      <KeepChoice />
      <div aria-live="polite">{answer.value && <Found found={answer.value} />}</div>
    </>
  );
}

function KeepChoice(): JSX.Element {
  const { sizing } = words.value;
  return (
    <fieldset class="ticks">
      <legend>{sizing.keep}</legend>
      {keeps.map((each) => (
        <label key={each}>
          <input
            type="radio"
            name="keep"
            checked={keep.value === each}
            onChange={() => (keep.value = each)}
          />
          {sizing.keeps[each]}
        </label>
      ))}
    </fieldset>
  );
}

function Found({ found }: { found: NonNullable<Answer> }): JSX.Element {
  const { sizing, fields } = words.value;
  if ('problem' in found) return <p class="error">{found.problem}</p>;
  const spoken = (key: string): string => fields[key.replace(/\[\d+\]/, '')] ?? key;
  return (
    <>
      <p>{sizing.found(numberText(found.litres, 2))}</p>
      <ul>
        {found.changes.map(({ key, from, to }) => (
          <li key={key}>
            {spoken(key)}: {lengthWords(from)} → <strong>{lengthWords(to)}</strong>
          </li>
        ))}
      </ul>
      <button type="button" class="main" onClick={() => applyChanges(found.spec, found.changes)}>
        {sizing.apply}
      </button>
      <NearbySizes found={found} />
    </>
  );
}

/** One number, word or choice of the spec: its label, its box, and right below what is to be said about it. */
import type { JSX } from 'preact';
import { messagesAt } from '../state/field-values.js';
import { keyOf, nameOf, type Field } from '../state/fields.js';
import { endOf } from '../state/head-keys.js';
import { useSteady } from '../state/steady.js';
import { units } from '../state/store.js';
import { useField, type FieldState } from './use-field.js';
import { words } from '../words/index.js';

export interface FieldBoxProps {
  readonly field: Field;
  /** where it stands, so that one field may have two boxes */
  readonly place: 'drawing' | 'panel';
  readonly label?: string;
}

export function FieldBox({ field, place, label }: FieldBoxProps): JSX.Element {
  const state = useField(field);
  const id = `${place}-${keyOf(field)}`;
  const noted = useSteady(() => noteOn(field), keyOf(field));
  const said = state.problem === null ? noted : [problemOf(state.problem)];
  const bad = state.problem !== null || said.some(({ severity }) => severity === 'error');
  const marks = [place, state.byDefault && 'by-default', bad && 'bad', said.length > 0 && 'noted'];
  return (
    <div class={['field', ...marks].filter(Boolean).join(' ')}>
      <label for={id}>
        {label ?? labelOf(field)}
        {place === 'panel' && unitOf(field)}
      </label>
      <Control field={field} state={state} id={id} bad={bad} />
      <div class="sayings" id={`${id}-said`} aria-live="polite">
        {said.map(({ text }, i) => (
          <p key={i}>{text}</p>
        ))}
      </div>
    </div>
  );
}

/** Two heads have boxes of one name; each says which it is of. */
function labelOf(field: Field): string {
  const end = endOf(field.path);
  const name = words.value.fields[nameOf(field)] ?? nameOf(field);
  return end ? `${name}, ${words.value.numbers.ends[end]}` : name;
}

interface ControlProps {
  readonly field: Field;
  readonly state: FieldState;
  readonly id: string;
  readonly bad: boolean;
}

function Control({ field, state, id, bad }: ControlProps): JSX.Element {
  const shared = {
    id,
    'aria-describedby': `${id}-said`,
    'aria-invalid': bad,
    onBlur: state.leave,
  };
  if (field.choices)
    return (
      <select
        {...shared}
        value={state.shown}
        onChange={(event) => state.type(event.currentTarget.value)}
      >
        {field.choices.map((choice) => (
          <option key={choice} value={choice}>
            {words.value.choices[choice] ?? choice}
          </option>
        ))}
      </select>
    );
  const numeric = field.kind !== 'text' && field.kind !== 'lengths';
  return (
    <input
      {...shared}
      value={state.shown}
      autocomplete="off"
      spellcheck={false}
      class={numeric ? 'number' : ''}
      onInput={(event) => state.type(event.currentTarget.value)}
      onFocus={(event) => numeric && event.currentTarget.select()}
    />
  );
}

function unitOf({ kind }: Field): string {
  if (kind === 'length' || kind === 'lengths') return ` (${units.value})`;
  return kind === 'degrees' ? ' (°)' : '';
}

interface Saying {
  readonly severity: 'error' | 'warning';
  readonly text: string;
}

const problemOf = (problem: NonNullable<FieldState['problem']>): Saying => ({
  severity: 'error',
  text: words.value.problems[problem],
});

const noteOn = (field: Field): Saying[] =>
  messagesAt(field).map(({ severity, text }) => ({ severity, text }));

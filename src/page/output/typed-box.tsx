/** A box for a number that may stay empty, with what is wrong with it below. */
import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';

interface TypedBoxProps {
  readonly id: string;
  readonly label: string;
  readonly typed: Signal<string>;
  /** what stands faintly in it while it is empty */
  readonly usual: string;
  /** null where nothing is wrong */
  readonly wrong: string | null;
  /** the element that tells more */
  readonly about?: string;
  /** for keyboards on a screen, where no fractions are wanted */
  readonly inputMode?: 'decimal';
}

export function TypedBox(props: TypedBoxProps): JSX.Element {
  const { id, label, typed, usual, wrong, about, inputMode } = props;
  return (
    <div class={wrong === null ? 'field' : 'field bad'}>
      <label for={id}>{label}</label>
      <input
        id={id}
        class="number"
        value={typed.value}
        placeholder={usual}
        autocomplete="off"
        inputMode={inputMode}
        aria-invalid={wrong !== null}
        aria-describedby={about ? `${id}-said ${about}` : `${id}-said`}
        onInput={({ currentTarget }) => (typed.value = currentTarget.value)}
      />
      <div class="sayings" id={`${id}-said`} aria-live="polite">
        {wrong !== null && <p>{wrong}</p>}
      </div>
    </div>
  );
}

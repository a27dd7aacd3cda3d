/** Widths, one after the other: number, Enter, next. A caliper that types does the same. */
import type { JSX } from 'preact';
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { units } from '../state/store.js';
import { lengthWords, words } from '../words/index.js';
import { addTable, addWidths, freeMark, mark, staves } from './rack-state.js';
import { isTable, typedWidths, type TypedWidths } from './typed-widths.js';

export function Entry(): JSX.Element {
  const { rack } = words.value;
  const box = useRef<HTMLInputElement>(null);
  const wrong = useSignal<TypedWidths['wrong']>(null);
  const take = (text: string): void => {
    const read = typedWidths(text, units.value);
    wrong.value = read.wrong;
    if (read.wrong) return box.current?.select();
    addWidths(read.widths);
    box.current!.value = '';
  };
  const paste = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData('text') ?? '';
    if (!/[\r\n]/.test(text.trim())) return;
    event.preventDefault();
    if (isTable(text)) addTable(text);
    else take(text);
  };
  const last = staves.value.at(-1);
  return (
    <form
      class="entry"
      onSubmit={(event) => {
        event.preventDefault();
        take(box.current!.value);
      }}
    >
      <div class="field">
        <label for="rack-width">{rack.width(units.value)}</label>
        <input
          id="rack-width"
          ref={box}
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="next"
          aria-describedby="rack-width-said"
          aria-invalid={wrong.value !== null}
          onPaste={paste}
        />
      </div>
      <div class="field">
        <label for="rack-mark">{rack.mark}</label>
        <input
          id="rack-mark"
          autoComplete="off"
          value={freeMark.value}
          onChange={({ currentTarget }) => (mark.value = currentTarget.value)}
        />
      </div>
      <button type="submit" class="main">
        {rack.add}
      </button>
      <p id="rack-width-said" class="said" aria-live="polite">
        {wrong.value
          ? [wrong.value.text, problemText(wrong.value.problem)].filter(Boolean).join(': ')
          : last && rack.added(last.mark, lengthWords(last.width), staves.value.length)}
      </p>
    </form>
  );
}

function problemText(problem: NonNullable<TypedWidths['wrong']>['problem']): string {
  return problem === 'no-stave' ? words.value.rack.noStave : words.value.problems[problem];
}

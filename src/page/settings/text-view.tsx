/** The spec as text, which is what is saved: whatever is typed stays, right or wrong. */
import type { JSX } from 'preact';
import { endStep, fileName, messages, text, writeText } from '../state/store.js';
import { goToLine } from '../notes.js';
import { words } from '../words/index.js';

export function TextView(): JSX.Element {
  const { textPart } = words.value;
  return (
    <>
      <div class="field">
        <label for="spec-text">{textPart.label(fileName.value)}</label>
        <textarea
          id="spec-text"
          spellcheck={false}
          autocomplete="off"
          rows={24}
          value={text.value}
          aria-describedby="text-said"
          onInput={({ currentTarget }) => writeText(currentTarget.value, 'text')}
          onBlur={endStep}
        />
      </div>
      <ul id="text-said" class="places">
        {messages.value.map(({ code, key, line, column, text: said }) => (
          <li key={`${code} ${key} ${line}`}>
            <button type="button" onClick={() => goToLine(line)}>
              {textPart.line(line, column)}
            </button>{' '}
            {said}
          </li>
        ))}
      </ul>
    </>
  );
}

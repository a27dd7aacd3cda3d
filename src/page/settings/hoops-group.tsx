/** The hoops, one row each; rows can be added and taken away. */
import type { JSX } from 'preact';
import { addHoop, removeHoop } from '../state/hoops.js';
import { hoopFields } from '../state/fields.js';
import { steady } from '../state/steady.js';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { FieldBox } from './field-box.js';

const names = steady(() => vessel.value?.spec.hoops.map(({ name }) => name) ?? []);

export function HoopsGroup(): JSX.Element {
  const { hoops } = words.value;
  return (
    <details>
      <summary>{words.value.groups.hoops}</summary>
      {names.value.map((name, i) => (
        <fieldset key={i}>
          <legend>{hoops.name(name)}</legend>
          <div class="fields">
            {hoopFields(i).map((field) => (
              <FieldBox key={field.path.join('.')} field={field} place="panel" />
            ))}
          </div>
          <button
            type="button"
            onClick={({ currentTarget }) => {
              // the last one goes with its hoop, and the keyboard must not be lost with it
              const below = currentTarget.closest('fieldset')!.nextElementSibling;
              if (below instanceof HTMLButtonElement) below.focus();
              removeHoop(i);
            }}
          >
            {hoops.remove(name)}
          </button>
        </fieldset>
      ))}
      <button type="button" onClick={addHoop}>
        {hoops.add}
      </button>
    </details>
  );
}

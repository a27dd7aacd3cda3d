/** The hoops, one row each; rows can be added and taken away. */
import type { JSX } from 'preact';
import { addHoop, removeHoop } from '../state/hoops.js';
import { hoopFields } from '../state/fields.js';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { FieldBox } from './field-box.js';

export function HoopsGroup(): JSX.Element {
  const { hoops } = words.value;
  const all = vessel.value?.spec.hoops ?? [];
  return (
    <details>
      <summary>{words.value.groups.hoops}</summary>
      {all.map((hoop, i) => (
        <fieldset key={i}>
          <legend>{hoops.name(hoop.name)}</legend>
          <div class="fields">
            {hoopFields(i).map((field) => (
              <FieldBox key={field.path.join('.')} field={field} place="panel" />
            ))}
          </div>
          <button type="button" onClick={() => removeHoop(i)}>
            {hoops.remove(hoop.name)}
          </button>
        </fieldset>
      ))}
      <button type="button" onClick={addHoop}>
        {hoops.add}
      </button>
    </details>
  );
}

/** Everything that a spec can say, in groups; what is not given shows its default. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { groupsOf, type Group } from '../state/fields.js';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { FieldBox } from './field-box.js';
import { HoopsGroup } from './hoops-group.js';

const groups = computed<Group[]>(() => {
  const spec = vessel.value?.spec;
  return groupsOf({
    vessel: spec?.vessel ?? 'cask',
    mixedStaves: !!spec?.staves.widths,
    mixedBoards: !!spec?.heads.bottom.widths,
  });
});

export function SettingsView(): JSX.Element {
  return (
    <>
      <p>{words.value.settings.about}</p>
      {groups.value.map((group, i) => (
        <FieldGroup key={group.name} group={group} open={i < 2} />
      ))}
      <HoopsGroup />
    </>
  );
}

function FieldGroup({ group, open }: { group: Group; open: boolean }): JSX.Element {
  return (
    <details open={open}>
      <summary>{words.value.groups[group.name]}</summary>
      <div class="fields">
        {group.fields.map((field) => (
          <FieldBox key={field.path.join('.')} field={field} place="panel" />
        ))}
      </div>
    </details>
  );
}

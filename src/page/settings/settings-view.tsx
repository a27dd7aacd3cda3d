/** Everything that a spec can say, in groups; what is not given shows its default. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { Choice } from '../choice.js';
import { groupsOf, type Group, type Kind, type Section } from '../state/fields.js';
import { headsApart, setHeadsApart } from '../state/heads-apart.js';
import { steady } from '../state/steady.js';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { FieldBox } from './field-box.js';
import { HoopsGroup } from './hoops-group.js';

const kind = steady<Kind>(() => {
  const spec = vessel.value?.spec;
  return {
    vessel: spec?.vessel ?? 'cask',
    mixedStaves: !!spec?.staves.widths,
    mixedBoards: (['top', 'bottom'] as const).filter((end) => spec?.heads[end]?.widths),
    headsApart: headsApart.value,
  };
});
const groups = computed(() => groupsOf(kind.value));

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
      {group.name === 'heads' && kind.value.vessel === 'cask' && <HeadsChoice />}
      {group.sections.map((section) => (
        <FieldSection key={section.end} section={section} />
      ))}
    </details>
  );
}

function FieldSection({ section: { end, fields } }: { section: Section }): JSX.Element {
  const boxes = (
    <div class="fields">
      {fields.map((field) => (
        <FieldBox key={field.path.join('.')} field={field} place="panel" />
      ))}
    </div>
  );
  if (!end) return boxes;
  return (
    <fieldset>
      <legend>{words.value.settings.headOf[end]}</legend>
      {boxes}
    </fieldset>
  );
}

function HeadsChoice(): JSX.Element {
  const { heads, headsAlike, headsApart: apart } = words.value.settings;
  return (
    <Choice
      id="heads-apart"
      label={heads}
      chosen={headsApart.value ? 'apart' : 'alike'}
      names={['alike', 'apart']}
      say={(name) => (name === 'apart' ? apart : headsAlike)}
      choose={(name) => setHeadsApart(name === 'apart')}
      class="heads-choice"
    />
  );
}

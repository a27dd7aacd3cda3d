/** Everything that a spec can say, in groups; what is not given shows its default. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { groupsOf, type Group, type Kind, type Section } from '../state/fields.js';
import { headsApart } from '../state/heads-apart.js';
import { steady } from '../state/steady.js';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { FieldBox } from './field-box.js';
import { HoopsGroup } from './hoops-group.js';
import { BoardsWay, BungChoice, HeadsChoice, StavesWay } from './ways-choices.js';

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
      {group.name === 'staves' && <StavesWay />}
      {group.name === 'heads' && kind.value.vessel === 'cask' && <HeadsChoice />}
      {group.name === 'bung' && <BungChoice />}
      {group.sections.map((section) => (
        <FieldSection key={section.end} section={section} ofBoards={group.name === 'heads'} />
      ))}
    </details>
  );
}

interface SectionProps {
  readonly section: Section;
  /** whether the boxes of a head's boards are among them */
  readonly ofBoards: boolean;
}

function FieldSection({ section: { end, fields }, ofBoards }: SectionProps): JSX.Element {
  const boxes = (
    <div class="fields">
      {ofBoards && <BoardsWay end={end} />}
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

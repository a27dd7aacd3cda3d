/** Choices between keys that shut each other out: what they change is the spec, in one step that undo takes back. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import type { Vessel } from '../../index.js';
import { Choice } from '../choice.js';
import type { End } from '../state/head-keys.js';
import { headsApart, setHeadsApart } from '../state/heads-apart.js';
import { text, vessel, writeText } from '../state/store.js';
import { boardsIn, bungIn, stavesIn, ways, type Way } from '../state/ways.js';
import { words } from '../words/index.js';

const wayOf = (widths: unknown): Way => (widths ? 'uneven' : 'even');

// what stands in each, so that a number that is typed shows none of them anew
const stavesWay = computed(() => wayOf(vessel.value?.spec.staves.widths));
const boardsWays = {
  top: computed(() => wayOf(vessel.value?.spec.heads.top?.widths)),
  bottom: computed(() => wayOf(vessel.value?.spec.heads.bottom.widths)),
};
const bung = computed(() => (vessel.value?.spec.bung ? 'bored' : 'none'));

/** Nothing where there is no vessel yet, or the text is not YAML, as is said beside it. */
function change(changedFor: (vessel: Vessel) => string | null): void {
  const changed = vessel.value && changedFor(vessel.value);
  if (changed !== null) writeText(changed);
}

export function StavesWay(): JSX.Element {
  const { stavesAre, staveWays } = words.value.settings;
  return (
    <Choice
      id="staves-way"
      label={stavesAre}
      chosen={stavesWay.value}
      names={ways}
      say={(way) => staveWays[way]}
      choose={(way) => change((known) => stavesIn(text.value, way, known))}
      class="first-choice"
    />
  );
}

/** Of the boards of one head, or with `end` null of both. */
export function BoardsWay({ end }: { end: End | null }): JSX.Element {
  const { boardsAre, boardWays } = words.value.settings;
  return (
    <Choice
      id={`boards-way-${end ?? 'both'}`}
      label={end ? `${boardsAre}, ${words.value.numbers.ends[end]}` : boardsAre}
      chosen={boardsWays[end ?? 'bottom'].value}
      names={ways}
      say={(way) => boardWays[way]}
      choose={(way) => change((known) => boardsIn(text.value, way, end, known))}
    />
  );
}

export function BungChoice(): JSX.Element {
  const { settings } = words.value;
  return (
    <Choice
      id="bung-bored"
      label={settings.bung}
      chosen={bung.value}
      names={['bored', 'none']}
      say={(name) => settings.bungs[name]}
      choose={(name) => change(({ spec }) => bungIn(text.value, name === 'bored', spec.vessel))}
      class="first-choice"
    />
  );
}

export function HeadsChoice(): JSX.Element {
  const { heads, headsAlike, headsApart: apart } = words.value.settings;
  return (
    <Choice
      id="heads-apart"
      label={heads}
      chosen={headsApart.value ? 'apart' : 'alike'}
      names={['alike', 'apart']}
      say={(name) => (name === 'apart' ? apart : headsAlike)}
      choose={(name) => setHeadsApart(name === 'apart')}
      class="first-choice"
    />
  );
}

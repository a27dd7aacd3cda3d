/** The parts of the page below the strip, behind tabs. */
import type { JSX } from 'preact';
import { DipView } from './dip/dip-view.js';
import { OutputView } from './output/output-view.js';
import { part, partNames, type PartName } from './parts.js';
import { SettingsView } from './settings/settings-view.js';
import { SizingView } from './sizing/sizing-view.js';
import { NumbersView } from './tables/numbers-view.js';
import { SlipsView } from './tables/slips-view.js';
import { TextView } from './settings/text-view.js';
import { SpaceView } from './view3d/space-view.js';
import { words } from './words/index.js';

const views: Readonly<Record<PartName, () => JSX.Element>> = {
  settings: SettingsView,
  sizing: SizingView,
  space: SpaceView,
  numbers: NumbersView,
  dip: DipView,
  slips: SlipsView,
  output: OutputView,
  text: TextView,
};

export function Parts(): JSX.Element {
  const View = views[part.value];
  return (
    <section class="parts">
      <div role="tablist" class="tabs" aria-label={words.value.parts.title} onKeyDown={moveByKey}>
        {partNames.map((name) => (
          <button
            type="button"
            role="tab"
            key={name}
            id={`tab-${name}`}
            aria-selected={part.value === name}
            aria-controls="part"
            tabIndex={part.value === name ? 0 : -1}
            onClick={() => (part.value = name)}
          >
            {words.value.parts[name]}
          </button>
        ))}
      </div>
      <div id="part" role="tabpanel" class="part" aria-labelledby={`tab-${part.value}`}>
        <View />
      </div>
    </section>
  );
}

function moveByKey(event: KeyboardEvent): void {
  const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
  if (by === undefined) return;
  event.preventDefault();
  const at = partNames.indexOf(part.value) + by + partNames.length;
  part.value = partNames[at % partNames.length]!;
  document.getElementById(`tab-${part.value}`)?.focus();
}

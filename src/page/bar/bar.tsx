/** The bar at the top: the vessel's name, files, undo, and how the page looks and speaks. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { ActButton } from '../act-button.js';
import { languages, type Language } from '../../index.js';
import { OpenButton, saveSpec } from '../file/files.js';
import { templates } from '../file/templates.js';
import {
  canRedo,
  canUndo,
  changeUnits,
  openSpec,
  stepBack,
  stepForward,
  units,
  vessel,
} from '../state/store.js';
import { language, speak, words } from '../words/index.js';
import { look, looks, type Look } from './look.js';

const title = computed(() => vessel.value?.spec.title);

export function Bar(): JSX.Element {
  const { bar } = words.value;
  return (
    <header class="bar">
      <h1>
        <span class="mark">Staveloft</span> {title.value}
      </h1>
      <div class="tools">
        <BeginFrom />
        <OpenButton />
        <button type="button" onClick={saveSpec}>
          {bar.save}
        </button>
        <ActButton act={stepBack} off={!canUndo.value}>
          {bar.undo}
        </ActButton>
        <ActButton act={stepForward} off={!canRedo.value}>
          {bar.redo}
        </ActButton>
        <Habits />
      </div>
    </header>
  );
}

/** Units, language and look: settled once, then out of the way. */
function Habits(): JSX.Element {
  const { bar } = words.value;
  return (
    <details class="habits">
      <summary>{bar.habits}</summary>
      <div>
        <button type="button" onClick={() => void changeUnits()}>
          {units.value === 'mm' ? bar.toInches : bar.toMillimetres}
        </button>
        <Choice
          label={bar.language}
          value={language.value}
          options={languages.map((code) => [code, bar.languages[code]])}
          choose={(code) => void speak(code as Language)}
        />
        <Choice
          label={bar.look}
          value={look.value}
          options={looks.map((name) => [name, bar.looks[name]])}
          choose={(name) => void (look.value = name as Look)}
        />
      </div>
    </details>
  );
}

function BeginFrom(): JSX.Element {
  const { bar } = words.value;
  const choose = (name: string): void => {
    const template = templates.find((each) => each.name === name);
    if (template) openSpec(`${template.name}.yaml`, template.text);
  };
  return (
    <Choice
      label={bar.begin}
      value=""
      options={[['', bar.begin], ...templates.map(({ name, title }) => [name, title] as const)]}
      choose={choose}
    />
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, text: string])[];
  readonly choose: (value: string) => void;
}

function Choice({ label, value, options, choose }: ChoiceProps): JSX.Element {
  return (
    <select
      aria-label={label}
      value={value}
      onChange={({ currentTarget }) => {
        choose(currentTarget.value);
        currentTarget.value = value === '' ? '' : currentTarget.value;
      }}
    >
      {options.map(([name, text]) => (
        <option key={name} value={name}>
          {text}
        </option>
      ))}
    </select>
  );
}

/** Boxes for the sizes of some pieces; empty ones leave it to the usual. What cannot be is said below its box. */
import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import { units } from '../state/store.js';
import { words } from '../words/index.js';
import { fan, fanTyped, plank, plankTyped, usualFan } from './output-state.js';
import type { SizeProblem } from './piece-sizes.js';

export function SizeBoxes(): JSX.Element {
  const { fan: ofFan, plank: ofPlank } = words.value.output;
  return (
    <>
      <Pair id="fan" words={ofFan} typed={fanTyped} read={fan.value} usual={usualFan.value} />
      <Pair id="plank" words={ofPlank} typed={plankTyped} read={plank.value} usual={['', '']} />
    </>
  );
}

interface PairProps {
  readonly id: string;
  readonly words: {
    readonly title: string;
    readonly boxes: readonly [string, string];
    readonly about: string;
  };
  readonly typed: readonly [Signal<string>, Signal<string>];
  readonly read: object | { readonly problem: SizeProblem; readonly box: 0 | 1 };
  /** what stands faintly in the empty boxes */
  readonly usual: readonly [string, string];
}

function Pair({ id, words: { title, boxes, about }, typed, read, usual }: PairProps): JSX.Element {
  const problem = 'problem' in read ? read : null;
  return (
    <fieldset>
      <legend>{title}</legend>
      <p id={`${id}-about`}>{about}</p>
      <div class="fields">
        {([0, 1] as const).map((i) => (
          <SizeBox
            key={i}
            id={`${id}-${i + 1}`}
            label={`${boxes[i]} (${units.value})`}
            typed={typed[i]}
            usual={usual[i]}
            about={`${id}-about`}
            problem={problem?.box === i ? problem.problem : null}
          />
        ))}
      </div>
    </fieldset>
  );
}

interface SizeBoxProps {
  readonly id: string;
  readonly label: string;
  readonly typed: Signal<string>;
  readonly usual: string;
  readonly about: string;
  readonly problem: SizeProblem | null;
}

function SizeBox({ id, label, typed, usual, about, problem }: SizeBoxProps): JSX.Element {
  const { problems, output } = words.value;
  const said = { ...problems, ...output.sizeProblems };
  return (
    <div class={`field${problem ? ' bad' : ''}`}>
      <label for={id}>{label}</label>
      <input
        id={id}
        class="number"
        value={typed.value}
        placeholder={usual}
        autocomplete="off"
        aria-invalid={problem !== null}
        aria-describedby={`${id}-said ${about}`}
        onInput={({ currentTarget }) => (typed.value = currentTarget.value)}
      />
      <div class="sayings" id={`${id}-said`} aria-live="polite">
        {problem && <p>{said[problem]}</p>}
      </div>
    </div>
  );
}

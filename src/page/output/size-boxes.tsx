/** Boxes for the sizes of some pieces; empty ones leave it to the usual. What cannot be is said below its box. */
import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import { units } from '../state/store.js';
import { words } from '../words/index.js';
import { fan, fanTyped, plank, plankTyped, usualFan } from './output-state.js';
import type { SizeProblem } from './piece-sizes.js';
import { TypedBox } from './typed-box.js';

export function SizeBoxes(): JSX.Element {
  const { fan: ofFan, plank: ofPlank } = words.value.output;
  return (
    <>
      <Pair id="fan" say={ofFan} typed={fanTyped} read={fan.value} usual={usualFan.value} />
      <Pair id="plank" say={ofPlank} typed={plankTyped} read={plank.value} usual={['', '']} />
    </>
  );
}

interface PairProps {
  readonly id: string;
  readonly say: {
    readonly title: string;
    readonly boxes: readonly [string, string];
    readonly about: string;
  };
  readonly typed: readonly [Signal<string>, Signal<string>];
  readonly read: object | { readonly problem: SizeProblem; readonly box: 0 | 1 };
  /** what stands faintly in the empty boxes */
  readonly usual: readonly [string, string];
}

function Pair({ id, say, typed, read, usual }: PairProps): JSX.Element {
  const { title, boxes, about } = say;
  const { problems, output } = words.value;
  const said = { ...problems, ...output.sizeProblems };
  return (
    <fieldset>
      <legend>{title}</legend>
      <p id={`${id}-about`}>{about}</p>
      <div class="fields">
        {([0, 1] as const).map((i) => (
          <TypedBox
            key={i}
            id={`${id}-${i + 1}`}
            label={`${boxes[i]} (${units.value})`}
            typed={typed[i]}
            usual={usual[i]}
            about={`${id}-about`}
            wrong={'problem' in read && read.box === i ? said[read.problem] : null}
          />
        ))}
      </div>
    </fieldset>
  );
}

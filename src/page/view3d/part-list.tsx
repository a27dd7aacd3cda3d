/** Every body of the vessel as a button: the same choice as touching it in the picture. */
import type { JSX } from 'preact';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { hoopName } from './part-numbers.js';
import { keyOfPart, type PartId } from './parts.js';
import { choose, chosenKey } from './space-state.js';

export function PartList(): JSX.Element {
  const { space } = words.value;
  const { staves, heads, hoops } = vessel.value!;
  const count = (n: number): number[] => Array.from({ length: n }, (_, i) => i);
  const boards = (end: 'top' | 'bottom'): [PartId, string][] =>
    count(heads[end]?.boards.length ?? 0).map((index) => [
      { kind: 'board', end, index },
      String(index + 1),
    ]);
  return (
    <div class="part-list">
      <Bodies
        title={space.staves}
        bodies={count(staves.length).map((index) => [{ kind: 'stave', index }, String(index + 1)])}
      />
      {heads.top && <Bodies title={space.boards.top} bodies={boards('top')} />}
      <Bodies title={space.boards.bottom} bodies={boards('bottom')} />
      <Bodies
        title={space.hoops}
        bodies={hoops.map((hoop, index) => [{ kind: 'hoop', index }, hoopName(hoop)])}
      />
    </div>
  );
}

interface BodiesProps {
  readonly title: string;
  readonly bodies: readonly (readonly [id: PartId, label: string])[];
}

function Bodies({ title, bodies }: BodiesProps): JSX.Element {
  return (
    <fieldset>
      <legend>{title}</legend>
      <div class="tools">
        {bodies.map(([id, label]) => (
          <button
            type="button"
            key={keyOfPart(id)}
            aria-pressed={chosenKey.value === keyOfPart(id)}
            aria-label={`${title}: ${label}`}
            onClick={() => choose(id)}
          >
            {label}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

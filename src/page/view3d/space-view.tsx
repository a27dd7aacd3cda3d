/** The vessel in space: turn it, take it apart along its axis, choose a body and see its drawing and numbers. */
import type { JSX } from 'preact';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { ChosenPart } from './chosen-part.js';
import { PartList } from './part-list.js';
import { SpaceCanvas } from './space-canvas.js';
import { apart } from './space-state.js';

export function SpaceView(): JSX.Element {
  const { space, vessel: ofVessel } = words.value;
  if (!vessel.value) return <p>{ofVessel.outOfDate}</p>;
  return (
    <div class="in-space">
      <div class="turned">
        <SpaceCanvas />
        <label class="apart">
          {space.apart}
          <input
            type="range"
            min="0"
            max="100"
            value={100 * apart.value}
            onInput={({ currentTarget }) => (apart.value = Number(currentTarget.value) / 100)}
          />
        </label>
      </div>
      <ChosenPart />
      <PartList />
    </div>
  );
}

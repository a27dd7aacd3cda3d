/** The page from top to bottom: the bar, the vessel, what is to be said, the pieces, and everything else in parts. */
import type { JSX } from 'preact';
import { Bar } from './bar/bar.js';
import { DropTarget } from './file/drop.js';
import { Notes } from './notes.js';
import { Parts } from './parts-view.js';
import { Strip } from './pieces/strip.js';
import { Viewer } from './pieces/viewer.js';
import { rackOpen } from './rack/rack-state.js';
import { RackSheet } from './rack/rack-sheet.js';
import { words } from './words/index.js';
import { VesselView } from './vessel/vessel-view.js';

export function App(): JSX.Element {
  return (
    <DropTarget>
      <a class="skip" href="#vessel">
        {words.value.skip}
      </a>
      <Bar />
      <main>
        <div inert={rackOpen.value}>
          <div id="vessel" class="bench" tabIndex={-1}>
            <VesselView />
            <Notes />
          </div>
          <Strip />
          <Parts />
        </div>
      </main>
      <RackSheet />
      <Viewer />
    </DropTarget>
  );
}

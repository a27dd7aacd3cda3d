/** The sheet at the lower edge of the page, pulled up to work with the rack of staves. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { words } from '../words/index.js';
import { Entry } from './entry.js';
import { RackList } from './rack-list.js';
import { rackOpen, staves } from './rack-state.js';
import { SetsView } from './sets-view.js';
import { WishesForm } from './wishes-form.js';

export function RackSheet(): JSX.Element {
  const { rack } = words.value;
  const handle = useRef<HTMLButtonElement>(null);
  const close = (): void => {
    rackOpen.value = false;
    handle.current?.focus();
  };
  useEffect(() => {
    if (rackOpen.value) document.getElementById('rack-width')?.focus();
  }, [rackOpen.value]);
  return (
    <aside
      class={rackOpen.value ? 'rack open' : 'rack'}
      aria-label={rack.title}
      onKeyDown={(event) => event.key === 'Escape' && close()}
    >
      <button
        type="button"
        ref={handle}
        class="handle"
        aria-expanded={rackOpen.value}
        aria-controls="rack-sheet"
        onClick={() => (rackOpen.value = !rackOpen.value)}
      >
        <span aria-hidden="true">{rackOpen.value ? '▾' : '▴'}</span>{' '}
        {rack.handle(staves.value.length)}
      </button>
      {rackOpen.value && (
        <div id="rack-sheet" class="sheet-of-rack">
          <div class="rack-left">
            <Entry />
            <RackList />
          </div>
          <div class="rack-right">
            <WishesForm />
            <SetsView />
          </div>
        </div>
      )}
    </aside>
  );
}

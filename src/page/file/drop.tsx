/** The whole page takes a file that is dropped on it. */
import type { ComponentChildren, JSX } from 'preact';
import { useSignal } from '@preact/signals';
import { words } from '../words/index.js';
import { openFile, refusal } from './files.js';

export function DropTarget({ children }: { children: ComponentChildren }): JSX.Element {
  const over = useSignal(false);
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    over.value = false;
    const file = event.dataTransfer?.files[0];
    if (file) void openFile(file);
  };
  const drag = (event: DragEvent): void => {
    event.preventDefault();
    over.value = true;
  };
  return (
    <div
      class={over.value ? 'page over' : 'page'}
      onDrop={drop}
      onDragOver={drag}
      onDragLeave={() => (over.value = false)}
    >
      {refusal.value !== '' && (
        <p class="refusal" role="alert">
          {refusal.value}{' '}
          <button type="button" onClick={() => (refusal.value = '')}>
            {words.value.close}
          </button>
        </p>
      )}
      {children}
    </div>
  );
}

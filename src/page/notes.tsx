/** What is to be said about the spec, each beside the way to the box that it is about. */
import type { JSX } from 'preact';
import type { Message } from '../index.js';
import { openPart } from './parts.js';
import { sameNumber } from './state/head-keys.js';
import { steady } from './state/steady.js';
import { messages } from './state/store.js';
import { words } from './words/index.js';

const shown = steady(() => messages.value);

export function Notes(): JSX.Element {
  const { errors, warnings, goThere } = words.value.notes;
  return (
    <div class="notes" aria-live="polite">
      {shown.value.map((message) => (
        <p key={`${message.code} ${message.key}`} class={message.severity}>
          <strong>{message.severity === 'error' ? errors : warnings}</strong>{' '}
          {message.key !== '' && <code>{message.key}</code>} {message.text}{' '}
          <button type="button" onClick={() => goTo(message)}>
            {goThere}
          </button>
        </p>
      ))}
    </div>
  );
}

/** To the box on the drawing, to the one in the settings, or to the line in the text. */
function goTo({ key, line }: Message): void {
  const onDrawing = boxOf('drawing', key);
  if (onDrawing) return onDrawing.focus();
  openPart('settings');
  setTimeout(() => {
    const box = boxOf('panel', key);
    box?.closest('details')?.setAttribute('open', '');
    if (box) box.focus();
    else goToLine(line);
  }, 50);
}

/** What is said of both heads may be in the box of one, and the other way round. */
function boxOf(place: 'drawing' | 'panel', key: string): HTMLElement | undefined {
  const keys = sameNumber(key.split('.')).map((path) => path.join('.'));
  return keys.flatMap((each) => document.getElementById(`${place}-${each}`) ?? [])[0];
}

export function goToLine(line: number): void {
  openPart('text');
  setTimeout(() => {
    const editor = document.getElementById('spec-text') as HTMLTextAreaElement | null;
    if (!editor) return;
    const lines = editor.value.split('\n');
    const start = lines.slice(0, line - 1).join('\n').length + (line > 1 ? 1 : 0);
    editor.focus();
    editor.setSelectionRange(start, start + (lines[line - 1]?.length ?? 0));
  }, 50);
}

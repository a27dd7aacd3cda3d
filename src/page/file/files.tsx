/** Specs from files and to files. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { signal } from '@preact/signals';
import { fileName, openSpec, text } from '../state/store.js';
import { words } from '../words/index.js';
import { download } from './download.js';

/** Why the last file could not be opened. */
export const refusal = signal('');

/** A spec takes a few kilobytes; this is room for hundreds of staves. */
const mostBytes = 256 * 1024;

export async function openFile(file: File): Promise<void> {
  const { tooLarge, notText } = words.value.files;
  refusal.value = '';
  if (file.size > mostBytes) return refuse(`${file.name}: ${tooLarge}`);
  try {
    const bytes = await file.arrayBuffer();
    openSpec(file.name, new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    refuse(`${file.name}: ${notText}`);
  }
}

function refuse(why: string): void {
  refusal.value = why;
}

export function OpenButton(): JSX.Element {
  const input = useRef<HTMLInputElement>(null);
  const chosen = (): void => {
    const file = input.current?.files?.[0];
    if (file) void openFile(file);
    if (input.current) input.current.value = '';
  };
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        {words.value.bar.open}
      </button>
      <input
        ref={input}
        type="file"
        accept=".yaml,.yml,text/yaml"
        aria-label={words.value.bar.open}
        hidden
        onChange={chosen}
      />
    </>
  );
}

export function saveSpec(): void {
  const name = fileName.value.replace(/\.[^.]*$/, '').replace(/[^\p{L}\p{N}_-]+/gu, '-');
  download({ name: `${name === '' ? 'my-vessel' : name}.yaml`, content: text.value });
}

/** The button that hands out the files of one set, in one zip. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { download } from '../file/download.js';
import { zipOf } from '../file/zip.js';
import { drawOptions } from '../output/output-state.js';
import { language, wordings, words } from '../words/language.js';
import { filesOfSet } from './chosen.js';
import { found } from './choosing.js';

export function SetFilesButton({ number }: { number: number }): JSX.Element {
  const { rack } = words.value;
  const busy = useSignal(false);
  const refused = useSignal<readonly string[] | null>(null);
  const give = async (): Promise<void> => {
    if (!found.value) return;
    [busy.value, refused.value] = [true, null];
    // lets the browser show that it is at work
    await new Promise((resolve) => setTimeout(resolve, 30));
    const options = { ...drawOptions(), language: language.value, wordings: wordings.value };
    const files = await filesOfSet(found.value, number, options).finally(
      () => (busy.value = false),
    );
    if ('refused' in files) refused.value = files.refused.map(({ text }) => text);
    else download(zipOf(`set-${number}.zip`, files));
  };
  return (
    <>
      <button
        type="button"
        disabled={busy.value}
        aria-busy={busy.value}
        onClick={() => void give()}
      >
        {busy.value ? rack.makingFiles : rack.files}
      </button>
      {refused.value && (
        <p class="refusal" role="alert">
          {rack.noVessel} {refused.value.join(' ')}
        </p>
      )}
    </>
  );
}

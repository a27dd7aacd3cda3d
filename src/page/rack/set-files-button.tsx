/** The button that hands out the files of one set, in one zip. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { ActButton } from '../act-button.js';
import { download } from '../file/download.js';
import { answerTo } from '../helper/start-helper.js';
import { plainOptions } from '../output/output-state.js';
import { words } from '../words/language.js';
import { found } from './choosing.js';
import { setFilesAside, type SetFilesAnswer, type SetFilesQuestion } from './set-files-aside.js';

export function SetFilesButton({ number }: { number: number }): JSX.Element {
  const { rack } = words.value;
  const busy = useSignal(false);
  const refused = useSignal<readonly string[] | null>(null);
  const give = async (): Promise<void> => {
    if (!found.value) return;
    [busy.value, refused.value] = [true, null];
    const options = plainOptions();
    const question = { task: 'set files', chosen: found.value, number, options } as const;
    const answer = await answerTo<SetFilesAnswer, SetFilesQuestion>(
      question,
      setFilesAside,
    ).finally(() => (busy.value = false));
    if ('refused' in answer) refused.value = answer.refused;
    else download(answer.zip);
  };
  return (
    <>
      <ActButton off={busy.value} busy={busy.value} act={() => void give()}>
        {busy.value ? rack.makingFiles : rack.files}
      </ActButton>
      {refused.value && (
        <p class="refusal" role="alert">
          {rack.noVessel} {refused.value.join(' ')}
        </p>
      )}
    </>
  );
}

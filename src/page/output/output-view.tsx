/** Everything to take away: the pack, on which paper, and a printer that is off put right. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { ActButton } from '../act-button.js';
import {
  formats,
  letteringWays,
  paperNames,
  writeSpec,
  type Format,
  type OutFile,
} from '../../index.js';
import { Choice } from '../choice.js';
import { download } from '../file/download.js';
import { saveSpec } from '../file/files.js';
import { answerTo } from '../helper/start-helper.js';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import {
  acrossTyped,
  alongTyped,
  chooseLettering,
  choosePaper,
  jobSheetFile,
  letteringAs,
  paper,
  plainOptions,
  readSide,
  ready,
} from './output-state.js';
import { pack, type PackQuestion } from './pack-aside.js';
import { SizeBoxes } from './size-boxes.js';
import { TypedBox } from './typed-box.js';

export function OutputView(): JSX.Element {
  const { output } = words.value;
  return (
    <>
      <p class="caution">{output.caution}</p>
      <div class="fields">
        <Choice
          id="paper"
          label={output.paper}
          chosen={paper.value}
          names={paperNames}
          say={output.papers}
          choose={choosePaper}
        />
        <Choice
          id="lettering"
          label={output.lettering}
          chosen={letteringAs.value}
          names={letteringWays}
          say={(name) => output.letterings[name]}
          choose={chooseLettering}
        />
        <Side id="across" label={output.across} typed={acrossTyped} />
        <Side id="along" label={output.along} typed={alongTyped} />
      </div>
      <p>{output.printed}</p>
      <SizeBoxes />
      <PackButtons />
    </>
  );
}

function PackButtons(): JSX.Element {
  const { output } = words.value;
  const wanted = useSignal<readonly Format[]>(formats);
  const busy = useSignal(false);
  const toggle = (format: Format): void =>
    void (wanted.value = formats.filter(
      (each) => wanted.value.includes(each) !== (each === format),
    ));
  const give = async (): Promise<void> => {
    if (!vessel.value) return;
    busy.value = true;
    const options = { ...plainOptions(), formats: wanted.value };
    const question = { task: 'pack', spec: vessel.value.spec, options } as const;
    const zip = answerTo<OutFile, PackQuestion>(question, pack);
    download(await zip.finally(() => (busy.value = false)));
  };
  const unable = !vessel.value || busy.value || !ready.value || wanted.value.length === 0;
  return (
    <>
      <fieldset class="ticks">
        <legend>{output.formats}</legend>
        {formats.map((format) => (
          <label key={format}>
            <input
              type="checkbox"
              checked={wanted.value.includes(format)}
              onChange={() => toggle(format)}
            />
            {format.toUpperCase()} {output.use[format]}
          </label>
        ))}
      </fieldset>
      <div class="tools" aria-busy={busy.value}>
        <ActButton class="main" off={unable} act={() => void give()}>
          {busy.value ? output.packing : output.pack}
        </ActButton>
        <JobSheetButtons />
        <button type="button" onClick={saveSpec}>
          {output.spec}
        </button>
        <ActButton act={saveWhole} off={!vessel.value}>
          {output.wholeSpec}
        </ActButton>
      </div>
    </>
  );
}

function JobSheetButtons(): JSX.Element {
  const give = async (format: 'pdf' | 'html'): Promise<void> => {
    const file = await jobSheetFile(format);
    if (file) download(file);
  };
  return (
    <>
      {(['pdf', 'html'] as const).map((format) => (
        <button type="button" key={format} onClick={() => void give(format)}>
          {words.value.output.jobSheet(format.toUpperCase())}
        </button>
      ))}
    </>
  );
}

function saveWhole(): void {
  if (vessel.value) download({ name: 'spec.yaml', content: writeSpec(vessel.value.spec) });
}

interface SideProps {
  readonly id: string;
  readonly label: string;
  readonly typed: typeof acrossTyped;
}

function Side({ id, label, typed }: SideProps): JSX.Element {
  const wrong = readSide(typed.value) === null ? words.value.output.badSide : null;
  return <TypedBox {...{ id, label, typed, wrong }} usual="100" inputMode="decimal" />;
}

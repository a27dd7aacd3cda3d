/** Gives a new spec: to a file with the report on standard output, or itself there and the report beside it. */
import { resolve } from 'node:path';
import { planVessel, writeSpec, type Message, type Spec } from '../index.js';
import { exitCode, type ExitCode } from './exit-code.js';
import type { Io } from './io.js';
import { refuse } from './refuse.js';
import { messageLine, oneLine } from './say.js';
import { englishVoice, type Voice } from './voice.js';
import { writeWhole } from './write-whole.js';

export interface Giving {
  readonly out?: string;
  readonly replace?: true;
  readonly quiet?: true;
}

/** Written, if at all, as a whole; a spec that could not be read again is not written. */
export function giveSpec(
  spec: Spec,
  report: string,
  options: Giving,
  io: Io,
  voice = englishVoice,
): ExitCode {
  const { out, replace, quiet } = options;
  const text = writeSpec(spec);
  const { vessel, messages } = planVessel(text, out ?? 'stdout', voice.wordings);
  if (!vessel) return cannotBeBuilt(messages, io, voice);
  if (out === undefined) {
    io.out(text);
  } else {
    const refusal = writeWhole(
      [{ path: resolve(io.folder, out), content: text }],
      replace === true,
      voice.words.files,
    );
    if (refusal !== null) return refuse(refusal, io);
  }
  if (quiet) return exitCode.done;
  for (const message of messages) io.err(messageLine(message, voice.words));
  const told = out === undefined ? io.err : io.out;
  told(report);
  if (out !== undefined) io.out(oneLine(voice.words.give.wrote(out)));
  return exitCode.done;
}

/** What is wrong with a spec that was worked out, in words. */
export function whyNot(spec: Spec, io: Io, voice: Voice): 1 {
  return cannotBeBuilt(planVessel(writeSpec(spec), '', voice.wordings).messages, io, voice);
}

function cannotBeBuilt(messages: readonly Message[], io: Io, { words }: Voice): 1 {
  io.err(oneLine(words.give.cannotBeBuilt));
  const errors = messages.filter(({ severity }) => severity === 'error');
  for (const { key, text } of errors) io.err(oneLine(`  ${key === '' ? '' : `${key}: `}${text}`));
  io.err(oneLine(words.give.tryAgain));
  return exitCode.no;
}

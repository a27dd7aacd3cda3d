/** The first half of every command that takes specs: fetch, read and solve them, and say all that is wrong at once. */
import { planVessel, type Message, type Vessel } from '../index.js';
import type { Io } from './io.js';
import { messageLine, oneLine } from './say.js';
import { fetchSource } from './source.js';
import { englishVoice, type Voice } from './voice.js';

export interface Planned {
  readonly file: string;
  readonly text: string;
  readonly vessel: Vessel;
  readonly warnings: readonly Message[];
}

/** Null when any of the specs cannot be built; the errors of all are said by then. */
export async function planSpecs(
  names: readonly string[],
  io: Io,
  voice = englishVoice,
): Promise<Planned[] | null> {
  if (names.filter((name) => name === '-').length > 1) {
    io.err(oneLine(voice.words.files.stdinOnce));
    return null;
  }
  const planned: Planned[] = [];
  for (const name of names) {
    const plan = await planSpec(name, io, voice);
    if (plan) planned.push(plan);
  }
  return planned.length === names.length ? planned : null;
}

async function planSpec(name: string, io: Io, { words, wordings }: Voice): Promise<Planned | null> {
  const { file, text, refusal } = await fetchSource(name, io, words.files);
  if (text === null) {
    io.err(oneLine(`${file}: ${refusal}`));
    return null;
  }
  const { vessel, messages } = planVessel(text, file, wordings);
  const wrong = messages.filter(({ severity }) => severity === 'error');
  for (const message of wrong) io.err(messageLine(message, words));
  const warnings = messages.filter(({ severity }) => severity === 'warning');
  return vessel && { file, text, vessel, warnings };
}

export function sayWarnings(planned: readonly Planned[], io: Io, { words } = englishVoice): void {
  for (const warning of planned.flatMap(({ warnings }) => warnings))
    io.err(messageLine(warning, words));
}

/** `staveloft prove`: do the drawings of a folder close to the vessel of its spec? */
import { join, resolve } from 'node:path';
import type { Command } from 'commander';
import {
  proofWords,
  provePack,
  wordsIn,
  type ProofWords,
  type Vessel,
  type WholeProof,
} from '../index.js';
import { exitCode, type Answer } from './exit-code.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { addLanguage, type Speaking } from './language-option.js';
import { planSpecs } from './plans.js';
import { readFolder } from './prove-folder.js';
import { proveErrors, proveJson, proveText } from './prove-text.js';
import { refuse } from './refuse.js';
import { oneLine } from './say.js';
import { voiceOf } from './voice.js';
import type { CliWords } from './words.js';
import { writeWhole } from './write-whole.js';

interface Options extends Speaking {
  readonly json?: true;
  readonly picture?: string;
  readonly replace?: true;
  readonly quiet?: true;
}

const help = helpText(
  "FOLDER is what draw wrote. Every length that is judged is measured in its DXF files; what the vessel should be comes from its spec.yaml. The drawn staves are bent and set up in a ring by numbers: joints at every station, girths, end cuts, grooves, heads and hoops must fit, the vessel must hold what it should, contours must be closed, no line may be drawn twice, and every file must be in millimetres. Whatever the folder's page shows must be there. It proves the drawings, not the wood: measure the wood as the job sheet says.",
  examples(
    'staveloft prove my-cask',
    'staveloft prove my-cask --json > proof.json',
    'staveloft prove my-cask --picture my-cask-joint.svg',
  ),
  'Exit codes: 0 proved; 1 something is not as it should be; 2 no such folder, or its spec.yaml cannot be built.',
);

export function addProve(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('prove')
    .description('Prove that the drawings of a folder close to the vessel of its spec.')
    .argument('<folder>', 'a folder that draw wrote, with its spec.yaml and DXF files')
    .option('--json', 'as JSON, for programs')
    .option('--picture <file>', 'also draw the gap along the worst joint, as SVG')
    .option('--replace', 'write over a picture that is there already')
    .addHelpText('after', help)
    .action(async (folder: string, _options, command: Command) => {
      answer(await prove(folder, command.optsWithGlobals<Options>(), io));
    });
  addLanguage(command);
}

async function prove(folder: string, options: Options, io: Io): Promise<0 | 1 | 2> {
  const voice = await voiceOf(options.language);
  const words = await wordsIn(proofWords, options.language);
  const files = readFolder(resolve(io.folder, folder), voice.words);
  if (typeof files === 'string') return refuse(`${folder}: ${files}`, io);
  if (!files.some(({ name }) => name === 'spec.yaml'))
    return refuse(voice.words.prove.noSpec(folder), io);
  const planned = (await planSpecs([join(folder, 'spec.yaml')], io, voice))?.[0];
  if (!planned) return exitCode.badInput;
  const { vessel } = planned;
  const proof = provePack(vessel, files);
  const refusal = await drawPicture(proof, vessel, { ...options, words, say: voice.words }, io);
  if (refusal !== null) return refuse(refusal, io);
  say(proof, folder, vessel.spec.title, { ...options, words }, io);
  return proof.passed ? exitCode.done : exitCode.no;
}

/** Null when it is drawn, not asked for, or missing for a reason that the proof gives; otherwise why it is not. */
async function drawPicture(
  proof: WholeProof,
  vessel: Vessel,
  { picture, replace, words, say }: Options & { readonly words: ProofWords; say: CliWords },
  io: Io,
): Promise<string | null> {
  if (picture === undefined) return null;
  const { gapDrawing } = await import('./prove-picture.js');
  const content = gapDrawing(proof, vessel, words);
  if (content !== null)
    return writeWhole(
      [{ path: resolve(io.folder, picture), content }],
      replace === true,
      say.files,
    );
  if (proof.passed) return say.prove.noStaves(picture);
  io.err(oneLine(say.prove.noRing(picture)));
  return null;
}

function say(
  proof: WholeProof,
  folder: string,
  title: string,
  { json, quiet, words }: Options & { readonly words: ProofWords },
  io: Io,
): void {
  if (json) io.out(proveJson(proof));
  else if (quiet) io.err(proveErrors(proof, folder, words));
  else io.out(proveText(proof, folder, title, words));
}

/** The words that a run needs, in the language that it was asked for. */
import { specWordings, wordsIn, type Language, type Wordings } from '../index.js';
import { cliWords, type CliWords } from './words.js';

export interface Voice {
  readonly words: CliWords;
  /** of what is wrong or doubtful with a spec */
  readonly wordings: Wordings;
}

export const englishVoice: Voice = { words: cliWords.en, wordings: specWordings.en };

export async function voiceOf(language: Language): Promise<Voice> {
  return {
    words: await wordsIn(cliWords, language),
    wordings: await wordsIn(specWordings, language),
  };
}

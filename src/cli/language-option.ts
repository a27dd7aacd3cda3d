/** The option that says in which language a command answers. The environment has no say: the same line gives the same. */
import type { Command } from 'commander';
import { languages, type Language } from '../index.js';
import { oneOf } from './option-values.js';

export interface Speaking {
  readonly language: Language;
}

export function addLanguage(command: Command): Command {
  const about = `of what is said and drawn: ${languages.join(', ')}`;
  return command.option('--language <code>', about, oneOf(languages), 'en');
}

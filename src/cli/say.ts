/** Messages as lines of text: `file:line:column: key: text`, the form that editors jump to. */
import type { Message } from '../index.js';
import type { CliWords } from './words.js';

export function messageLine(message: Message, words: CliWords): string {
  const { severity, file, line, column, key, text } = message;
  const warning = severity === 'warning' ? [words.warning] : [];
  const keys = key === '' ? [] : [key];
  return oneLine([`${file}:${line}:${column}`, ...warning, ...keys, text].join(': '));
}

/** One line, with nothing in it that a terminal would act on: names and texts come from files. */
export function oneLine(text: string): string {
  return `${text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '\uFFFD')}\n`;
}

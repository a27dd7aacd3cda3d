/** Messages as lines of text: `file:line:column: key: text`, the form that editors jump to. */
import type { Message } from '../index.js';

export function messageLine({ severity, file, line, column, key, text }: Message): string {
  const warning = severity === 'warning' ? ['warning'] : [];
  const keys = key === '' ? [] : [key];
  return oneLine([`${file}:${line}:${column}`, ...warning, ...keys, text].join(': '));
}

/** One line, with nothing in it that a terminal would act on: names and texts come from files. */
export function oneLine(text: string): string {
  return `${text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '\uFFFD')}\n`;
}

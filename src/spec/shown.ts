/** Shows in a message what a file holds, shortened and with nothing in it that a terminal would act on. */

const longest = 60;

export function shown(raw: unknown): string {
  if (raw === null || raw === undefined) return 'nothing';
  if (Array.isArray(raw)) return `a list of ${raw.length}`;
  if (typeof raw === 'object') return 'a group of keys';
  if (typeof raw !== 'string') return String(raw);
  const cut = [...raw.slice(0, 2 * longest)].slice(0, longest).join('');
  return `"${visible(cut)}${cut.length < raw.length ? '...' : ''}"`;
}

/** Every control or formatting character as its code: `\u001b`. */
export function visible(text: string): string {
  return text.replace(/[\p{C}\p{Zl}\p{Zp}]/gu, (character) => {
    if (character === '\n') return '\\n';
    return `\\u${character.codePointAt(0)!.toString(16).padStart(4, '0')}`;
  });
}

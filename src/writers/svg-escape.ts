/** The one place where text becomes part of an SVG file. */
import { printable } from '../drawing/lettering.js';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text for an element or a quoted attribute: no markup, and no character that XML 1.0 forbids. */
export function escapeXml(text: string): string {
  return printable(text).replaceAll(/[&<>"']/g, (character) => entities[character]!);
}

/** Text that stands for itself. */
const plain = /^[ !#-%(-;=?-~]*$/;

/**
 * The same in ASCII, other characters as references: large files of it are made and written in half the time. Put together
 * character by character, because engines go on keeping a part of a text beyond Latin-1 in two bytes a character, and
 * with it the whole file.
 */
export function asciiXml(text: string): string {
  if (plain.test(text)) return text.split('').join('');
  return Array.from(printable(text), asciiCharacter).join('');
}

function asciiCharacter(character: string): string {
  const known = entities[character];
  if (known !== undefined) return known;
  const code = character.codePointAt(0)!;
  return code >= 0x20 && code <= 0x7e ? character : `&#${code};`;
}

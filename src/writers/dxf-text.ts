/** Text for a DXF: one line of 7-bit characters that can be nothing but text. */
import { printable } from '../drawing/lettering.js';

/** a value of R2000 holds 2049 bytes (DXF reference, group code value types) */
const longest = 2049;

const ascii = /^[ -~]*$/;

/** Nothing in it to change; no blank at its ends. */
const plainText = /^[!-$&-[\]_-~](?:[ -$&-[\]_-~]*[!-$&-[\]_-~])?$/;

/**
 * Characters beyond 7 bits become `\U+XXXX`. `%%` starts a control code, `\` an escape and `^` a control
 * character in what a program reads or shows, once or again after saving: two percent signs are parted by a
 * space, a backslash becomes a slash, and a caret is followed by a space, which the format itself prescribes
 * for a caret that is meant. Text too long for a value is cut.
 */
export function dxfText(text: string): string {
  if (text.length <= longest && plainText.test(text)) return text;
  const plain = printable(text)
    .replaceAll('\\', '/')
    .replaceAll('^', '^ ')
    .replaceAll(/%(?=%)/g, '% ')
    .trim();
  if (plain.length <= longest && ascii.test(plain)) return plain;
  let encoded = '';
  for (const character of plain) {
    const next = encodedCharacter(character);
    if (encoded.length + next.length > longest) break;
    encoded += next;
  }
  return encoded;
}

function encodedCharacter(character: string): string {
  const code = character.codePointAt(0)!;
  if (code >= 0x20 && code <= 0x7e) return character;
  // the escape has room for four digits only
  return code > 0xffff ? '?' : `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
}

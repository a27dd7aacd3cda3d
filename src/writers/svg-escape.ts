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

/** The same in ASCII, other characters as references: large files of it are made and written in half the time. */
export function asciiXml(text: string): string {
  return escapeXml(text).replaceAll(/[^ -~]/gu, (character) => `&#${character.codePointAt(0)};`);
}

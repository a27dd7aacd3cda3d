/** Fetches the text of a spec from a file or standard input, or says why that cannot be done. */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Io } from './io.js';
import { reasonOf } from './reason.js';
import type { FileWords } from './words.js';

/** A spec takes a few kilobytes; this is room for hundreds of staves. */
const mostOfSpec = 256 * 1024;
/** Room for some hundred thousand staves. */
export const mostOfRackList = 8 * 1024 * 1024;

export interface Source {
  /** as messages name it */
  readonly file: string;
  /** null when it cannot be used: `refusal` then says why */
  readonly text: string | null;
  readonly refusal: string;
}

/** `name` is a path, or `-` for standard input. */
export async function fetchSource(
  name: string,
  io: Io,
  words: FileWords,
  most = mostOfSpec,
): Promise<Source> {
  const file = name === '-' ? 'stdin' : name;
  try {
    const bytes =
      name === '-' ? await io.stdin(most + 1) : readStart(resolve(io.folder, name), words, most);
    return { file, ...decoded(bytes, words, most) };
  } catch (error) {
    return { file, text: null, refusal: words.cannotRead(reasonOf(error, words)) };
  }
}

/** One byte more than is allowed is enough to know; so a device without an end is no trap. */
function readStart(path: string, { isFolder }: FileWords, most: number): Uint8Array {
  const handle = openSync(path, 'r');
  try {
    if (fstatSync(handle).isDirectory()) throw new Error(isFolder);
    const buffer = Buffer.alloc(most + 1);
    let size = 0;
    for (let got = -1; got !== 0 && size < buffer.length; size += got)
      got = readSync(handle, buffer, size, buffer.length - size, null);
    return buffer.subarray(0, size);
  } finally {
    closeSync(handle);
  }
}

function decoded(
  bytes: Uint8Array,
  words: FileWords,
  most: number,
): { text: string | null; refusal: string } {
  const refused = (refusal: string): { text: null; refusal: string } => ({ text: null, refusal });
  if (bytes.length > most) return refused(words.tooLarge(most / 1024));
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return refused(words.utf16);
  if (bytes.includes(0)) return refused(words.notText);
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), refusal: '' };
  } catch {
    return refused(words.notUtf8);
  }
}

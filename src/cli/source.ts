/** Fetches the text of a spec from a file or standard input, or says why that cannot be done. */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Io } from './io.js';
import { reasonOf } from './reason.js';

/** A spec takes a few kilobytes; this is room for hundreds of staves. */
const mostBytes = 256 * 1024;

export interface Source {
  /** as messages name it */
  readonly file: string;
  /** null when it cannot be used: `refusal` then says why */
  readonly text: string | null;
  readonly refusal: string;
}

/** `name` is a path, or `-` for standard input. */
export async function fetchSource(name: string, io: Io): Promise<Source> {
  const file = name === '-' ? 'stdin' : name;
  try {
    const bytes =
      name === '-' ? await io.stdin(mostBytes + 1) : readStart(resolve(io.folder, name));
    return { file, ...decoded(bytes) };
  } catch (error) {
    return { file, text: null, refusal: `cannot be read: ${reasonOf(error)}` };
  }
}

/** One byte more than is allowed is enough to know; so a device without an end is no trap. */
function readStart(path: string): Uint8Array {
  const handle = openSync(path, 'r');
  try {
    if (fstatSync(handle).isDirectory()) throw new Error('it is a folder, not a file');
    const buffer = Buffer.alloc(mostBytes + 1);
    let size = 0;
    for (let got = -1; got !== 0 && size < buffer.length; size += got)
      got = readSync(handle, buffer, size, buffer.length - size, null);
    return buffer.subarray(0, size);
  } finally {
    closeSync(handle);
  }
}

function decoded(bytes: Uint8Array): { text: string | null; refusal: string } {
  const refused = (refusal: string): { text: null; refusal: string } => ({ text: null, refusal });
  if (bytes.length > mostBytes)
    return refused(`is too large: a spec has at most ${mostBytes / 1024} kB`);
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return refused('is written in UTF-16: save it as UTF-8');
  if (bytes.includes(0)) return refused('is not a text file: a spec is YAML text');
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), refusal: '' };
  } catch {
    return refused('is not a text file in UTF-8: a spec is YAML text, saved as UTF-8');
  }
}

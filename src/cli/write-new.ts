/** Writes a file that isn't there yet. */
import { closeSync, openSync, writeFileSync, writeSync } from 'node:fs';

/** Throws where there is something of that name, and whatever the disk answers. */
export function writeNew(path: string, content: string | Uint8Array): void {
  if (typeof content === 'string' && isAscii(content)) writeAscii(path, content);
  else writeFileSync(path, content, { flag: 'wx' });
}

/** Everything else takes more than a byte in UTF-8. */
const isAscii = (text: string): boolean => Buffer.byteLength(text) === text.length;

/**
 * Drawings are nothing but ASCII, and come to hundreds of kilobytes each: they go through one piece of memory, a share of them at a
 * time. A buffer for every file would cost as much as writing it.
 */
const memory = Buffer.allocUnsafeSlow(1 << 16);

function writeAscii(path: string, text: string): void {
  const file = openSync(path, 'wx');
  try {
    for (let from = 0; from < text.length; from += memory.length) {
      const length = memory.write(text.slice(from, from + memory.length), 'latin1');
      for (let done = 0; done < length;) done += writeSync(file, memory, done, length - done);
    }
  } finally {
    closeSync(file);
  }
}

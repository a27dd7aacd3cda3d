/** Why a file could not be read or written, in words. */
import type { FileWords } from './words.js';

export function reasonOf(error: unknown, { reasons }: FileWords): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return (code && reasons[code]) ?? code ?? message;
}

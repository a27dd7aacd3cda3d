/** Gives a finished file its name in one step, in a way that can be taken back. */
import { linkSync, lstatSync, renameSync, unlinkSync } from 'node:fs';

/** A step that is done, and may yet be taken back or kept for good. */
export interface Undo {
  readonly keep: () => void;
  readonly takeBack: () => void;
}

export function putInPlace(temporary: string, path: string, replace: boolean): Undo {
  if (replace && lstatSync(path, { throwIfNoEntry: false })) return exchange(temporary, path);
  putNew(temporary, path);
  return { keep: () => {}, takeBack: () => unlinkSync(path) };
}

function exchange(temporary: string, path: string): Undo {
  const former = `${temporary}.former`;
  renameSync(path, former);
  const takeBack = (): void => renameSync(former, path);
  try {
    renameSync(temporary, path);
  } catch (error) {
    takeBack();
    throw error;
  }
  return { keep: () => unlinkSync(former), takeBack };
}

/** What `link` answers on disks that know no links, such as memory sticks. */
const noLinks = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK', 'EINVAL']);

/** A link never takes the place of a file that somebody else has put there meanwhile; a rename would. */
function putNew(temporary: string, path: string): void {
  try {
    linkSync(temporary, path);
  } catch (error) {
    if (!noLinks.has((error as NodeJS.ErrnoException).code ?? '')) throw error;
    renameSync(temporary, path);
    return;
  }
  unlinkSync(temporary);
}

/** Why a file could not be read or written, in words. */

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'a part of its path is a file, not a folder',
  EISDIR: 'it is a folder, not a file',
  EACCES: 'permission is denied',
  EPERM: 'permission is denied',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the quota of the disk is used up',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead in a circle',
  EEXIST: 'a file of that name is in the way',
  EBUSY: 'another program is using it',
};

export function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return (code && reasons[code]) ?? code ?? message;
}

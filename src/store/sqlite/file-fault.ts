/** The file system's errors as messages that a keeper can act on. */
import { StoreFault } from '../store.ts';

const advice: Record<string, [found: string, expected: string]> = {
  EACCES: ['a folder or file that this user may not write', 'one that this user may read and write'],
  EPERM: ['a folder or file that this user may not write', 'one that this user may read and write'],
  EROFS: ['a disk that is read-only', 'a disk that can be written'],
  ENOSPC: ['a full disk; nothing was written', 'some free space'],
  EDQUOT: ['a full quota; nothing was written', 'some free space'],
  ENOTDIR: ['a file where a folder should be', 'the path of a folder'],
  EEXIST: ['a file where a folder should be', 'the path of a folder'],
  EISDIR: ['a folder where a file should be', 'the path of a file'],
  ENOENT: ['no such file or folder', 'a path that exists'],
  EIO: ['a disk that fails to read or write', 'a healthy disk: check the cable and the disk'],
};

/** The fault that a system error means, or null for an error of another kind. */
export function fileFault(error: unknown, where: string): StoreFault | null {
  const code = (error as { code?: unknown } | null)?.code;
  const known = typeof code === 'string' && Object.hasOwn(advice, code) ? advice[code] : undefined;
  return known ? new StoreFault({ where, found: known[0], expected: known[1] }, error) : null;
}

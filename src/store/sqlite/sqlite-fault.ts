/** SQLite's error codes as messages that a keeper can act on. */
import { StoreFault } from '../store.ts';

const advice: [code: RegExp, found: string, expected: string][] = [
  [
    /^SQLITE_(BUSY|LOCKED)/,
    'a logbook that another program keeps locked',
    'one program writing at a time: close the other, or try again',
  ],
  [/^SQLITE_FULL/, 'a full disk; nothing was written', 'some free space'],
  [/^SQLITE_READONLY|^SQLITE_PERM/, 'a logbook that may not be written', 'a folder and file that this user may write'],
  [
    /^SQLITE_CANTOPEN|^SQLITE_AUTH/,
    'a file that cannot be opened',
    'a folder that exists and that this user may read and write',
  ],
  [/^SQLITE_CORRUPT|^SQLITE_NOTADB/, 'a damaged logbook', 'a whole one: run doctor, which saves every readable entry'],
  [
    /^SQLITE_IOERR/,
    'a disk that fails to read or write',
    'a healthy disk with free space: check the cable, the disk and its space',
  ],
];

/** The fault that an error of the driver means; an error of another kind is returned as it is. */
export function sqliteFault(error: unknown, file: string): unknown {
  if (error instanceof StoreFault || !isCoded(error)) return error;
  const known = advice.find(([code]) => code.test(error.code));
  if (!known)
    return new StoreFault(
      { where: file, found: `${error.code}: ${error.message}`, expected: 'a working logbook file' },
      error,
    );
  return new StoreFault({ where: file, found: `${known[1]} (${error.code})`, expected: known[2] }, error);
}

function isCoded(error: unknown): error is Error & { code: string } {
  return error instanceof Error && typeof (error as { code?: unknown }).code === 'string';
}

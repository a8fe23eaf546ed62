/** Putting a copy in the place of a household's logbook, without losing the one that is there. */
import { existsSync, renameSync } from 'node:fs';
import { join, resolve } from 'node:path';
import Database from 'libsql';
import { StoreFault } from '../store.ts';
import { copyDatabase } from './backup.ts';
import { examineLogbook } from './doctor.ts';
import { fileFault } from './file-fault.ts';
import { logbookFile } from './sqlite-file.ts';

export interface Restored {
  entries: number;
  /** Where the logbook that was there before lies now, or null when there was none. */
  setAside: string | null;
}

/**
 * Restores `copy` into `folder`. A damaged copy is refused before anything is touched. The marks of
 * syncing are left out: devices and the restored logbook compare everything anew. Throws StoreFault.
 */
export function restoreLogbook(copy: string, folder: string): Restored {
  const { damage, readable } = examineLogbook(resolve(copy));
  const [first] = damage;
  if (first) throw new StoreFault({ ...first, expected: `${first.expected}; doctor can save its readable entries` });
  const file = logbookFile(folder);
  const fresh = `${file}.restored`;
  copyDatabase(resolve(copy), fresh, (db) => db.exec("DELETE FROM marks WHERE name LIKE 'sync.%'"));
  try {
    const setAside = existsSync(file) ? asideName(folder) : null;
    if (setAside) moveAside(file, setAside);
    renameSync(fresh, file);
    return { entries: readable, setAside };
  } catch (error) {
    throw fileFault(error, file) ?? error;
  }
}

/** Its write-ahead log is folded in first; a program that has the file open would not notice the change. */
function moveAside(file: string, target: string): void {
  const db = new Database(file);
  try {
    db.exec('PRAGMA busy_timeout = 1000; PRAGMA locking_mode = EXCLUSIVE; BEGIN IMMEDIATE; COMMIT');
  } catch (error) {
    const expected = 'no other program at work on it: stop the server, then restore';
    throw new StoreFault({ where: file, found: 'a logbook in use', expected }, error);
  } finally {
    db.close();
  }
  renameSync(file, target);
  for (const part of ['-wal', '-shm']) if (existsSync(file + part)) renameSync(file + part, target + part);
}

function asideName(folder: string): string {
  for (let n = 1; ; n++) {
    const name = join(resolve(folder), `logbook-set-aside-${n}.sqlite`);
    if (!existsSync(name)) return name;
  }
}

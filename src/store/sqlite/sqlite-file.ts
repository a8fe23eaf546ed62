/** Opening the household's file so that an acknowledged write survives a cut of power. */
import { closeSync, fsyncSync, mkdirSync, openSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import Database from 'libsql';
import type { EntrySource } from '../receipts.ts';
import { fileFault } from './file-fault.ts';
import { migrate } from './migrations.ts';
import { sqliteFault } from './sqlite-fault.ts';

export const logbookFileName = 'logbook.sqlite';

export interface SqliteOptions {
  /** How long a writer waits for another process's write, ms; 5000 when left out. */
  busyMs?: number;
  /** Who sends the entry of this id; kept beside it in the same transaction. */
  sourceOf?: (id: string) => EntrySource | undefined;
}

/** The path of the logbook in a household's folder. */
export function logbookFile(folder: string): string {
  return join(resolve(folder), logbookFileName);
}

/** Opens the folder's logbook, made when missing, at the newest format. Throws StoreFault. */
export function openLogbookFile(folder: string, { busyMs = 5000 }: SqliteOptions = {}): Database.Database {
  const file = logbookFile(folder);
  let db: Database.Database | null = null;
  try {
    makeFolder(dirname(file));
    db = new Database(file);
    db.exec(`PRAGMA busy_timeout = ${Math.floor(busyMs)}`);
    // Write-ahead logging lets others read while one writes; FULL has every commit reach the disk.
    db.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;');
    migrate(db, file);
    return db;
  } catch (error) {
    db?.close();
    throw fileFault(error, dirname(file)) ?? sqliteFault(error, file);
  }
}

/** The folder's own name must survive a cut of power too, hence the sync of its parent. */
function makeFolder(folder: string): void {
  if (mkdirSync(folder, { recursive: true }) === undefined) return;
  const parent = openSync(dirname(folder), 'r');
  try {
    fsyncSync(parent);
  } finally {
    closeSync(parent);
  }
}

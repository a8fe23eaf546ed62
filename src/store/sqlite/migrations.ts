/** The tables, in numbered steps: step n takes a file from version n - 1 to n. Steps never change. */
import type Database from 'libsql';
import { StoreFault } from '../store.ts';

const steps: string[] = [
  // 1: entries as their canonical text, with a checksum that finds damage; remarks of this device.
  `CREATE TABLE entries (
     cursor INTEGER PRIMARY KEY AUTOINCREMENT,
     id TEXT NOT NULL UNIQUE,
     text TEXT NOT NULL,
     crc32 INTEGER NOT NULL
   ) STRICT;
   CREATE TABLE marks (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;`,
  // 2: who sent an entry, and from where, when it came in by a server.
  `CREATE TABLE receipts (
     cursor INTEGER PRIMARY KEY,
     person TEXT NOT NULL,
     address TEXT NOT NULL,
     received_at TEXT NOT NULL
   ) STRICT;`,
];

/** Marks the file as a logbook of this project: "FLYL" in ASCII. */
const applicationId = 0x464c594c;

/** Brings the file to the newest version, each step whole or not at all. */
export function migrate(db: Database.Database, file: string): void {
  const version = pragmaNumber(db, 'user_version');
  const id = pragmaNumber(db, 'application_id');
  if (id !== applicationId && !(id === 0 && version === 0 && isEmpty(db))) {
    throw new StoreFault({ where: file, found: 'a database of something else', expected: 'a logbook, or no file' });
  }
  if (version > steps.length) {
    const found = `a logbook of format ${version}`;
    throw new StoreFault({ where: file, found, expected: `format ${steps.length} or older: use a newer version` });
  }
  if (version < steps.length) climb(db);
}

function climb(db: Database.Database): void {
  db.exec('BEGIN IMMEDIATE');
  try {
    // Another process may have climbed while this one waited for the lock.
    for (let n = pragmaNumber(db, 'user_version'); n < steps.length; n++) {
      db.exec(`${steps[n]}; PRAGMA user_version = ${n + 1}; PRAGMA application_id = ${applicationId};`);
    }
    db.exec('COMMIT');
  } catch (error) {
    if (db.inTransaction) db.exec('ROLLBACK');
    throw error;
  }
}

function isEmpty(db: Database.Database): boolean {
  return (db.prepare('SELECT count(*) AS n FROM sqlite_schema').get() as { n: number }).n === 0;
}

export function pragmaNumber(db: Database.Database, name: string): number {
  return Number(Object.values(db.prepare(`PRAGMA ${name}`).get() as object)[0]);
}

/** Copies of a household's logbook: consistent while others write, never half a file, never overwritten. */
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import Database from 'libsql';
import { StoreFault } from '../store.ts';
import { fileFault } from './file-fault.ts';
import { keptCopies, type KeptCopies, keepByDefault } from './kept-copies.ts';
import { sqliteFault } from './sqlite-fault.ts';
import { logbookFile } from './sqlite-file.ts';

/** The folder of automatic copies within a household's folder. */
export function copiesFolder(folder: string): string {
  return join(resolve(folder), 'copies');
}

/** Copies the folder's logbook to the file `target`, which must not exist. Throws StoreFault. */
export function backupLogbook(folder: string, target: string): void {
  const file = logbookFile(folder);
  if (!existsSync(file)) throw new StoreFault({ where: file, found: 'no logbook', expected: "a household's folder" });
  copyDatabase(file, resolve(target));
}

/**
 * The day's automatic copy, made when there is none yet; older copies are thinned out. Returns the
 * copy's path, or null when there is no logbook to copy.
 */
export function dailyBackup(folder: string, day: string, keep: KeptCopies = keepByDefault): string | null {
  const file = logbookFile(folder);
  if (!existsSync(file)) return null;
  const copies = copiesFolder(folder);
  const target = join(copies, copyName(day));
  if (!existsSync(target)) copyDatabase(file, target);
  const days = readdirSync(copies).flatMap((name) => copyDay(name) ?? []);
  const kept = new Set([...keptCopies(days, keep), day]);
  for (const old of days) if (!kept.has(old)) rmSync(join(copies, copyName(old)));
  return target;
}

function copyName(day: string): string {
  return `logbook-${day}.sqlite`;
}

function copyDay(name: string): string | null {
  return /^logbook-(\d{4}-\d{2}-\d{2})\.sqlite$/.exec(name)?.[1] ?? null;
}

/** By way of an unfinished file beside the target, so that a target is always whole. */
export function copyDatabase(source: string, target: string, change: (db: Database.Database) => void = () => {}): void {
  if (existsSync(target)) {
    throw new StoreFault({ where: target, found: 'a file that is there already', expected: 'a new file name' });
  }
  const unfinished = join(dirname(target), `.${basename(target)}.unfinished`);
  try {
    mkdirSync(dirname(target), { recursive: true });
    rmSync(unfinished, { force: true });
    vacuumInto(source, unfinished);
    changed(unfinished, change);
    syncFile(unfinished);
    renameSync(unfinished, target);
    syncFile(dirname(target));
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw fileFault(error, target) ?? sqliteFault(error, source);
  }
}

/** Copies what is committed at this moment, whatever others do meanwhile. */
function vacuumInto(source: string, target: string): void {
  const db = new Database(source);
  try {
    db.exec('PRAGMA busy_timeout = 5000');
    // Not prepared: a prepared statement would keep the connection open for some while.
    db.exec(`VACUUM INTO '${target.replaceAll("'", "''")}'`);
  } finally {
    db.close();
  }
}

function changed(file: string, change: (db: Database.Database) => void): void {
  const db = new Database(file);
  try {
    change(db);
  } finally {
    db.close();
  }
}

function syncFile(path: string): void {
  const handle = openSync(path, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Finds and names damage in a logbook's file, and saves every entry that can still be read. */
import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import type { Problem } from '../../foundation/index.ts';
import { canonicalText, checkEntry, type Entry } from '../../logbook/index.ts';
import { StoreFault } from '../store.ts';
import { carveEntries } from './carve-entries.ts';
import { crc32 } from './crc32.ts';
import { fileFault } from './file-fault.ts';
import { pragmaNumber } from './migrations.ts';
import { logbookFile } from './sqlite-file.ts';
import { openSqliteStore } from './sqlite-store.ts';

export interface Examination {
  file: string;
  /** Different entries that were read whole. */
  readable: number;
  /** Cursors that were given out but whose entry cannot be read; 0 when the damage hides how many. */
  lost: number;
  damage: Problem[];
}

/** Examines the file (a logbook or a copy of one) without changing it; hands each readable entry on. */
export function examineLogbook(file: string, onEntry: (entry: Entry) => void = () => {}): Examination {
  if (!existsSync(file)) throw new StoreFault({ where: file, found: 'no such file', expected: 'a logbook' });
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-doctor-'));
  try {
    return new Examiner(file, copyAtRest(file, folder), onEntry).examine();
  } catch (error) {
    throw fileFault(error, folder) ?? error;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Examines the file and puts every readable entry into a new logbook in `folder`, which must hold none. */
export async function salvageLogbook(file: string, folder: string): Promise<Examination> {
  const target = logbookFile(folder);
  if (existsSync(target)) {
    throw new StoreFault({ where: target, found: 'a logbook', expected: 'a folder without one' });
  }
  const entries: Entry[] = [];
  const examination = examineLogbook(file, (entry) => entries.push(entry));
  const store = openSqliteStore(folder);
  try {
    for (let from = 0; from < entries.length; from += 5000) await store.append(entries.slice(from, from + 5000));
  } finally {
    await store.close();
  }
  return examination;
}

/** A copy to work on, taken while nobody writes; the write-ahead log comes along. */
function copyAtRest(file: string, folder: string): string {
  const copy = join(folder, 'copy.sqlite');
  const release = holdWriters(file);
  try {
    copyFileSync(file, copy);
    if (existsSync(`${file}-wal`)) copyFileSync(`${file}-wal`, `${copy}-wal`);
  } finally {
    release();
  }
  return copy;
}

/** Keeps other processes from writing meanwhile; a file too damaged to be locked has no writers either. */
function holdWriters(file: string): () => void {
  let db: Database.Database | null = null;
  try {
    db = new Database(file);
    db.exec('PRAGMA busy_timeout = 5000; BEGIN IMMEDIATE');
  } catch {
    db?.close();
    return () => {};
  }
  const held = db;
  return () => held.close();
}

class Examiner {
  private readonly damage: Problem[] = [];
  private readonly seen = new Set<string>();
  private readonly file: string;
  private readonly copy: string;
  private readonly onEntry: (entry: Entry) => void;

  constructor(file: string, copy: string, onEntry: (entry: Entry) => void) {
    this.file = file;
    this.copy = copy;
    this.onEntry = onEntry;
  }

  examine(): Examination {
    // Before SQLite opens the copy: opening folds a write-ahead log into the file.
    const raw = [this.copy, `${this.copy}-wal`].filter((path) => existsSync(path)).map((path) => keepRaw(path));
    let lost = 0;
    let db: Database.Database | null = null;
    try {
      db = new Database(this.copy);
      this.checkStructure(db);
      lost = this.readRows(db);
    } catch (error) {
      this.found('', messageOf(error), 'a SQLite file that can be opened and read');
    } finally {
      closeQuietly(db);
    }
    if (this.damage.length > 0) lost = Math.max(0, lost - this.carve(raw));
    return { file: this.file, readable: this.seen.size, lost, damage: this.damage };
  }

  private checkStructure(db: Database.Database): void {
    if (pragmaNumber(db, 'user_version') === 0) {
      this.found('', 'no format number', "a logbook's file");
    }
    try {
      for (const row of db.prepare('PRAGMA integrity_check(20)').all() as { integrity_check: string }[]) {
        if (row.integrity_check !== 'ok') this.found('structure', row.integrity_check, 'a whole file');
      }
    } catch (error) {
      this.found('structure', messageOf(error), 'a whole file');
    }
  }

  /** Reads row by row, each by its own cursor, so that one bad page hides only its own. Returns how many fail. */
  private readRows(db: Database.Database): number {
    const byCursor = db.prepare('SELECT id, text, crc32 FROM entries WHERE cursor = ?');
    const last = lastGiven(db);
    let lost = 0;
    for (let cursor = 1; cursor <= last; cursor++) {
      const read = attempted(() => byCursor.get(cursor) as Row | undefined);
      if (read.ok && read.value !== undefined && this.takeRow(read.value, cursor)) continue;
      lost++;
      // Entries are never deleted, so a cursor that was given out has one.
      if (!read.ok) this.found(`entry at cursor ${cursor}`, read.message, 'a readable row');
      else if (read.value === undefined) this.found(`entry at cursor ${cursor}`, 'nothing', 'a row');
    }
    return lost;
  }

  private takeRow(row: Row, cursor: number): boolean {
    const where = `entry ${row.id} at cursor ${cursor}`;
    if (typeof row.text !== 'string' || crc32(row.text) !== row.crc32) {
      this.found(where, 'a text that is not the one written', 'the text whose checksum stands beside it');
      return false;
    }
    const checked = attempted(() => checkEntry(JSON.parse(row.text), where));
    if (!checked.ok || !checked.value.ok || checked.value.value.id !== row.id) {
      this.found(where, 'no entry of this format', 'an entry whose id is the one beside it');
      return false;
    }
    this.take(checked.value.value);
    return true;
  }

  private carve(raw: readonly string[]): number {
    const before = this.seen.size;
    for (const path of raw) for (const entry of carveEntries(path)) this.take(entry);
    return this.seen.size - before;
  }

  private take(entry: Entry): void {
    const text = canonicalText(entry);
    if (this.seen.has(text)) return;
    this.seen.add(text);
    this.onEntry(entry);
  }

  /** Names at most 50 places: a torn file would name thousands. */
  private found(where: string, found: string, expected: string): void {
    if (this.damage.length < 50)
      this.damage.push({ where: where ? `${this.file}, ${where}` : this.file, found, expected });
  }
}

interface Row {
  id: string;
  text: string;
  crc32: number;
}

/** The highest cursor ever given, from whichever of two places can be read. */
function lastGiven(db: Database.Database): number {
  const questions = [
    "SELECT seq AS n FROM sqlite_sequence WHERE name = 'entries'",
    'SELECT max(cursor) AS n FROM entries',
  ];
  const answers = questions.map((sql) =>
    attempted(() => Number((db.prepare(sql).get() as { n: number } | undefined)?.n ?? 0)),
  );
  return Math.max(0, ...answers.map((a) => (a.ok ? a.value : 0)));
}

function keepRaw(path: string): string {
  const kept = `${path}.raw`;
  copyFileSync(path, kept);
  return kept;
}

function attempted<T>(act: () => T): { ok: true; value: T } | { ok: false; message: string } {
  try {
    return { ok: true, value: act() };
  } catch (error) {
    return { ok: false, message: messageOf(error) };
  }
}

function closeQuietly(db: Database.Database | null): void {
  try {
    db?.close();
  } catch {
    // The copy is thrown away whatever state it is in.
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/**
 * The embedded store: one SQLite file in the household's folder. Several processes may share it; one
 * writes at a time. Appends that come together are committed together, each whole or not at all.
 */
import type Database from 'libsql';
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import { type AppendReport, closedFault, conflict, type Store, type StoredEntry } from '../store.ts';
import { crc32 } from './crc32.ts';
import { sqliteFault } from './sqlite-fault.ts';
import { logbookFile, openLogbookFile, type SqliteOptions } from './sqlite-file.ts';

/** The store in `folder`, which is made when missing. Throws StoreFault when it cannot be opened. */
export function openSqliteStore(folder: string, options: SqliteOptions = {}): Store {
  return new SqliteStore(openLogbookFile(folder, options), logbookFile(folder));
}

interface Waiting {
  entries: readonly Entry[];
  resolve(result: Result<AppendReport>): void;
  reject(error: unknown): void;
}

interface Row {
  cursor: number;
  text: string;
}

const pageRows = 1000;

class SqliteStore implements Store {
  private readonly db: Database.Database;
  private readonly file: string;
  private readonly insert: Database.Statement;
  private readonly byId: Database.Statement;
  private readonly known: Database.Statement;
  private readonly page: Database.Statement;
  private waiting: Waiting[] = [];
  private closed = false;

  constructor(db: Database.Database, file: string) {
    this.db = db;
    this.file = file;
    this.insert = db.prepare('INSERT INTO entries (id, text, crc32) VALUES (?, ?, ?) ON CONFLICT (id) DO NOTHING');
    this.byId = db.prepare('SELECT text FROM entries WHERE id = ?');
    this.known = db.prepare('SELECT 1 FROM entries WHERE id = ?');
    this.page = db.prepare('SELECT cursor, text FROM entries WHERE cursor > ? ORDER BY cursor LIMIT ?');
  }

  append(entries: readonly Entry[]): Promise<Result<AppendReport>> {
    if (this.closed) return Promise.reject(closedFault(this.file));
    return new Promise((resolve, reject) => {
      this.waiting.push({ entries, resolve, reject });
      // One commit, and so one wait for the disk, for all that arrive in this turn of the loop.
      if (this.waiting.length === 1) setImmediate(() => this.flush());
    });
  }

  async *entries(afterCursor = 0): AsyncGenerator<StoredEntry> {
    for (let after = afterCursor; ; ) {
      const rows = this.attempt(() => this.page.all(after, pageRows) as Row[]);
      for (const { cursor, text } of rows) yield { cursor, entry: JSON.parse(text) as Entry };
      if (rows.length < pageRows) return;
      after = (rows[rows.length - 1] as Row).cursor;
    }
  }

  async entry(id: string): Promise<Entry | null> {
    return this.attempt(() => this.kept(id));
  }

  async missing(ids: readonly string[]): Promise<string[]> {
    return this.attempt(() => ids.filter((id) => this.known.get(id) === undefined));
  }

  async count(): Promise<number> {
    return this.number('SELECT count(*) AS n FROM entries');
  }

  async lastCursor(): Promise<number> {
    return this.number('SELECT coalesce(max(cursor), 0) AS n FROM entries');
  }

  async mark(name: string): Promise<string | null> {
    const row = this.attempt(() => this.db.prepare('SELECT value FROM marks WHERE name = ?').get(name));
    return row === undefined ? null : (row as { value: string }).value;
  }

  async setMark(name: string, value: string): Promise<void> {
    const sql = 'INSERT INTO marks (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value';
    this.attempt(() => this.db.prepare(sql).run(name, value));
  }

  async close(): Promise<void> {
    if (this.closed) return;
    this.flush();
    this.closed = true;
    this.db.close();
  }

  private number(sql: string): number {
    return this.attempt(() => Number((this.db.prepare(sql).get() as { n: number }).n));
  }

  private attempt<T>(act: () => T): T {
    if (this.closed) throw closedFault(this.file);
    try {
      return act();
    } catch (error) {
      throw sqliteFault(error, this.file);
    }
  }

  private flush(): void {
    const group = this.waiting;
    this.waiting = [];
    if (group.length === 0) return;
    try {
      this.db.exec('BEGIN IMMEDIATE');
      const results = group.map(({ entries }) => this.appendWithin(entries));
      this.db.exec('COMMIT');
      group.forEach(({ resolve }, i) => resolve(results[i] as Result<AppendReport>));
    } catch (error) {
      this.rollBack();
      for (const { reject } of group) reject(sqliteFault(error, this.file));
    }
  }

  private rollBack(): void {
    try {
      if (this.db.inTransaction) this.db.exec('ROLLBACK');
    } catch {
      // SQLite has rolled back by itself, as it does when the disk is full.
    }
  }

  private appendWithin(entries: readonly Entry[]): Result<AppendReport> {
    this.db.exec('SAVEPOINT one');
    let added = 0;
    for (const entry of entries) {
      const problem = this.put(entry, () => added++);
      if (problem) {
        this.db.exec('ROLLBACK TO one; RELEASE one');
        return failed(problem);
      }
    }
    this.db.exec('RELEASE one');
    return ok({ added, alreadyThere: entries.length - added });
  }

  private put(entry: Entry, whenAdded: () => void): Problem | null {
    const text = canonicalText(entry);
    if (this.insert.run(entry.id, text, crc32(text)).changes > 0) {
      whenAdded();
      return null;
    }
    const kept = this.kept(entry.id) as Entry;
    return canonicalText(kept) === text ? null : conflict(entry, kept);
  }

  private kept(id: string): Entry | null {
    const row = this.byId.get(id);
    return row === undefined ? null : (JSON.parse((row as Row).text) as Entry);
  }
}

/**
 * The embedded store: one SQLite file in the household's folder. Several processes may share it; one
 * writes at a time. Appends that come together are committed together, each whole or not at all.
 */
import type Database from 'libsql';
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import { type AppendReport, closedFault, conflict, type Store, type StoredEntry, StoreFault } from '../store.ts';
import type { EntrySource, Receipt } from '../receipts.ts';
import { crc32 } from './crc32.ts';
import { sqliteFault } from './sqlite-fault.ts';
import { logbookFile, openLogbookFile, type SqliteOptions } from './sqlite-file.ts';

/** The store in `folder`, which is made when missing. Throws StoreFault when it cannot be opened. */
export function openSqliteStore(folder: string, options: SqliteOptions = {}): SqliteStore {
  return new SqliteStore(openLogbookFile(folder, options), logbookFile(folder), options.sourceOf ?? (() => undefined));
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

const receiptSql = `INSERT INTO receipts (cursor, person, address, received_at)
                    VALUES (?, ?, ?, strftime('%Y-%m-%dT%H:%M:%fZ', 'now'))`;
const receiptsSql = `SELECT cursor, text, person, address, received_at AS receivedAt
                     FROM entries LEFT JOIN receipts USING (cursor) WHERE cursor < ? ORDER BY cursor DESC LIMIT ?`;

type ReceiptRow = Row & Pick<Receipt, 'person' | 'address' | 'receivedAt'>;

/** Prepared once. The driver closes a connection only when its statements are gone, so they can be let go. */
function prepareAll(db: Database.Database) {
  return {
    insert: db.prepare('INSERT INTO entries (id, text, crc32) VALUES (?, ?, ?) ON CONFLICT (id) DO NOTHING'),
    byId: db.prepare('SELECT text FROM entries WHERE id = ?'),
    known: db.prepare('SELECT 1 FROM entries WHERE id = ?'),
    receipt: db.prepare(receiptSql),
    receipts: db.prepare(receiptsSql),
    page: db.prepare('SELECT cursor, text FROM entries WHERE cursor > ? ORDER BY cursor LIMIT ?'),
  };
}

export class SqliteStore implements Store {
  private readonly db: Database.Database;
  private readonly file: string;
  private readonly sourceOf: (id: string) => EntrySource | undefined;
  private statements: ReturnType<typeof prepareAll> | null;
  private waiting: Waiting[] = [];
  /** A transaction that waits for its next piece; other appends wait for its end. */
  private streaming: Promise<unknown> | null = null;

  constructor(db: Database.Database, file: string, sourceOf: (id: string) => EntrySource | undefined) {
    this.db = db;
    this.file = file;
    this.sourceOf = sourceOf;
    this.statements = prepareAll(db);
  }

  append(entries: readonly Entry[]): Promise<Result<AppendReport>> {
    if (!this.statements) return Promise.reject(closedFault(this.file));
    return new Promise((resolve, reject) => {
      this.waiting.push({ entries, resolve, reject });
      // One commit, and so one wait for the disk, for all that arrive in this turn of the loop.
      if (this.waiting.length === 1) setImmediate(() => this.flush());
    });
  }

  async appendStream(pieces: AsyncIterable<readonly Entry[]>): Promise<Result<AppendReport>> {
    while (this.streaming) await this.streaming;
    if (!this.statements) throw closedFault(this.file);
    const written = this.writeStream(this.statements, pieces);
    this.streaming = written.catch(() => {});
    try {
      return await written;
    } finally {
      this.streaming = null;
      this.flush();
    }
  }

  async *entries(afterCursor = 0): AsyncGenerator<StoredEntry> {
    for (let after = afterCursor; ; ) {
      const rows = this.attempt(({ page }) => page.all(after, pageRows) as Row[]);
      for (const { cursor, text } of rows) yield { cursor, entry: parsed(text, cursor) };
      if (rows.length < pageRows) return;
      after = (rows[rows.length - 1] as Row).cursor;
    }
  }

  async entry(id: string): Promise<Entry | null> {
    return this.attempt(({ byId }) => kept(byId, id));
  }

  async missing(ids: readonly string[]): Promise<string[]> {
    return this.attempt(({ known }) => ids.filter((id) => known.get(id) === undefined));
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

  /** Who recorded what, when and from where; newest first, before a cursor. */
  async receipts(before: number, limit: number): Promise<Receipt[]> {
    const rows = this.attempt(({ receipts }) => receipts.all(before, limit) as ReceiptRow[]);
    return rows.map(({ cursor, text, person, address, receivedAt }) => {
      return { cursor, entry: parsed(text, cursor), person, address, receivedAt };
    });
  }

  async close(): Promise<void> {
    while (this.streaming) await this.streaming;
    if (!this.statements) return;
    this.flush();
    this.statements = null;
    foldLog(this.db);
    this.db.close();
  }

  private number(sql: string): number {
    return this.attempt(() => Number((this.db.prepare(sql).get() as { n: number }).n));
  }

  private attempt<T>(act: (statements: ReturnType<typeof prepareAll>) => T): T {
    if (!this.statements) throw closedFault(this.file);
    try {
      return act(this.statements);
    } catch (error) {
      throw sqliteFault(error, this.file);
    }
  }

  private async writeStream(
    statements: ReturnType<typeof prepareAll>,
    pieces: AsyncIterable<readonly Entry[]>,
  ): Promise<Result<AppendReport>> {
    try {
      this.db.exec('BEGIN IMMEDIATE');
      const sum = { added: 0, alreadyThere: 0 };
      for await (const piece of pieces) {
        const report = this.appendWithin(statements, piece);
        if (!report.ok) {
          this.db.exec('ROLLBACK');
          return report;
        }
        sum.added += report.value.added;
        sum.alreadyThere += report.value.alreadyThere;
      }
      this.db.exec('COMMIT');
      return ok(sum);
    } catch (error) {
      rollBack(this.db);
      throw sqliteFault(error, this.file);
    }
  }

  private flush(): void {
    if (this.streaming) return;
    const { statements, waiting: group } = this;
    this.waiting = [];
    if (group.length === 0 || !statements) return;
    try {
      this.db.exec('BEGIN IMMEDIATE');
      const results = group.map(({ entries }) => this.appendWithin(statements, entries));
      this.db.exec('COMMIT');
      group.forEach(({ resolve }, i) => resolve(results[i] as Result<AppendReport>));
    } catch (error) {
      rollBack(this.db);
      for (const { reject } of group) reject(sqliteFault(error, this.file));
    }
  }

  private appendWithin(statements: ReturnType<typeof prepareAll>, entries: readonly Entry[]): Result<AppendReport> {
    this.db.exec('SAVEPOINT one');
    let added = 0;
    for (const entry of entries) {
      const text = canonicalText(entry);
      const { changes, lastInsertRowid } = statements.insert.run(entry.id, text, crc32(text));
      if (changes > 0) {
        added++;
        const source = this.sourceOf(entry.id);
        if (source) statements.receipt.run(lastInsertRowid, source.person, source.address);
      } else {
        const problem = clash(entry, text, kept(statements.byId, entry.id) as Entry);
        if (problem) {
          this.db.exec('ROLLBACK TO one; RELEASE one');
          return failed(problem);
        }
      }
    }
    this.db.exec('RELEASE one');
    return ok({ added, alreadyThere: entries.length - added });
  }
}

function kept(byId: Database.Statement, id: string): Entry | null {
  const row = byId.get(id);
  return row === undefined ? null : parsed((row as Row).text, id);
}

/** Flipped bits often leave no JSON; those that do are found by the doctor's checksums. */
function parsed(text: string, place: number | string): Entry {
  try {
    return JSON.parse(text) as Entry;
  } catch (error) {
    const expected = 'a whole one: run doctor, which saves every readable entry';
    throw new StoreFault({ where: `entry ${place}`, found: 'a damaged entry', expected }, error);
  }
}

function clash(entry: Entry, text: string, other: Entry): Problem | null {
  return canonicalText(other) === text ? null : conflict(entry, other);
}

function rollBack(db: Database.Database): void {
  try {
    if (db.inTransaction) db.exec('ROLLBACK');
  } catch {
    // SQLite has rolled back by itself, as it does when the disk is full.
  }
}

/** Folds the write-ahead log into the file, so that the file alone is whole; others at work may forbid it. */
function foldLog(db: Database.Database): void {
  try {
    db.exec('PRAGMA busy_timeout = 0; PRAGMA wal_checkpoint(TRUNCATE);');
  } catch {
    // What is committed is safe in the log and is folded in by whoever comes later.
  }
}

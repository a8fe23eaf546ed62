/**
 * The store of a facility: many households in one PostgreSQL, any number of processes beside each
 * other. A household's entries get their cursors in the order of their commits, so a reader that goes
 * on from a cursor misses none. Appends that wait together are committed together.
 */
import type { Pool, PoolClient } from 'pg';
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import { type AppendReport, closedFault, conflict, type Store, type StoredEntry } from '../store.ts';
import type { EntrySource } from '../receipts.ts';
import { inTransaction } from './in-transaction.ts';

interface Waiting {
  entries: readonly Entry[];
  resolve(result: Result<AppendReport>): void;
  reject(error: unknown): void;
}

interface Row {
  cursor: string;
  text: string;
}

/** Thrown inside a transaction to undo it. */
class Refused extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super('refused');
    this.problems = problems;
  }
}

const pageRows = 1000;
/** Most appends in one transaction: bounds what one commit holds. */
const groupSize = 500;

/** One household's store on a database that `migrate` has prepared. The pool outlives it. */
export class PostgresStore implements Store {
  private readonly pool: Pool;
  private readonly household: string;
  private readonly where: string;
  private waiting: Waiting[] = [];
  private flushing: Promise<void> | null = null;
  private closed = false;
  private readonly sourceOf: (id: string) => EntrySource | undefined;

  /** @param sourceOf who sends the entry of this id; kept beside it in the same transaction. */
  constructor(pool: Pool, household: string, where: string, sourceOf: (id: string) => EntrySource | undefined) {
    this.pool = pool;
    this.household = household;
    this.where = where;
    this.sourceOf = sourceOf;
  }

  append(entries: readonly Entry[]): Promise<Result<AppendReport>> {
    if (this.closed) return Promise.reject(closedFault(this.where));
    return new Promise((resolve, reject) => {
      this.waiting.push({ entries, resolve, reject });
      this.flushing ??= this.flushAll();
    });
  }

  /** Appends of this household wait for its end, in this process and in others. */
  async appendStream(pieces: AsyncIterable<readonly Entry[]>): Promise<Result<AppendReport>> {
    if (this.closed) throw closedFault(this.where);
    try {
      const report = await this.transaction((client) => this.appendPieces(client, pieces));
      return ok(report);
    } catch (error) {
      if (error instanceof Refused) return failed(...error.problems);
      throw error;
    }
  }

  async *entries(afterCursor = 0): AsyncGenerator<StoredEntry> {
    const sql = 'SELECT cursor, text FROM entries WHERE household = $1 AND cursor > $2 ORDER BY cursor LIMIT $3';
    for (let after = afterCursor; ; ) {
      const rows = await this.rows<Row>(sql, [this.household, after, pageRows]);
      for (const row of rows) yield { cursor: Number(row.cursor), entry: JSON.parse(row.text) as Entry };
      if (rows.length < pageRows) return;
      after = Number((rows[rows.length - 1] as Row).cursor);
    }
  }

  async entry(id: string): Promise<Entry | null> {
    const sql = 'SELECT text FROM entries WHERE household = $1 AND id = $2';
    const [row] = await this.rows<Row>(sql, [this.household, id]);
    return row ? (JSON.parse(row.text) as Entry) : null;
  }

  async missing(ids: readonly string[]): Promise<string[]> {
    const sql = 'SELECT id FROM entries WHERE household = $1 AND id = ANY ($2)';
    const known = new Set((await this.rows<{ id: string }>(sql, [this.household, ids])).map((row) => row.id));
    return ids.filter((id) => !known.has(id));
  }

  count(): Promise<number> {
    return this.number('SELECT count(*) AS n FROM entries WHERE household = $1');
  }

  lastCursor(): Promise<number> {
    return this.number('SELECT coalesce(max(cursor), 0) AS n FROM entries WHERE household = $1');
  }

  async mark(name: string): Promise<string | null> {
    const sql = 'SELECT value FROM marks WHERE household = $1 AND name = $2';
    return (await this.rows<{ value: string }>(sql, [this.household, name]))[0]?.value ?? null;
  }

  async setMark(name: string, value: string): Promise<void> {
    const sql = `INSERT INTO marks (household, name, value) VALUES ($1, $2, $3)
                 ON CONFLICT (household, name) DO UPDATE SET value = excluded.value`;
    await this.rows(sql, [this.household, name, value]);
  }

  async close(): Promise<void> {
    this.closed = true;
    await this.flushing;
  }

  private async number(sql: string): Promise<number> {
    return Number((await this.rows<{ n: string }>(sql, [this.household]))[0]?.n);
  }

  private rows<R extends object>(sql: string, values: unknown[]): Promise<R[]> {
    if (this.closed) return Promise.reject(closedFault(this.where));
    return this.transaction(async (client) => (await client.query<R>(sql, values)).rows);
  }

  private async flushAll(): Promise<void> {
    while (this.waiting.length > 0) {
      const group = this.waiting.splice(0, groupSize);
      try {
        const results = await this.transaction((client) => this.appendGroup(client, group));
        group.forEach(({ resolve }, i) => resolve(results[i] as Result<AppendReport>));
      } catch (error) {
        for (const { reject } of group) reject(error);
      }
    }
    this.flushing = null;
  }

  private transaction<T>(act: (client: PoolClient) => Promise<T>): Promise<T> {
    return inTransaction(this.pool, this.where, { household: this.household }, act);
  }

  /** The household's row is locked first: whoever gets the next cursors also commits next. */
  private async appendGroup(client: PoolClient, group: readonly Waiting[]): Promise<Result<AppendReport>[]> {
    const locked = await client.query<{ last_cursor: string }>(
      'SELECT last_cursor FROM households WHERE household = $1 FOR UPDATE',
      [this.household],
    );
    const kept = await this.keptTexts(client, group);
    const fresh: { id: string; text: string }[] = [];
    const results = group.map(({ entries }) => judge(entries, kept, fresh));
    await this.insert(client, Number(locked.rows[0]?.last_cursor), fresh);
    return results;
  }

  private async appendPieces(client: PoolClient, pieces: AsyncIterable<readonly Entry[]>): Promise<AppendReport> {
    const sum = { added: 0, alreadyThere: 0 };
    for await (const entries of pieces) {
      const unanswered = { entries, resolve: () => {}, reject: () => {} };
      const [report] = await this.appendGroup(client, [unanswered]);
      if (!report?.ok) throw new Refused(report?.problems ?? []);
      sum.added += report.value.added;
      sum.alreadyThere += report.value.alreadyThere;
    }
    return sum;
  }

  private async keptTexts(client: PoolClient, group: readonly Waiting[]): Promise<Map<string, string>> {
    const ids = group.flatMap(({ entries }) => entries.map((e) => e.id));
    const { rows } = await client.query<{ id: string; text: string }>(
      'SELECT id, text FROM entries WHERE household = $1 AND id = ANY ($2)',
      [this.household, ids],
    );
    return new Map(rows.map((row) => [row.id, row.text]));
  }

  private async insert(client: PoolClient, last: number, fresh: readonly { id: string; text: string }[]) {
    if (fresh.length === 0) return;
    await client.query(
      `INSERT INTO entries (household, cursor, id, text)
       SELECT $1, $2 + n, id, text FROM unnest($3::text[], $4::text[]) WITH ORDINALITY AS fresh (id, text, n)`,
      [this.household, last, fresh.map((f) => f.id), fresh.map((f) => f.text)],
    );
    await this.insertReceipts(client, last, fresh);
    const moved = 'UPDATE households SET last_cursor = last_cursor + $2 WHERE household = $1';
    await client.query(moved, [this.household, fresh.length]);
    await client.query("SELECT pg_notify('flylarder_entries', $1)", [this.household]);
  }

  private async insertReceipts(client: PoolClient, last: number, fresh: readonly { id: string }[]) {
    const known = fresh.flatMap(({ id }, i) => {
      const source = this.sourceOf(id);
      return source ? [{ cursor: last + 1 + i, ...source }] : [];
    });
    if (known.length === 0) return;
    await client.query(
      `INSERT INTO receipts (household, cursor, person, address)
       SELECT $1, cursor, person, address FROM unnest($2::bigint[], $3::text[], $4::text[]) AS known (cursor, person, address)`,
      [this.household, known.map((k) => k.cursor), known.map((k) => k.person), known.map((k) => k.address)],
    );
  }
}

/** All of one append or none: its fresh texts join `kept` and `fresh` only when none clashes. */
function judge(
  entries: readonly Entry[],
  kept: Map<string, string>,
  fresh: { id: string; text: string }[],
): Result<AppendReport> {
  const mine = new Map<string, string>();
  for (const entry of entries) {
    const text = canonicalText(entry);
    const other = mine.get(entry.id) ?? kept.get(entry.id);
    if (other === undefined) mine.set(entry.id, text);
    else if (other !== text) return failed(conflict(entry, JSON.parse(other) as Entry));
  }
  for (const [id, text] of mine) {
    kept.set(id, text);
    fresh.push({ id, text });
  }
  return ok({ added: mine.size, alreadyThere: entries.length - mine.size });
}

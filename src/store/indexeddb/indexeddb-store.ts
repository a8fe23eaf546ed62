/**
 * The store in a browser: an IndexedDB database on the keeper's device. Every write asks for strict
 * durability, so that an entry is on the disk before it counts as taken.
 */
import { Dexie, type EntityTable, type Table } from 'dexie';
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import { type AppendReport, closedFault, conflict, type Store, type StoredEntry, together } from '../store.ts';
import { indexedDbFault } from './indexeddb-fault.ts';

interface EntryRow {
  cursor: number;
  id: string;
  text: string;
}

interface Mark {
  name: string;
  value: string;
}

/** The store of this name in this browser, made when missing. Throws StoreFault when it cannot be opened. */
export async function openIndexedDbStore(name: string): Promise<Store> {
  const db = new Dexie(name, { chromeTransactionDurability: 'strict' });
  // The tables, in numbered versions: a version never changes, a new one is added below it.
  db.version(1).stores({ entries: '++cursor, &id', marks: 'name' });
  try {
    await db.open();
  } catch (error) {
    throw indexedDbFault(error, name);
  }
  return new IndexedDbStore(db, name);
}

/** Deletes the store of this name with all that is in it. */
export async function deleteIndexedDbStore(name: string): Promise<void> {
  await Dexie.delete(name);
}

/** Thrown inside a transaction to undo it. */
class Undo extends Error {
  constructor(readonly problem: Problem) {
    super('undone');
  }
}

const pageRows = 1000;

class IndexedDbStore implements Store {
  private readonly rows: EntityTable<EntryRow, 'cursor'>;
  private readonly marks: Table<Mark, string>;

  constructor(
    private readonly db: Dexie,
    private readonly name: string,
  ) {
    this.rows = db.table('entries');
    this.marks = db.table('marks');
  }

  async append(entries: readonly Entry[]): Promise<Result<AppendReport>> {
    const texts = new Map<string, string>();
    for (const entry of entries) {
      const text = canonicalText(entry);
      const twin = texts.get(entry.id);
      if (twin !== undefined && twin !== text) return failed(conflict(entry, JSON.parse(twin) as Entry));
      texts.set(entry.id, text);
    }
    try {
      const added = await this.attempt(() => this.db.transaction('rw', this.rows, () => this.put(texts)));
      return ok({ added, alreadyThere: entries.length - added });
    } catch (error) {
      if (error instanceof Undo) return failed(error.problem);
      throw error;
    }
  }

  /** A transaction of a browser ends when it is made to wait: all pieces are gathered first. */
  async appendStream(pieces: AsyncIterable<readonly Entry[]>): Promise<Result<AppendReport>> {
    return this.append(await together(pieces));
  }

  async *entries(afterCursor = 0): AsyncGenerator<StoredEntry> {
    for (let after = afterCursor; ; ) {
      const page = await this.attempt(() => this.rows.where('cursor').above(after).limit(pageRows).toArray());
      for (const { cursor, text } of page) yield { cursor, entry: JSON.parse(text) as Entry };
      if (page.length < pageRows) return;
      after = (page[page.length - 1] as EntryRow).cursor;
    }
  }

  async entry(id: string): Promise<Entry | null> {
    const row = await this.attempt(() => this.rows.get({ id }));
    return row ? (JSON.parse(row.text) as Entry) : null;
  }

  async missing(ids: readonly string[]): Promise<string[]> {
    const known = new Set((await this.known(ids)).map((row) => row.id));
    return ids.filter((id) => !known.has(id));
  }

  count(): Promise<number> {
    return this.attempt(() => this.rows.count());
  }

  async lastCursor(): Promise<number> {
    return (await this.attempt(() => this.rows.toCollection().last()))?.cursor ?? 0;
  }

  async mark(name: string): Promise<string | null> {
    return (await this.attempt(() => this.marks.get(name)))?.value ?? null;
  }

  async setMark(name: string, value: string): Promise<void> {
    await this.attempt(() => this.marks.put({ name, value }));
  }

  async close(): Promise<void> {
    this.db.close();
  }

  /** Within a transaction: adds the texts that are not there; undoes all when one clashes. */
  private async put(texts: ReadonlyMap<string, string>): Promise<number> {
    const kept = new Map((await this.known([...texts.keys()])).map((row) => [row.id, row.text]));
    const fresh: Omit<EntryRow, 'cursor'>[] = [];
    for (const [id, text] of texts) {
      const other = kept.get(id);
      if (other === undefined) fresh.push({ id, text });
      else if (other !== text) throw new Undo(conflict(JSON.parse(text) as Entry, JSON.parse(other) as Entry));
    }
    await this.rows.bulkAdd(fresh);
    return fresh.length;
  }

  private known(ids: readonly string[]): Promise<EntryRow[]> {
    return this.attempt(() => this.rows.where('id').anyOf(ids).toArray());
  }

  private async attempt<T>(act: () => PromiseLike<T>): Promise<T> {
    if (!this.db.isOpen()) throw closedFault(this.name);
    try {
      return await act();
    } catch (error) {
      throw indexedDbFault(error, this.name);
    }
  }
}

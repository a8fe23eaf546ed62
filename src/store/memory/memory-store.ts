/** A store in memory: for tests, for a read-only logbook file, and for looking around. */
import { failed, ok, type Result } from '../../foundation/index.ts';
import { canonicalText, type Entry } from '../../logbook/index.ts';
import { type AppendReport, closedFault, conflict, type Store, type StoredEntry, together } from '../store.ts';

/** What outlives the closing of a store in memory. */
export interface MemoryPlace {
  /** Canonical texts: entries handed out are copies, as from any other store. */
  texts: string[];
  indexById: Map<string, number>;
  marks: Map<string, string>;
}

export function memoryPlace(): MemoryPlace {
  return { texts: [], indexById: new Map(), marks: new Map() };
}

export function openMemoryStore(place: MemoryPlace = memoryPlace()): Store {
  return new MemoryStore(place);
}

class MemoryStore implements Store {
  private readonly place: MemoryPlace;
  private closed = false;

  constructor(place: MemoryPlace) {
    this.place = place;
  }

  async append(entries: readonly Entry[]): Promise<Result<AppendReport>> {
    this.demandOpen();
    const fresh = new Map<string, string>();
    for (const entry of entries) {
      const text = canonicalText(entry);
      const kept = fresh.get(entry.id) ?? this.textOf(entry.id);
      if (kept === null) fresh.set(entry.id, text);
      else if (kept !== text) return failed(conflict(entry, JSON.parse(kept) as Entry));
    }
    for (const [id, text] of fresh) this.place.indexById.set(id, this.place.texts.push(text) - 1);
    return ok({ added: fresh.size, alreadyThere: entries.length - fresh.size });
  }

  /** What is kept in memory has to fit there anyway. */
  async appendStream(pieces: AsyncIterable<readonly Entry[]>): Promise<Result<AppendReport>> {
    return this.append(await together(pieces));
  }

  async *entries(afterCursor = 0): AsyncGenerator<StoredEntry> {
    this.demandOpen();
    const { texts } = this.place;
    for (let i = afterCursor; i < texts.length; i++) {
      yield { cursor: i + 1, entry: JSON.parse(texts[i] as string) as Entry };
    }
  }

  async entry(id: string): Promise<Entry | null> {
    this.demandOpen();
    const text = this.textOf(id);
    return text === null ? null : (JSON.parse(text) as Entry);
  }

  async missing(ids: readonly string[]): Promise<string[]> {
    this.demandOpen();
    return ids.filter((id) => !this.place.indexById.has(id));
  }

  async count(): Promise<number> {
    this.demandOpen();
    return this.place.texts.length;
  }

  async lastCursor(): Promise<number> {
    return this.count();
  }

  async mark(name: string): Promise<string | null> {
    this.demandOpen();
    return this.place.marks.get(name) ?? null;
  }

  async setMark(name: string, value: string): Promise<void> {
    this.demandOpen();
    this.place.marks.set(name, value);
  }

  async close(): Promise<void> {
    this.closed = true;
  }

  private textOf(id: string): string | null {
    const index = this.place.indexById.get(id);
    return index === undefined ? null : (this.place.texts[index] as string);
  }

  private demandOpen(): void {
    if (this.closed) throw closedFault('memory');
  }
}

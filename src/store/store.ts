/**
 * Where a logbook is kept. A store only grows: it takes entries and gives them back in the order it
 * took them. All stores behave alike; conformance.ts is the suite that says how.
 */
import type { Problem, Result } from '../foundation/index.ts';
import { problemText } from '../foundation/index.ts';
import { canonicalText, type Entry } from '../logbook/index.ts';

export interface Store {
  /**
   * Takes all of the entries or none, and resolves when they are as safe as the store can make them.
   * An entry that is there already is passed over; the same id with other content is refused.
   * Throws StoreFault when the store itself fails (disk full, locked, closed): then nothing was taken.
   */
  append(entries: readonly Entry[]): Promise<Result<AppendReport>>;
  /**
   * As `append`, for entries that are too many to be held in memory: all of the pieces or none, and no
   * other process sees a part of them. The ids must be each in one piece only, or have the same content in all.
   */
  appendStream(pieces: AsyncIterable<readonly Entry[]>): Promise<Result<AppendReport>>;
  /** The entries taken after a cursor, oldest first; all of them when left out. */
  entries(afterCursor?: number): AsyncIterable<StoredEntry>;
  /** The entry with this id, or null. */
  entry(id: string): Promise<Entry | null>;
  /** Those of the ids that no entry here has, in the order given. */
  missing(ids: readonly string[]): Promise<string[]>;
  count(): Promise<number>;
  /** The cursor of the newest entry; 0 when there is none. */
  lastCursor(): Promise<number>;
  /** A small remark of this device, such as how far it has synced; not part of the logbook. */
  mark(name: string): Promise<string | null>;
  setMark(name: string, value: string): Promise<void>;
  close(): Promise<void>;
}

export interface AppendReport {
  added: number;
  alreadyThere: number;
}

export interface StoredEntry {
  /** Rises with every entry taken; gaps may occur. It is this store's own and means nothing to another. */
  cursor: number;
  entry: Entry;
}

/** The store itself failed: its place, what was found there, and what would help. */
export class StoreFault extends Error {
  readonly problem: Problem;

  constructor(problem: Problem, cause?: unknown) {
    super(problemText(problem), { cause });
    this.name = 'StoreFault';
    this.problem = problem;
  }
}

/** The refusal of an id that is taken by other content. */
export function conflict(entry: Entry, kept: Entry): Problem {
  return {
    where: `entry ${entry.id}`,
    found: `other content than the logbook has under this id: ${canonicalText(entry)}`,
    expected: `the same content, ${canonicalText(kept)}, or an amendment with an id of its own`,
  };
}

/** All entries of a stream at once, for stores that cannot write a part and wait. */
export async function together(pieces: AsyncIterable<readonly Entry[]>): Promise<Entry[]> {
  const all: Entry[] = [];
  for await (const piece of pieces) for (const entry of piece) all.push(entry);
  return all;
}

export function closedFault(where: string): StoreFault {
  return new StoreFault({ where, found: 'a store that was closed', expected: 'an open store' });
}

/**
 * One household while its server runs: the entries and what they say, kept at hand, with the answers
 * given since the last change. Writes go to the store first; only what it has is counted.
 */
import type { Day, Result } from '../foundation/index.ts';
import { type Entry, type Facts, fold } from '../logbook/index.ts';
import type { AppendReport, Store } from '../store/store.ts';
import { type Place, WriteQueue } from './write-queue.ts';

type Listener = (cursor: number) => void;
/** The answer that was worked out ahead for this state of the logbook; undefined when there is none. */
export type WorkedAhead = (key: string, cursor: number) => Promise<unknown>;

/** Answers kept for questions asked again; a page asks the same few over and over. */
const mostAnswersKept = 32;

export class LiveHousehold {
  readonly store: Store;
  private readonly entries: Entry[] = [];
  private readonly ids = new Set<string>();
  private readonly listeners = new Set<Listener>();
  private readonly factsByDay = new Map<string, Facts>();
  private readonly answers = new Map<string, Promise<unknown>>();
  private cursor = 0;
  private isClosed = false;
  private readonly writes: WriteQueue;
  private readonly workedAhead: WorkedAhead;

  private constructor(store: Store, workedAhead: WorkedAhead) {
    this.store = store;
    this.workedAhead = workedAhead;
    this.writes = new WriteQueue(store, this.entries, () => this.catchUp());
  }

  static async open(store: Store, workedAhead: WorkedAhead = async () => undefined): Promise<LiveHousehold> {
    const household = new LiveHousehold(store, workedAhead);
    await household.catchUp();
    return household;
  }

  /** What the logbook says; with `until`, as it was known to have happened by that day. */
  facts(until?: Day): Facts {
    const key = until ?? '';
    let facts = this.factsByDay.get(key);
    if (!facts) {
      facts = fold(this.entries, until === undefined ? {} : { until });
      this.keep(this.factsByDay, key, facts);
    }
    return facts;
  }

  /**
   * The answer to the question that `key` names, once for each state of the logbook: what a worker has
   * worked out ahead, or else computed here and now.
   */
  answer<Answer>(key: string, compute: () => Answer): Promise<Answer> {
    const known = this.answers.get(key);
    if (known) return known as Promise<Answer>;
    const coming = this.aheadOrNow(key, compute);
    this.keep(this.answers, key, coming);
    coming.catch(() => this.answers.delete(key));
    return coming;
  }

  get lastCursor(): number {
    return this.cursor;
  }

  /** True once the server stops: the store is about to be closed. */
  get closed(): boolean {
    return this.isClosed;
  }

  /** Every entry at hand, in the order in which the store took them. */
  known(): readonly Entry[] {
    return this.entries;
  }

  get count(): number {
    return this.entries.length;
  }

  /** Every entry, in the order it was kept. */
  get all(): readonly Entry[] {
    return this.entries;
  }

  /** Writes all of the batch or none of it; resolves when it is safe. */
  append(batch: readonly Entry[], where: Place): Promise<Result<AppendReport>> {
    return this.writes.append(batch, where);
  }

  /** Calls `listener` after every change; the function returned ends that. */
  onChange(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Waits for writes under way; nobody is told of changes any more. */
  async close(): Promise<void> {
    this.isClosed = true;
    this.listeners.clear();
    await this.writes.settled();
  }

  /** Reads what the store has beyond what is at hand: our own writes, or another process's. */
  async catchUp(): Promise<void> {
    const before = this.cursor;
    for await (const { cursor, entry } of this.store.entries(before)) {
      // Two requests may read the same rows side by side.
      this.cursor = Math.max(this.cursor, cursor);
      if (this.ids.has(entry.id)) continue;
      this.ids.add(entry.id);
      this.entries.push(entry);
    }
    if (this.cursor === before) return;
    this.factsByDay.clear();
    this.answers.clear();
    for (const listener of this.listeners) listener(this.cursor);
  }

  private async aheadOrNow<Answer>(key: string, compute: () => Answer): Promise<Answer> {
    const ahead = await this.workedAhead(key, this.cursor);
    return ahead === undefined ? compute() : (ahead as Answer);
  }

  private keep<Value>(map: Map<string, Value>, key: string, value: Value): void {
    if (map.size >= mostAnswersKept) map.delete(map.keys().next().value as string);
    map.set(key, value);
  }
}

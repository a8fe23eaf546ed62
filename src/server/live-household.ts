/**
 * One household while its server runs: the entries and what they say, kept at hand, with the answers
 * given since the last change. Writes go to the store first; only what it has is counted.
 */
import type { Day, Result } from '../foundation/index.ts';
import type { Entry, Facts } from '../logbook/index.ts';
import type { AppendReport, Store } from '../store/store.ts';
import { KnownLogbook } from './reckoning/known-logbook.ts';
import { type Asked, answerTo } from './reckoning/questions.ts';
import type { Desk } from './reckoning/reckoner-thread.ts';
import type { ReckonerThreads } from './reckoning/reckoner-threads.ts';
import { type Place, WriteQueue } from './write-queue.ts';

type Listener = (cursor: number) => void;
/** The answer that was worked out ahead for this state of the logbook; undefined when there is none. */
export type WorkedAhead = (key: string, cursor: number) => Promise<unknown>;

export interface HouseholdOptions {
  workedAhead?: WorkedAhead;
  /** Threads that answers are reckoned in; left out, they are reckoned in this one. */
  reckoners?: ReckonerThreads;
}

/** Answers kept for questions asked again; a page asks the same few over and over. */
const mostAnswersKept = 32;

export class LiveHousehold {
  readonly store: Store;
  private readonly logbook = new KnownLogbook();
  private readonly ids = new Set<string>();
  private readonly listeners = new Set<Listener>();
  private readonly answers = new Map<string, Promise<unknown>>();
  private cursor = 0;
  private isClosed = false;
  private readonly writes: WriteQueue;
  private readonly workedAhead: WorkedAhead;
  private readonly desk: Desk | null;

  private constructor(store: Store, { workedAhead = async () => undefined, reckoners }: HouseholdOptions) {
    this.store = store;
    this.workedAhead = workedAhead;
    this.desk = reckoners?.desk(this.logbook.entries) ?? null;
    this.writes = new WriteQueue(store, this.logbook.entries, () => this.catchUp());
  }

  static async open(store: Store, options: HouseholdOptions = {}): Promise<LiveHousehold> {
    const household = new LiveHousehold(store, options);
    await household.catchUp();
    return household;
  }

  /** What the logbook says; with `until`, as it was known to have happened by that day. */
  facts(until?: Day): Facts {
    return this.logbook.facts(until);
  }

  /**
   * The answer to the question that `key` names, once for each state of the logbook: what a worker has
   * worked out ahead, or else what `compute` gives. Who asks while it comes waits for the same.
   */
  answer<Answer>(key: string, compute: () => Answer | Promise<Answer>): Promise<Answer> {
    const known = this.answers.get(key);
    if (known) return known as Promise<Answer>;
    const coming = this.aheadOrNow(key, compute);
    if (this.answers.size >= mostAnswersKept) this.answers.delete(this.answers.keys().next().value as string);
    this.answers.set(key, coming);
    coming.catch(() => {
      if (this.answers.get(key) === coming) this.answers.delete(key);
    });
    return coming;
  }

  /** Reckoned anew, in a thread of its own where there is one. */
  async reckon(asked: Asked): Promise<unknown> {
    return this.desk ? this.desk.ask(asked) : answerTo(asked, this.logbook);
  }

  get lastCursor(): number {
    return this.cursor;
  }

  /** True once the server stops: the store is about to be closed. */
  get closed(): boolean {
    return this.isClosed;
  }

  get count(): number {
    return this.logbook.entries.length;
  }

  /** Every entry, in the order it was kept. */
  get all(): readonly Entry[] {
    return this.logbook.entries;
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
    this.desk?.leave();
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
      this.logbook.add([entry]);
    }
    if (this.cursor === before) return;
    this.answers.clear();
    for (const listener of this.listeners) listener(this.cursor);
  }

  private async aheadOrNow<Answer>(key: string, compute: () => Answer | Promise<Answer>): Promise<Answer> {
    const ahead = await this.workedAhead(key, this.cursor);
    return ahead === undefined ? compute() : (ahead as Answer);
  }
}

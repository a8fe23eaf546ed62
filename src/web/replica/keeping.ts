/**
 * Where the keeper's entries are kept: in the page's memory, and on the server where there is one.
 * Entries that the server has not acknowledged wait here and are sent again.
 */
import type { Problem } from '../../foundation/index.ts';
import type { Entry } from '../../logbook/index.ts';
import { entriesOfServer, hearServer, sendToServer } from './server-door.ts';

export interface Keeping {
  home: 'server' | 'device';
  /** The logbook as it was on opening. */
  entries: Entry[];
  add: (entries: Entry[]) => Promise<Problem[]>;
}

/** What the page is told of what happens elsewhere. */
export interface News {
  arrived: (entries: Entry[]) => void;
  waiting: (unsent: number) => void;
}

export async function openKeeping(news: News): Promise<Keeping> {
  const first = await entriesOfServer();
  if (!first) return { home: 'device', entries: [], add: async () => [] };
  const server = new ServerKeeping(first.entries, first.cursor, news);
  hearServer(() => void server.catchUp());
  return server;
}

class ServerKeeping implements Keeping {
  readonly home = 'server';
  #known: Set<string>;
  #unsent: Entry[] = [];
  #catching: Promise<void> = Promise.resolve();

  constructor(
    readonly entries: Entry[],
    private cursor: number,
    private readonly news: News,
  ) {
    this.#known = new Set(entries.map((entry) => entry.id));
  }

  async add(entries: Entry[]): Promise<Problem[]> {
    for (const entry of entries) this.#known.add(entry.id);
    const sent = await sendToServer([...this.#unsent, ...entries]);
    if (sent.how === 'refused') {
      for (const entry of entries) this.#known.delete(entry.id);
      return sent.problems;
    }
    this.#wait(sent.how === 'kept' ? [] : [...this.#unsent, ...entries]);
    return [];
  }

  /** Reads what the server has and we have not; one reading at a time. */
  catchUp(): Promise<void> {
    this.#catching = this.#catching.then(() => this.#readOn());
    return this.#catching;
  }

  async #readOn(): Promise<void> {
    if (this.#unsent.length > 0 && (await sendToServer(this.#unsent)).how === 'kept') this.#wait([]);
    const part = await entriesOfServer(this.cursor);
    if (!part) return;
    this.cursor = part.cursor;
    const fresh = part.entries.filter((entry) => !this.#known.has(entry.id));
    for (const entry of fresh) this.#known.add(entry.id);
    if (fresh.length > 0) this.news.arrived(fresh);
  }

  #wait(entries: Entry[]): void {
    this.#unsent = entries;
    this.news.waiting(entries.length);
  }
}

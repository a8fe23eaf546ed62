/** Who recorded what, when and from where: what a server knows of an entry beside what the entry says itself. */
import type { Entry } from '../logbook/index.ts';

/** Who sent an entry, as far as the server knows. */
export interface EntrySource {
  /** The account or device. */
  person: string;
  address: string;
}

export interface Receipt {
  cursor: number;
  entry: Entry;
  /** Null where an entry came in without a sender, as by the command line. */
  person: string | null;
  address: string | null;
  /** ISO instant by the store's clock. */
  receivedAt: string | null;
}

/** Reads receipts newest first, before a cursor. */
export type ReadReceipts = (before: number, limit: number) => Promise<Receipt[]>;

/** The senders of entries that are on their way into a store, which asks for them while it writes. */
export class EntrySources {
  private readonly byId = new Map<string, EntrySource>();

  /** @param source null when the entries are kept or refused. */
  note(ids: readonly string[], source: EntrySource | null): void {
    for (const id of ids) {
      if (source) this.byId.set(id, source);
      else this.byId.delete(id);
    }
  }

  readonly of = (id: string): EntrySource | undefined => this.byId.get(id);
}

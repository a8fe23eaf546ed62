/** The entries of one household at hand, and what they say, folded once for each day that is asked about. */
import type { Day } from '../../foundation/index.ts';
import { type Entry, type Facts, fold } from '../../logbook/index.ts';

/** Days whose facts are kept; the same few are asked about over and over. */
const mostDaysKept = 32;

export class KnownLogbook {
  /** In the order in which they came. */
  readonly entries: Entry[] = [];
  private readonly factsByDay = new Map<string, Facts>();

  add(entries: readonly Entry[]): void {
    for (const entry of entries) this.entries.push(entry);
    this.factsByDay.clear();
  }

  /** What the logbook says; with `until`, as it was known to have happened by that day. */
  facts(until?: Day): Facts {
    const key = until ?? '';
    let facts = this.factsByDay.get(key);
    if (!facts) {
      facts = fold(this.entries, until === undefined ? {} : { until });
      if (this.factsByDay.size >= mostDaysKept) this.factsByDay.delete(this.factsByDay.keys().next().value as string);
      this.factsByDay.set(key, facts);
    }
    return facts;
  }
}

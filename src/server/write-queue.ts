/**
 * Writes wait for one another, so that each is checked against all before it. Those that wait together
 * are checked together: the check reads the whole logbook, and the disk is waited for once.
 */
import { failed, type Problem, type Result } from '../foundation/index.ts';
import { checkBatch, type Entry } from '../logbook/index.ts';
import type { AppendReport, Store } from '../store/store.ts';

/** The place of an entry of a batch, as its sender knows it. */
export type Place = (entry: Entry, index: number) => string;

interface Waiting {
  batch: readonly Entry[];
  where: Place;
  resolve(result: Result<AppendReport>): void;
  reject(error: unknown): void;
}

export class WriteQueue {
  private readonly store: Store;
  /** All entries of the store that were read so far; `readOn` adds the newer ones. */
  private readonly entries: readonly Entry[];
  private readonly readOn: () => Promise<void>;
  private waiting: Waiting[] = [];
  private writing: Promise<void> | null = null;

  constructor(store: Store, entries: readonly Entry[], readOn: () => Promise<void>) {
    this.store = store;
    this.entries = entries;
    this.readOn = readOn;
  }

  append(batch: readonly Entry[], where: Place): Promise<Result<AppendReport>> {
    return new Promise((resolve, reject) => {
      this.waiting.push({ batch, where, resolve, reject });
      this.writing ??= this.writeAll();
    });
  }

  /** Resolves when nothing waits any more. */
  async settled(): Promise<void> {
    await this.writing;
  }

  private async writeAll(): Promise<void> {
    while (this.waiting.length > 0) {
      const group = this.waiting;
      this.waiting = [];
      await this.writeGroup(group);
    }
    this.writing = null;
  }

  private async writeGroup(group: Waiting[]): Promise<void> {
    try {
      await this.readOn();
      if (group.length === 1) await this.writeOne(group[0] as Waiting);
      else await this.writeTogether(group);
    } catch (error) {
      for (const { reject } of group) reject(error);
    }
  }

  /** One that contradicts the others must not take them down with it: then each is tried by itself. */
  private async writeTogether(group: Waiting[]): Promise<void> {
    const all = group.flatMap(({ batch }) => batch);
    if (!checkBatch(all, this.entries).ok) {
      for (const one of group) await this.writeGroup([one]);
      return;
    }
    const reports = await Promise.all(group.map(({ batch }) => this.store.append(batch)));
    await this.readOn();
    for (const [i, one] of group.entries()) one.resolve(placed(reports[i] as Result<AppendReport>, one));
  }

  private async writeOne(one: Waiting): Promise<void> {
    const checked = checkBatch(one.batch, this.entries, one.where);
    if (!checked.ok) return one.resolve(checked);
    const report = await this.store.append(one.batch);
    await this.readOn();
    one.resolve(placed(report, one));
  }
}

/** The store names an entry by its id; the sender knows it by its place in the batch. */
function placed(report: Result<AppendReport>, { batch, where }: Waiting): Result<AppendReport> {
  if (report.ok) return report;
  return failed(...report.problems.map((problem) => placedProblem(problem, batch, where)));
}

function placedProblem(problem: Problem, batch: readonly Entry[], where: Place): Problem {
  const index = batch.findIndex((entry) => problem.where.includes(entry.id));
  return index < 0 ? problem : { ...problem, where: where(batch[index] as Entry, index) };
}

/**
 * A worker: takes households from the queue, works their answers out and keeps them where every process
 * finds them. A job may be done twice without harm: its result depends on the logbook, the day and the
 * build alone, and newer results are never overwritten by older ones. A job may be lost without harm too:
 * what is due is read off the logbooks every few seconds, so work that was lost is asked for again.
 */
import type { Worker as Thread } from 'node:worker_threads';
import type { PostgresLogbooks } from '../../../store/postgres/index.ts';
import { LiveHousehold } from '../../live-household.ts';
import { ReckonerThreads } from '../../reckoning/reckoner-threads.ts';
import type { Shell } from '../../shell.ts';
import { RecentlyUsed } from '../recently-used.ts';
import { endOfDay, householdAnswers } from './household-answers.ts';
import { type Job, type JobQueue, openJobQueue } from './job-queue.ts';
import { type JobOutcome, WorkerMetrics } from './worker-metrics.ts';

export interface WorkerOptions {
  logbooks: PostgresLogbooks;
  /** The address of the same database, for the queue's own connections. */
  databaseUrl: string;
  shell: Shell;
  /** The build: answers of others are not taken for its own. */
  version: string;
  /** Starts a thread that runs `reckonFor`; left out, answers are reckoned in this one. */
  reckoner?: () => Thread;
  /** Takes a line for every job. */
  log(line: JobLine): void;
}

export interface JobLine {
  at: string;
  job: string;
  household: string;
  outcome: JobOutcome | 'trouble';
  ms: number;
  /** How far the logbook was read. */
  cursor?: number;
  error?: string;
}

export interface Worker {
  /** The text of one scrape; rejects when the database does not answer. */
  metrics(): Promise<string>;
  /** Ends the job under way and takes no other. */
  stop(): Promise<void>;
}

/** How often the logbooks are looked at for what is due, and the queue when nobody has called. */
const lookMs = 5000;
/** A household whose job failed is left alone for so long. */
const afterFailureMs = 600_000;
/** Logbooks held in memory. */
const mostOpen = 20;

export async function startWorker(options: WorkerOptions): Promise<Worker> {
  const { logbooks, shell, log } = options;
  const trouble = (error: unknown) =>
    log({ at: shell.now(), job: '', household: '', outcome: 'trouble', ms: 0, error: String(error) });
  const queue = await openJobQueue(options.databaseUrl, trouble);
  const bench = new Bench(options, queue, trouble);
  const stopListening = await logbooks.onEntries((household) => void bench.ask([household]));
  const looking = setInterval(() => void bench.look(), lookMs);
  await bench.look();
  const running = bench.run();
  return {
    metrics: async () => bench.metrics.text(await queue.waiting()),
    stop: async () => {
      clearInterval(looking);
      bench.stop();
      await running;
      await stopListening();
      await bench.close();
      await queue.close();
    },
  };
}

/** Where the jobs are done, one after another: they are bound by the processor. */
class Bench {
  readonly metrics = new WorkerMetrics();
  private readonly options: WorkerOptions;
  private readonly queue: JobQueue;
  private readonly trouble: (error: unknown) => void;
  private readonly households: RecentlyUsed<LiveHousehold>;
  private readonly reckoners: ReckonerThreads | null;
  private readonly failedAt = new Map<string, number>();
  private stopped = false;
  private working = false;
  private wake = () => {};

  constructor(options: WorkerOptions, queue: JobQueue, trouble: (error: unknown) => void) {
    this.options = options;
    this.queue = queue;
    this.trouble = trouble;
    this.reckoners = options.reckoner ? new ReckonerThreads(options.reckoner) : null;
    const given = this.reckoners ? { reckoners: this.reckoners } : {};
    const open = async (name: string) => LiveHousehold.open(await options.logbooks.household(name), given);
    this.households = new RecentlyUsed(mostOpen, open, (live) => live.close());
  }

  /**
   * Asks for what is due, and wakes the work. Not beside a job: while the processor reckons no connection is
   * made in time, and a database that is well would be called silent.
   */
  async look(): Promise<void> {
    if (this.working) return;
    await this.ask(await this.options.logbooks.work.due(this.options.version).catch(this.sayTrouble));
  }

  async ask(households: readonly string[]): Promise<void> {
    if (this.working) return;
    try {
      for (const household of households) if (!this.failedLately(household)) await this.queue.ask(household);
    } catch (error) {
      this.trouble(error);
    }
    this.wake();
  }

  async run(): Promise<void> {
    while (!this.stopped) {
      const called = this.called();
      const job = await this.queue.next().catch((error) => {
        this.trouble(error);
        return null;
      });
      if (job) await this.work(job).finally(() => (this.working = false));
      else await called;
    }
  }

  stop(): void {
    this.stopped = true;
    this.wake();
  }

  async close(): Promise<void> {
    await this.households.close();
    await this.reckoners?.stop();
  }

  private async work(job: Job): Promise<void> {
    this.working = true;
    const from = performance.now();
    const ended = (outcome: JobOutcome, more: { cursor?: number; error?: string }) => {
      const ms = performance.now() - from;
      this.metrics.ended(outcome, ms / 1000);
      const { now } = this.options.shell;
      this.options.log({
        at: now(),
        job: job.id,
        household: job.household,
        outcome,
        ms: Math.round(ms),
        ...more,
      });
    };
    try {
      const { outcome, cursor } = await this.answer(job.household);
      await this.queue.done(job);
      ended(outcome, { cursor });
    } catch (error) {
      this.failedAt.set(job.household, performance.now());
      ended('failed', { error: String(error) });
      await this.queue.failed(job, error).catch(this.trouble);
    }
  }

  private async answer(name: string): Promise<{ outcome: JobOutcome; cursor: number }> {
    const { logbooks, shell, version: build } = this.options;
    const household = await this.households.get(name);
    await household.catchUp();
    const cursor = household.lastCursor;
    if (await logbooks.work.isDone(name, cursor, build)) return { outcome: 'needless', cursor };
    const { timeZone } = household.facts().household;
    const dueAt = endOfDay(shell.todayIn(timeZone), timeZone);
    const answers = await householdAnswers(household, shell);
    const kept = await logbooks.work.keep(name, { cursor, build, dueAt, answers });
    return { outcome: kept ? 'done' : 'needless', cursor };
  }

  private failedLately(household: string): boolean {
    const at = this.failedAt.get(household);
    return at !== undefined && performance.now() - at < afterFailureMs;
  }

  /** Resolves when someone asks for work or this worker is told to stop. */
  private called(): Promise<void> {
    return new Promise((done) => {
      this.wake = done;
    });
  }

  private readonly sayTrouble = (error: unknown): string[] => {
    this.trouble(error);
    return [];
  };
}

/**
 * A thread of this process that reckons answers, so that the one that serves requests is free for them.
 * It is started with the first question, and again with the next one when it has failed; whoever waited
 * for it is told.
 */
import { setImmediate } from 'node:timers/promises';
import type { Worker } from 'node:worker_threads';
import { type Problem, problemText } from '../../foundation/index.ts';
import type { Entry } from '../../logbook/index.ts';
import type { Asked } from './questions.ts';
import type { FromReckoner, ToReckoner } from './reckon-for.ts';

/** Where the questions of one household are reckoned. */
export interface Desk {
  /** The answer from all entries that are at hand now. */
  ask(asked: Asked): Promise<unknown>;
  /** The household is left; its entries are let go of. */
  leave(): void;
}

/** There is no answer because what reckons it has ended. */
export class ReckoningFault extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problemText(problem));
    this.name = 'ReckoningFault';
    this.problem = problem;
  }
}

interface Waiting {
  resolve(answer: unknown): void;
  reject(error: unknown): void;
}

export class ReckonerThread {
  private readonly start: () => Worker;
  private readonly waiting = new Map<number, Waiting>();
  private worker: Worker | null = null;
  private questions = 0;
  private households = 0;
  private stopped = false;

  constructor(start: () => Worker) {
    this.start = start;
  }

  /** @param entries grow at their end and nowhere else. */
  desk(entries: readonly Entry[]): Desk {
    return new ThreadDesk(this, ++this.households, entries);
  }

  running(): Worker {
    if (this.stopped) throw stops();
    return (this.worker ??= this.started());
  }

  isRunning(worker: Worker | null): boolean {
    return worker !== null && worker === this.worker;
  }

  ask(worker: Worker, household: number, asked: Asked): Promise<unknown> {
    if (!this.isRunning(worker)) throw this.stopped ? stops() : ended('it ended');
    const number = ++this.questions;
    return new Promise((resolve, reject) => {
      this.waiting.set(number, { resolve, reject });
      worker.postMessage({ household, number, asked } satisfies ToReckoner);
    });
  }

  /** Whoever still waits is told; nothing is reckoned any more. */
  async stop(): Promise<void> {
    this.stopped = true;
    const { worker } = this;
    this.worker = null;
    this.tellWaiting(stops());
    await worker?.terminate();
  }

  private started(): Worker {
    const worker = this.start();
    const lost = (why: string) => {
      if (!this.isRunning(worker)) return;
      this.worker = null;
      console.error(`The thread that reckons answers has ended (${why}); the next question starts another.`);
      this.tellWaiting(ended(why));
    };
    worker.on('message', (reply: FromReckoner) => this.settle(reply));
    worker.on('error', (error) => lost(String(error)));
    worker.on('exit', (code) => lost(`status ${code}`));
    return worker;
  }

  private settle(reply: FromReckoner): void {
    const waiting = this.waiting.get(reply.number);
    this.waiting.delete(reply.number);
    if ('error' in reply) waiting?.reject(reply.error);
    else waiting?.resolve(reply.answer);
  }

  private tellWaiting(fault: ReckoningFault): void {
    const all = [...this.waiting.values()];
    this.waiting.clear();
    for (const { reject } of all) reject(fault);
  }
}

/** Entries that are sent in one piece: a long logbook goes over between requests. */
const mostAtOnce = 2000;

class ThreadDesk implements Desk {
  private readonly thread: ReckonerThread;
  private readonly household: number;
  private readonly entries: readonly Entry[];
  private sentTo: Worker | null = null;
  private sent = 0;

  constructor(thread: ReckonerThread, household: number, entries: readonly Entry[]) {
    this.thread = thread;
    this.household = household;
    this.entries = entries;
  }

  async ask(asked: Asked): Promise<unknown> {
    const worker = this.thread.running();
    await this.sendUpTo(this.entries.length, worker);
    if (worker !== this.sentTo) throw ended('the household was left');
    return this.thread.ask(worker, this.household, asked);
  }

  leave(): void {
    if (this.thread.isRunning(this.sentTo))
      this.tell(this.sentTo as Worker, { household: this.household, leave: true });
    this.sentTo = null;
  }

  private async sendUpTo(count: number, worker: Worker): Promise<void> {
    if (worker !== this.sentTo) {
      this.sentTo = worker;
      this.sent = 0;
    }
    while (this.sentTo === worker && this.sent < count) {
      const entries = this.entries.slice(this.sent, this.sent + mostAtOnce);
      this.tell(worker, { household: this.household, entries });
      this.sent += entries.length;
      if (this.sent < count) await setImmediate();
    }
  }

  private tell(worker: Worker, message: ToReckoner): void {
    worker.postMessage(message);
  }
}

function ended(why: string): ReckoningFault {
  const found = `the thread that reckons it has ended: ${why}`;
  return new ReckoningFault({
    where: 'the answer',
    found,
    expected: 'the question again, which starts another thread',
  });
}

function stops(): ReckoningFault {
  return new ReckoningFault({ where: 'the answer', found: 'a server that stops', expected: 'the question later' });
}

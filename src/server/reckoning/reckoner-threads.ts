/** A few threads that reckon; a household stays with one of them, which has its entries and its kept work. */
import type { Worker } from 'node:worker_threads';
import type { Entry } from '../../logbook/index.ts';
import { type Desk, ReckonerThread } from './reckoner-thread.ts';

export class ReckonerThreads {
  private readonly threads: { thread: ReckonerThread; households: number }[];

  /** @param start starts a thread that runs `reckonFor`. */
  constructor(start: () => Worker, count = 1) {
    this.threads = Array.from({ length: count }, () => ({ thread: new ReckonerThread(start), households: 0 }));
  }

  /** A desk at the thread with the fewest households. */
  desk(entries: readonly Entry[]): Desk {
    const least = this.threads.reduce((a, b) => (b.households < a.households ? b : a));
    least.households++;
    const desk = least.thread.desk(entries);
    const leave = () => {
      least.households--;
      desk.leave();
    };
    return { ask: (asked) => desk.ask(asked), leave };
  }

  async stop(): Promise<void> {
    await Promise.all(this.threads.map(({ thread }) => thread.stop()));
  }
}

/**
 * Tomorrow's jobs, worked out while today's page lies open and nothing else is asked: the first opening of
 * a day then shows them at once. A worker of its own, ended when it is done or overtaken.
 */
import type { Entry } from '../../logbook/index.ts';
import { plusDays } from '../days/calendar.ts';
import type { Asked } from '../workers/questions.ts';
import { Stopped, WorkerClient, workerFile } from '../workers/worker-client.ts';
import { basisOf, keepAhead, keptAnswers } from './kept-answers.ts';

/** Long enough after the last change that the keeper is likely done. */
const quietMs = 20_000;

/** What an answer depends on beside day and entries: the program's build and in what its sentences are told. */
export function programOf({ language, degrees }: Asked): string {
  return `${workerFile} ${language} ${degrees}`;
}

export class WorkAhead {
  #timer: ReturnType<typeof setTimeout> | undefined;
  readonly #worker: WorkerClient;
  readonly #entriesNow: () => Entry[];

  constructor(entriesNow: () => Entry[]) {
    this.#entriesNow = entriesNow;
    this.#worker = new WorkerClient(entriesNow);
  }

  /** @param today what today was asked with. */
  begin(today: Asked): void {
    this.stop();
    this.#timer = setTimeout(() => void this.#work({ ...today, on: plusDays(today.on, 1) }), quietMs);
  }

  stop(): void {
    clearTimeout(this.#timer);
    this.#worker.stop();
  }

  async #work(tomorrow: Asked): Promise<void> {
    const basis = basisOf(tomorrow.on, this.#entriesNow(), programOf(tomorrow));
    if (keptAnswers(basis).today) return;
    try {
      keepAhead(basis, { today: await this.#worker.ask('today', tomorrow) });
      this.#worker.stop();
    } catch (error) {
      if (!(error instanceof Stopped)) throw error;
    }
  }
}

/**
 * The answer to the latest of many questions, as a slider asks them: what is asked while the worker is busy
 * waits, and of those that wait only the last is asked.
 */
import { book } from '../../state/book.svelte.ts';
import { Stopped } from '../../workers/worker-client.ts';

export class LatestAnswer<Question, Answer> {
  answer = $state.raw<Answer | null>(null);
  readonly #ask: (question: Question) => Promise<Answer>;
  #latest: Question | null = null;
  #asking = false;
  #drops = 0;

  constructor(ask: (question: Question) => Promise<Answer>) {
    this.#ask = ask;
  }

  async want(question: Question): Promise<void> {
    this.#latest = question;
    if (this.#asking) return;
    this.#asking = true;
    try {
      while (this.#latest !== null) await this.#askLatest(this.#latest);
    } finally {
      this.#asking = false;
    }
  }

  drop(): void {
    this.#latest = null;
    this.#drops += 1;
    this.answer = null;
  }

  async #askLatest(question: Question): Promise<void> {
    this.#latest = null;
    const drops = this.#drops;
    try {
      const answer = await this.#ask(question);
      if (this.#latest === null && drops === this.#drops) this.answer = answer;
    } catch (error) {
      // The logbook changed meanwhile: whoever shows the answer asks again.
      if (!(error instanceof Stopped)) book.fault = String((error as Error).message);
    }
  }
}

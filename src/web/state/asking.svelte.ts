/**
 * One question of a screen and its last answer, kept while the next is worked out. What was overtaken is
 * dropped; what a new entry stopped is asked again.
 */
import type { Answer, Ask, QuestionName } from '../workers/questions.ts';
import { Stopped } from '../workers/worker-client.ts';
import { book } from './book.svelte.ts';

export class Asking<Q extends QuestionName> {
  answer = $state.raw<Answer<Q> | null>(null);
  busy = $state(false);
  readonly #question: Q;
  #latest = 0;

  constructor(question: Q) {
    this.#question = question;
  }

  async ask(ask: Ask<Q>): Promise<void> {
    const mine = ++this.#latest;
    this.busy = true;
    try {
      const answer = await book.quick.ask(this.#question, $state.snapshot(ask) as Ask<Q>);
      if (mine === this.#latest) this.answer = answer;
    } catch (error) {
      if (!(error instanceof Stopped)) book.fault = String((error as Error).message);
      else if (mine === this.#latest) void this.ask(ask);
    } finally {
      if (mine === this.#latest) this.busy = false;
    }
  }

  clear(): void {
    this.#latest++;
    this.answer = null;
    this.busy = false;
  }
}

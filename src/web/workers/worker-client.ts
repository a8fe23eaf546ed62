/**
 * Asks a worker and waits for its answer. Stopping ends the worker for good, which is the only way to
 * stop a computation that never yields; the next question starts a fresh one with the same logbook.
 */
import type { Entry } from '../../logbook/index.ts';
import workerFile from './reckoner.ts?worker&url';
import type { Answer, AnswerMessage, Ask, News, QuestionMessage, QuestionName } from './questions.ts';

/** The worker's address; its name holds a digest of the program, so that it changes with every build. */
export { workerFile };

/** The reason of a promise whose question was stopped or overtaken. */
export class Stopped extends Error {}

interface Waiting {
  resolve: (answer: never) => void;
  reject: (reason: Error) => void;
}

export class WorkerClient {
  #worker: Worker | null = null;
  #waiting = new Map<number, Waiting>();
  #count = 0;
  readonly #entriesNow: () => Entry[];
  readonly #heard: (news: News) => void;

  /**
   * @param entriesNow the logbook that a fresh worker begins with.
   * @param heard called with what the worker says unasked.
   */
  constructor(entriesNow: () => Entry[], heard: (news: News) => void = () => {}) {
    this.#entriesNow = entriesNow;
    this.#heard = heard;
  }

  ask<Q extends QuestionName>(question: Q, ask: Ask<Q>): Promise<Answer<Q>> {
    if (!this.#worker) {
      this.#worker = this.#start();
      if (question !== 'load' && question !== 'open') this.#load();
    }
    return this.#post(question, ask);
  }

  /** The logbook changed: what is being computed from the old one is ended, an idle worker just told. */
  renew(): void {
    if (this.#waiting.size > 0) this.stop();
    else if (this.#worker) this.#load();
  }

  /** Hands the logbook over; when that fails, the question that follows says so. */
  #load(): void {
    this.#post('load', { entries: this.#entriesNow() }).catch(() => {});
  }

  /** Ends whatever is being computed. */
  stop(): void {
    this.#worker?.terminate();
    this.#worker = null;
    for (const { reject } of this.#waiting.values()) reject(new Stopped('stopped'));
    this.#waiting.clear();
  }

  #start(): Worker {
    const worker = new Worker(workerFile, { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<AnswerMessage | News>) =>
      'news' in data ? this.#heard(data) : this.#settle(data);
    worker.onerror = (event) => this.#fail(event.message);
    return worker;
  }

  #post<Q extends QuestionName>(question: Q, ask: Ask<Q>): Promise<Answer<Q>> {
    const number = ++this.#count;
    const message: QuestionMessage = { number, question, ask };
    return new Promise<Answer<Q>>((resolve, reject) => {
      this.#waiting.set(number, { resolve: resolve as (answer: never) => void, reject });
      this.#worker?.postMessage(message);
    });
  }

  #settle(message: AnswerMessage): void {
    const waiting = this.#waiting.get(message.number);
    this.#waiting.delete(message.number);
    if (message.ok) waiting?.resolve(message.answer as never);
    else waiting?.reject(new Error(message.message));
  }

  #fail(message: string): void {
    for (const { reject } of this.#waiting.values()) reject(new Error(message));
    this.#waiting.clear();
    this.#worker = null;
  }
}

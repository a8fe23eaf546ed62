/**
 * The thread that reckons: it holds the logbooks it was given and answers questions, one at a time. The
 * thread that serves requests speaks to it through `ReckonerThread`.
 */
import type { MessagePort } from 'node:worker_threads';
import type { Entry } from '../../logbook/index.ts';
import { KnownLogbook } from './known-logbook.ts';
import { type Asked, answerTo } from './questions.ts';

/** What the reckoning thread is told of a household, by its number. */
export type ToReckoner = { household: number } & (
  | { entries: readonly Entry[] }
  | { number: number; asked: Asked }
  | { leave: true }
);
/** Its replies carry the number of the question. */
export type FromReckoner = { number: number } & ({ answer: unknown } | { error: unknown });

/** @param answered is called after each answer has left. */
export function reckonFor(port: MessagePort, answered: () => void): void {
  const households = new Map<number, KnownLogbook>();
  const logbookOf = (household: number) => {
    const logbook = households.get(household) ?? new KnownLogbook();
    households.set(household, logbook);
    return logbook;
  };
  port.on('message', (message: ToReckoner) => {
    if ('entries' in message) return logbookOf(message.household).add(message.entries);
    if ('leave' in message) return void households.delete(message.household);
    void reply(port, message.number, answerTo(message.asked, logbookOf(message.household))).then(answered);
  });
}

async function reply(port: MessagePort, number: number, answer: Promise<unknown>): Promise<void> {
  try {
    port.postMessage({ number, answer: await answer } satisfies FromReckoner);
  } catch (error) {
    port.postMessage({ number, error: error instanceof Error ? error : new Error(String(error)) });
  }
}

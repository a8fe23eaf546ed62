import { afterEach, describe, expect, it, vi } from 'vitest';
import { Worker } from 'node:worker_threads';
import { day } from '../../foundation/index.ts';
import { numberedEntry } from '../../store/conformance-entries.ts';
import type { Asked } from './questions.ts';
import { ReckonerThreads } from './reckoner-threads.ts';

/** A thread that tells how many entries it has of whoever asks; seed 2 ends it, seed 3 fails, seed 4 never answers. */
const counting = `
import { parentPort } from 'node:worker_threads';
const counts = new Map();
parentPort.on('message', ({ household, entries, leave, number, asked }) => {
  if (entries) return counts.set(household, (counts.get(household) ?? 0) + entries.length);
  if (leave) return counts.delete(household);
  if (asked.question.seed === 2) process.exit(7);
  if (asked.question.seed === 3) return parentPort.postMessage({ number, error: new RangeError('a seed of 3') });
  if (asked.question.seed !== 4) parentPort.postMessage({ number, answer: counts.get(household) ?? 0 });
});`;
let starts = 0;
const startCounting = () => {
  starts++;
  return new Worker(new URL(`data:text/javascript,${encodeURIComponent(counting)}`));
};

const asked = (seed: number): Asked => ({ name: 'today', question: { on: day('2026-11-25'), seed } });
const entriesOf = (count: number) => Array.from({ length: count }, (_, i) => numberedEntry(i));

let threads: ReckonerThreads;
const begin = (count = 1) => {
  starts = 0;
  threads = new ReckonerThreads(startCounting, count);
  vi.spyOn(console, 'error').mockImplementation(() => {});
};
afterEach(async () => {
  await threads.stop();
  vi.restoreAllMocks();
});

describe('a thread that reckons', () => {
  it('has every entry that was there when it was asked, however long the logbook', async () => {
    begin();
    const entries = entriesOf(4500);
    const desk = threads.desk(entries);
    const [first, second] = [desk.ask(asked(1)), desk.ask(asked(1))];
    expect([await first, await second]).toEqual([4500, 4500]);
    entries.push(...entriesOf(3));
    expect(await desk.ask(asked(1))).toBe(4503);
    expect(starts).toBe(1);
  });

  it('that ended tells whoever waited, and the next question starts one that has everything again', async () => {
    begin();
    const desk = threads.desk(entriesOf(5));
    const waiting = [desk.ask(asked(4)), desk.ask(asked(2))];
    for (const each of await Promise.allSettled(waiting)) {
      expect(each).toMatchObject({
        status: 'rejected',
        reason: { problem: { found: expect.stringMatching(/ended: status 7/) } },
      });
    }
    expect(await desk.ask(asked(1))).toBe(5);
    expect(starts).toBe(2);
  });

  it('hands on a fault of the answer, and goes on', async () => {
    begin();
    const desk = threads.desk(entriesOf(1));
    await expect(desk.ask(asked(3))).rejects.toThrow(RangeError);
    expect(await desk.ask(asked(1))).toBe(1);
    expect(starts).toBe(1);
  });

  it('tells whoever waits when it is stopped, and takes no question afterwards', async () => {
    begin();
    const desk = threads.desk(entriesOf(1));
    await desk.ask(asked(1));
    const waiting = expect(desk.ask(asked(4))).rejects.toThrow(/a server that stops/);
    await threads.stop();
    await waiting;
    await expect(desk.ask(asked(1))).rejects.toThrow(/a server that stops/);
  });

  it('keeps households apart, spreads them, and lets go of those that were left', async () => {
    begin(2);
    const desks = [1, 2, 3].map((count) => threads.desk(entriesOf(count)));
    expect(await Promise.all(desks.map((desk) => desk.ask(asked(1))))).toEqual([1, 2, 3]);
    expect(starts).toBe(2);
    desks[1]?.leave();
    const next = threads.desk(entriesOf(7));
    expect(await next.ask(asked(1))).toBe(7);
    expect(await desks[0]?.ask(asked(1))).toBe(1);
  });
});

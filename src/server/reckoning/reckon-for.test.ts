import { MessageChannel } from 'node:worker_threads';
import loadHighs from 'highs';
import { afterEach, expect, it } from 'vitest';
import { planGap, solverOf } from '../../app/index.ts';
import { day } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import type { Asked } from './questions.ts';
import { type FromReckoner, reckonFor, type ToReckoner } from './reckon-for.ts';

const envelope = { on: day('2026-11-04'), recordedAt: '2026-11-04T12:00:00.000Z', by: 'ada' };
const cup = (n: number, on = '2026-11-04'): Entry => ({
  ...envelope,
  id: `0190a000-0000-7000-8000-00000000000${n}`,
  on: day(on),
  kind: 'started',
  culture: `M${n}`,
  strain: 'melanogaster',
  founders: 50,
});
const group: Entry = {
  ...envelope,
  id: '0190a000-0000-7000-8000-000000000099',
  kind: 'group',
  group: 'newts',
  count: 2,
  fliesPerFeeding: 10,
  strain: 'melanogaster',
};
const question = { on: day('2026-11-25'), seed: 1, weeks: 2, scenarios: 50 };

const { port1, port2 } = new MessageChannel();
let answers = 0;
reckonFor(port2, () => answers++);
afterEach(() => port1.removeAllListeners('message'));

const tell = (...messages: ToReckoner[]) => {
  for (const message of messages) port1.postMessage(message);
};
const replies = (count: number) =>
  new Promise<FromReckoner[]>((resolve) => {
    const got: FromReckoner[] = [];
    port1.on('message', (reply: FromReckoner) => {
      if (got.push(reply) === count) resolve(got);
    });
  });

it('an answer that comes later is still of the logbook as it was when it was asked for', async () => {
  const coming = replies(2);
  tell(
    { household: 1, entries: [group, cup(1)] },
    { household: 1, number: 1, asked: { name: 'plan-bounds', question } },
    { household: 1, entries: [cup(2), cup(3)] },
    { household: 1, number: 2, asked: { name: 'ledger', question } },
  );
  const [bounds, ledger] = (await coming).sort((a, b) => a.number - b.number);
  expect(ledger).toMatchObject({ answer: { weeks: expect.arrayContaining([expect.objectContaining({ cups: 3 })]) } });
  const inProcess = planGap(fold([group, cup(1)]), question, solverOf(await loadHighs()));
  expect(bounds).toEqual({ number: 1, answer: inProcess });
});

it('a fault of one answer is its own: the next question is answered, and each is told of once', async () => {
  const earlier = answers;
  const coming = replies(2);
  const nonsense = { name: 'no-such-question', question } as unknown as Asked;
  tell(
    { household: 2, entries: [group] },
    { household: 2, number: 3, asked: nonsense },
    { household: 2, number: 4, asked: { name: 'ledger', question } },
  );
  const [fault, answer] = await coming;
  expect(fault).toMatchObject({ number: 3, error: expect.any(TypeError) });
  expect(answer).toMatchObject({ number: 4, answer: { weeks: [] } });
  expect(answers - earlier).toBe(2);
});

it('a household that was left is known no more', async () => {
  const coming = replies(1);
  tell(
    { household: 3, entries: [group, cup(1)] },
    { household: 3, leave: true },
    { household: 3, number: 5, asked: { name: 'ledger', question } },
  );
  expect(await coming).toMatchObject([{ answer: { weeks: [] } }]);
  port1.close();
});

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';
import { end, serve } from './serving.ts';

/** Enough that the day takes seconds where a record takes milliseconds. */
const cups = 6;

function household(): string {
  const recorded = { recordedAt: '2026-11-24T08:00:00.000Z', by: 'ada' };
  const entries = Array.from({ length: cups }, (_, i) => ({
    id: `01920000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    kind: 'started',
    on: `2026-11-${String(1 + (i % 20)).padStart(2, '0')}`,
    ...recorded,
    culture: `C${i}`,
    strain: 'melanogaster',
    founders: 20 + i,
  }));
  const group = { kind: 'group', on: '2026-11-01', group: 'frogs', animal: 'frogs', count: 1, fliesPerFeeding: 100 };
  const id = '01920000-0000-7000-8000-999999999999';
  const all = [...entries, { id, ...recorded, ...group, strain: 'melanogaster' }];
  return `${all.map((entry) => JSON.stringify(entry)).join('\n')}\n`;
}

it('a record is answered while a long answer is reckoned, and the next answer has it', async () => {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'cups.jsonl'), household());
  expect(flylarder(folder, ['import', 'cups.jsonl'])).toMatchObject({ status: 0 });
  const server = await serve(folder);
  const ask = async (path: string) => (await fetch(`${server.address}api/v1/${path}`)).json();
  const path = 'today?on=2026-11-25';
  const order: string[] = [];
  const told = async <T>(what: string, coming: Promise<T>) => {
    const value = await coming;
    order.push(what);
    return value;
  };
  const long = told('answer', ask(path));
  const joined = told('the same', ask(path));
  // The question has left before the entry: requests of one connection pool keep no order among themselves.
  await ask('openapi.json');
  const entry = { kind: 'ended', on: '2026-11-24', culture: 'C3', reason: 'mould' };
  const post = fetch(`${server.address}api/v1/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries: [entry] }),
  });
  expect((await told('record', post)).status).toBe(201);
  const before = (await long) as { cultures: { id: string }[] };
  expect(await joined).toEqual(before);
  expect(order[0]).toBe('record');
  const after = (await ask(path)) as typeof before;
  const has = (answer: typeof before) => answer.cultures.some(({ id }) => id === 'C3');
  expect([has(before), has(after)]).toEqual([true, false]);
  expect(await end(server, 'SIGTERM')).toBe(0);
}, 120_000);

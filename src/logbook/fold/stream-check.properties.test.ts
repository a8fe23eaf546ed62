import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { harvest, start } from '../../../tests/fixtures/entries-written.ts';
import { randomLogbook } from '../../../tests/replicas/random-logbook.ts';
import type { Problem, Result } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';
import { checkBatch } from './batch-check.ts';
import { checkStream } from './stream-check.ts';

const seeds = fc.integer({ min: 0, max: 1e9 });

async function* streamed<T>(items: readonly T[]): AsyncGenerator<T> {
  yield* items;
}

/** The logbook with cups' names that are long enough to be near each other. */
const longNamed = (log: Entry[]): Entry[] =>
  JSON.parse(JSON.stringify(log).replaceAll(/"M(\d+)"/g, '"melanogaster-$1"')) as Entry[];

const found = (result: Result<unknown>): string[] =>
  result.ok ? [] : result.problems.map((p: Problem) => `${p.where}: ${p.found}: ${p.expected}`).sort();

it('a stream is refused for exactly what a batch is refused for, whatever the size of the pieces', async () => {
  let refused = 0;
  await fc.assert(
    fc.asyncProperty(seeds, fc.integer({ min: 0, max: 120 }), fc.constantFrom(1, 3, 1000), async (seed, at, size) => {
      const log = longNamed(randomLogbook(seed, 120));
      const [existing, batch] = [log.slice(0, at), log.slice(at)];
      const where = (_: Entry, i: number) => `line ${i}`;
      const placed = batch.map((entry, i) => ({ entry, where: where(entry, i) }));
      const options = { pieceSize: size, maxProblems: 1e6 };
      const streams = await checkStream(
        () => streamed(placed),
        () => streamed(existing),
        options,
      );
      const batches = checkBatch(batch, existing, where);
      refused += batches.ok ? 0 : 1;
      expect(found(streams)).toEqual(found(batches));
    }),
    { numRuns: 150 },
  );
  expect(refused).toBeGreaterThan(30);
});

it('gives the same near names when more names are unknown than are looked at', async () => {
  const cups = Array.from({ length: 40 }, (_, i) => `hydei-march-${10 + i}`);
  const log = cups.map((cup) => start('2026-03-01', cup));
  const batch = cups.map((cup) => harvest('2026-03-20', cup.replace('hydei', 'hydey')));
  const placed = batch.map((e, i) => ({ entry: e, where: `line ${i}` }));
  const streams = await checkStream(
    () => streamed(placed.toReversed()),
    () => streamed(log),
    { pieceSize: 3, maxProblems: 1e6 },
  );
  const batches = checkBatch(batch, log, (_, i) => `line ${i}`);
  expect(found(streams)).toEqual(found(batches));
  expect(found(batches).filter((text) => text.includes('perhaps hydei-march'))).toHaveLength(20);
});

it('names no more problems than it is asked for', async () => {
  const log = randomLogbook(7, 300).map((entry, i) => ({ entry, where: `line ${i}` }));
  const result = await checkStream(
    () => streamed(log),
    () => streamed([]),
    { maxProblems: 4 },
  );
  expect(result.ok ? 0 : result.problems.length).toBe(4);
});

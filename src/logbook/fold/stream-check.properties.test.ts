import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { randomLogbook } from '../../../tests/replicas/random-logbook.ts';
import type { Problem, Result } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';
import { checkBatch } from './batch-check.ts';
import { checkStream } from './stream-check.ts';

const seeds = fc.integer({ min: 0, max: 1e9 });

async function* streamed<T>(items: readonly T[]): AsyncGenerator<T> {
  yield* items;
}

const found = (result: Result<unknown>): string[] =>
  result.ok ? [] : result.problems.map((p: Problem) => `${p.where}: ${p.found}: ${p.expected}`).sort();

it('a stream is refused for exactly what a batch is refused for, whatever the size of the pieces', async () => {
  let refused = 0;
  await fc.assert(
    fc.asyncProperty(seeds, fc.integer({ min: 0, max: 120 }), fc.constantFrom(1, 3, 1000), async (seed, at, size) => {
      const log = randomLogbook(seed, 120);
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

it('names no more problems than it is asked for', async () => {
  const log = randomLogbook(7, 300).map((entry, i) => ({ entry, where: `line ${i}` }));
  const result = await checkStream(
    () => streamed(log),
    () => streamed([]),
    { maxProblems: 4 },
  );
  expect(result.ok ? 0 : result.problems.length).toBe(4);
});

import { expect, it } from 'vitest';
import { told } from '../../foundation/index.ts';
import { wordsOf } from '../words/words.ts';
import type { Situation } from '../planning-problem.ts';
import { changedJobs, type Decision } from './changed-jobs.ts';

const today = 20_000;
const at = { model: { today, facts: { cultures: [] } } } as unknown as Situation;
const order = (boughtStage: 'producing' | 'young', cups: number): Decision => ({
  kind: 'buy',
  strain: 'melanogaster',
  boughtStage,
  name: 'Drosophila melanogaster',
  day: today,
  cups,
});

it('a young and a producing cup to order on one day are two jobs, each held against its own', () => {
  const before = { at, jobs: [order('producing', 1)] };
  const changes = told(changedJobs(before, { at, jobs: [order('young', 1), order('producing', 3)] }), wordsOf());
  expect(changes.map(({ change, boughtStage, cups }) => [change, boughtStage, cups])).toEqual([
    ['new', 'young', 1],
    ['more', 'producing', 3],
  ]);
  expect(changes[0]?.text).toMatch(/^New on .*: 1 × Drosophila melanogaster, young, to order\.$/);
});

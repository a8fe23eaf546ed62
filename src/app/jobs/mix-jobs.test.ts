import { expect, it } from 'vitest';
import { frogFacts, on } from '../../../tests/simulation/frog-household.ts';
import { said, sentence } from '../../foundation/index.ts';
import { wordsOf } from '../words/words.ts';
import { mixJobs } from './mix-jobs.ts';
import type { SaidJob } from './said-job.ts';

const start = (strain: string, cups: number): SaidJob => ({
  id: `${on}:start:${strain}`,
  date: on,
  kind: 'start',
  strain,
  cups,
  why: said`wanted`,
  firmness: 'firm',
});

it('cups of the same size are counted together, whatever strain they are for', () => {
  const at = { model: { facts: frogFacts() } };
  const [mix] = mixJobs(at, [start('melanogaster', 2), start('hydei', 1)]);
  expect(mix && sentence(mix.why, wordsOf())).toMatch(/^3 × (\d+) g are wanted/);
});

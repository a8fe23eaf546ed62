import { expect, it } from 'vitest';
import type { Job } from '../answers.ts';
import { joinedJobs } from './joined-jobs.ts';

const job = (date: string, kind: Job['kind'], cup: string, more: Partial<Job> = {}): Job => ({
  id: `${date}:${kind}:${cup}`,
  date,
  kind,
  strain: null,
  cultures: [cup],
  why: `${cup}.`,
  firmness: 'firm',
  ...more,
});

it('looks of one day are one walk along the shelf; starts, other days and groups stay apart', () => {
  const jobs = [
    job('2026-11-26', 'look', 'M1'),
    job('2026-11-26', 'start', 'M2'),
    job('2026-11-26', 'look', 'M3'),
    job('2026-11-26', 'look', 'frogs', { group: 'frogs' }),
    job('2026-11-27', 'look', 'M4'),
    job('2026-11-26', 'start', 'M5'),
  ];
  const before = structuredClone(jobs);
  expect(joinedJobs(jobs).map(({ kind, cultures, why }) => [kind, cultures?.join(), why])).toEqual([
    ['look', 'M1,M3', 'M1. M3.'],
    ['start', 'M2', 'M2.'],
    ['look', 'frogs', 'frogs.'],
    ['look', 'M4', 'M4.'],
    ['start', 'M5', 'M5.'],
  ]);
  expect(jobs).toEqual(before);
});

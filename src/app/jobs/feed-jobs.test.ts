import { describe, expect, it } from 'vitest';
import { day, dayNumber } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { feedJobs } from './feed-jobs.ts';

const on = day('2026-11-25');
const entry = (n: number, fields: object) =>
  ({
    id: `0198c000-0000-7000-8000-00000000000${n}`,
    on,
    recordedAt: '2026-11-25T08:00:00.000Z',
    by: 'test',
    ...fields,
  }) as Entry;
const geckos = entry(1, { kind: 'group', group: 'geckos', count: 7, fliesPerFeeding: 7, strain: 'hydei' });
const fed = entry(2, { kind: 'fed', group: 'geckos', flies: 40 });
const jobsOf = (entries: Entry[], offset: number) =>
  feedJobs(fold(entries), 'hydei', dayNumber(on), offset, [], new Map());

describe('feeding jobs', () => {
  it('ask for the whole ration of each group', () => {
    expect(jobsOf([geckos], 0).map((job) => [job.group, job.flies])).toEqual([['geckos', 49]]);
  });

  it('are gone once the feeding of that day was written down, and only of that day', () => {
    expect(jobsOf([geckos, fed], 0)).toEqual([]);
    expect(jobsOf([geckos, fed], 1)).toHaveLength(1);
  });
});

import { describe, expect, it } from 'vitest';
import { frogFacts, on } from '../../../tests/simulation/frog-household.ts';
import { addDays, dayNumber, told } from '../../foundation/index.ts';
import { fold } from '../../logbook/index.ts';
import { awaitedCups } from '../awaited-cups.ts';
import { wordsOf } from '../words/words.ts';
import { receiveJobs } from './receive-jobs.ts';

const ordered = {
  kind: 'purchase',
  purchase: 'p1',
  strain: 'melanogaster',
  cups: 1,
  on: addDays(on, -40),
  arrives: addDays(on, -37),
};
const jobsOf = (...entries: object[]) => told(receiveJobs(frogFacts(...entries), dayNumber(on)), wordsOf());

describe('a parcel that never came', () => {
  it('is asked about, today and until it is answered, and no longer counted on', () => {
    const [job] = jobsOf(ordered);
    expect(job).toMatchObject({ kind: 'receive', date: on, purchase: 'p1', cups: 1 });
    expect(job?.why).toMatch(/^Did it come, or was it cancelled\? .* bought \(purchase p1\); .* with 0 cups\.$/);
    expect(awaitedCups(frogFacts(ordered), 'melanogaster', dayNumber(on))).toEqual([]);
  });

  it('is answered by its cups, or by none', () => {
    const came = { kind: 'bought', culture: 'b', strain: 'melanogaster', ageDays: 12, purchase: 'p1', on };
    expect(jobsOf(ordered, came)).toEqual([]);
    expect(jobsOf(ordered, { ...ordered, cups: 0, on: addDays(on, -1), arrives: on })).toEqual([]);
  });
});

describe('a parcel on its way', () => {
  const coming = { ...ordered, arrives: addDays(on, 2) };
  it('is kept apart where home-grown cups stand', () => {
    expect(jobsOf(coming)[0]?.why).toContain('start none from it before');
  });
  it('may found others at once where none stand', () => {
    const entry = { ...coming, id: '0190a000-0000-7000-8000-000000000001', recordedAt: `${on}T08:00:00Z`, by: 'test' };
    const [job] = told(receiveJobs(fold([entry as never]), dayNumber(on)), wordsOf());
    expect(job?.why).toContain('While you have no cup of your own they may found others at once');
  });
});

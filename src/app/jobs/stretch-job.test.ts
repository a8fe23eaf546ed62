import { describe, expect, it } from 'vitest';
import { addDays, day, told } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { wordsOf } from '../words/words.ts';
import { stretchJob } from './stretch-job.ts';

const on = day('2026-11-25');
const group = (key: string, count: number, canWaitDays: number) => ({
  kind: 'group',
  group: key,
  name: key,
  count,
  fliesPerFeeding: 10,
  strain: 'melanogaster',
  canWaitDays,
});
const groups = [group('Hatchlings', 4, 0), group('Frogs', 6, 2)];
const jobOf = (available: number, ...more: object[]) =>
  told(
    stretchJob(
      fold(
        [...groups, ...more].map((draft, i) => ({
          on: addDays(on, -30),
          ...draft,
          id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
          recordedAt: '2026-11-24T20:00:00Z',
          by: 'test',
        })) as unknown as Entry[],
      ),
      'melanogaster',
      on,
      available,
    ),
    wordsOf(),
  );

describe('too few flies today', () => {
  it('is no job when there are enough', () => expect(jobOf(100)).toBeNull());
  it('feeds those first that cannot wait, and dates the others', () => {
    expect(jobOf(40)).toMatchObject({ kind: 'stretch', strain: 'melanogaster', flies: 40 });
    expect(jobOf(40)?.why).toBe(
      'About 40 flies for 100 wanted: Hatchlings first, all of their 40; Frogs can wait until Fri 27 Nov.',
    );
    expect(jobOf(60)?.why).toMatch(/Frogs 20 now, the rest by Fri 27 Nov/);
  });
  it('says what is missing when even they go short', () =>
    expect(jobOf(25)?.why).toMatch(/Hatchlings first, 25 of their flies.*About 15 are missing/));
  it('leaves out who was fed today', () => {
    const fed = { kind: 'fed', group: 'Hatchlings', flies: 40, on };
    expect(jobOf(60, fed)).toBeNull();
    expect(jobOf(10, fed)?.why).not.toMatch(/Hatchlings/);
  });
  it('counts feeding days that were missed, where feeding is not presumed', () => {
    const fed = { kind: 'fed', group: 'Frogs', flies: 60, on: addDays(on, -3) };
    expect(jobOf(50, fed)?.why).toMatch(/Frogs 10 now, the rest by Fri 27 Nov/);
    const written = { kind: 'household', presumeFeeding: false };
    expect(jobOf(50, fed, written)?.why).toMatch(/50 are missing for those that cannot wait/);
  });
});

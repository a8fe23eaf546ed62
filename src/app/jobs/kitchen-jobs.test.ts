import { describe, expect, it } from 'vitest';
import { day } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { demoLogbook } from '../demo/demo-logbook.ts';
import { plan } from '../plan.ts';
import { shopping } from '../shopping.ts';

const on = day('2026-11-25');
const facts = fold(
  demoLogbook(on).map((draft, i) => ({
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: `${draft.on}T20:00:00Z`,
    by: 'test',
  })) as Entry[],
);

describe('mixing in a kitchen that was counted', () => {
  it('is the same batch on the day’s list as in the kitchen', () => {
    const { jobs } = plan(facts, { on, seed: 1, scenarios: 50, weeks: 8 });
    const kitchen = shopping(facts, jobs, { on });
    if (!kitchen.ok) throw new RangeError('the demo can be shopped for');
    const { mix, until } = kitchen.value;
    const mixes = jobs.filter((job) => job.kind === 'mix');
    const soon = mixes.filter(({ date }) => date <= until).map((job) => [job.date, job.cups]);
    expect(soon.length).toBeGreaterThan(0);
    expect(mix.map((batch) => [batch.on, Math.round(batch.forCups)])).toEqual(soon);
    expect(mixes.length).toBeGreaterThan(soon.length);
  });
});

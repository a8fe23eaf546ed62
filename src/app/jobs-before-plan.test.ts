import { describe, expect, it } from 'vitest';
import { addDays, day } from '../foundation/index.ts';
import { type Entry, fold } from '../logbook/index.ts';
import { demoLogbook } from './demo/demo-logbook.ts';
import { jobsBeforePlan } from './jobs-before-plan.ts';
import { today } from './today.ts';

const on = day('2026-11-25');
const facts = fold(
  demoLogbook(on).map(
    (draft, i) =>
      ({
        id: `01900000-0000-7000-8000-${String(i).padStart(12, '0')}`,
        recordedAt: '2026-11-25T08:00:00Z',
        by: 'keeper',
        ...draft,
      }) as Entry,
  ),
);

describe('jobs that need no plan', () => {
  // Some days on, cups are past their time as well.
  const question = { on: addDays(on, 9), seed: 1, weeks: 6 };
  const before = jobsBeforePlan(facts, question);
  const whole = today(facts, question).jobs;
  const partOf = (kinds: string[]) => whole.filter(({ kind }) => kinds.includes(kind));

  it('are feeding and throwing out here', () =>
    expect(new Set(before.map(({ kind }) => kind))).toEqual(new Set(['feed', 'discard'])));

  it('are the same jobs of the whole list, in its order', () =>
    expect(before.map(({ id, flies }) => ({ id, flies }))).toEqual(
      partOf(['feed', 'discard', 'receive']).map(({ id, flies }) => ({ id, flies })),
    ));

  it('say the same of a cup to throw out', () =>
    expect(before.filter(({ kind }) => kind === 'discard')).toEqual(partOf(['discard'])));

  it('name no cup to feed from, as no plan chose one', () =>
    expect(before.filter(({ kind }) => kind === 'feed').every((job) => job.fromCultures?.length === 0)).toBe(true));
});

import { describe, expect, it } from 'vitest';
import { frogFacts, on } from '../../../tests/simulation/frog-household.ts';
import { addDays, type Day, daysBetween } from '../../foundation/index.ts';
import { planChanges } from './plan-changes.ts';
import { planChangesAnswer } from './plan-changes-answer.ts';

const question = { on, seed: 1, weeks: 8 };
const changesBy = (...more: object[]) => planChanges(frogFacts(), frogFacts(...more), on, question);

describe('what changed since the last plan', () => {
  it('is nothing after an empty note', () => {
    const answer = changesBy({ kind: 'note', text: 'all well', on });
    expect(planChangesAnswer.parse(answer)).toEqual(answer);
    expect(answer).toMatchObject({ jobs: [], reasons: [] });
  });
  it('is little after a look that finds what was expected: no cup more or less, none moved by a week', () => {
    const look = { kind: 'seen', culture: 'c3', present: ['pupae'], absent: ['adults'], on };
    const { jobs } = changesBy(look);
    expect(jobs.length).toBeLessThanOrEqual(1);
    for (const { change, before, date, cups } of jobs) {
      expect(['earlier', 'later']).toContain(change);
      expect(cups).toBe(before?.cups);
      expect(Math.abs(daysBetween(before?.date as Day, date as Day))).toBeLessThan(7);
    }
  });
  it('is more work, with its reason, when there are twice as many mouths', () => {
    const { jobs, reasons } = changesBy({
      kind: 'group',
      group: 'more',
      count: 6,
      fliesPerFeeding: 10,
      strain: 'melanogaster',
      on,
    });
    expect(reasons.join(' ')).toMatch(/^The coming four weeks want 3,360 flies of .* instead of 1,680\.$/);
    const more = jobs.filter((job) => ['new', 'more', 'earlier'].includes(job.change));
    expect(more.length).toBeGreaterThan(0);
    for (const job of jobs) expect(job.text).toMatch(/ [A-Z]\w\w \d+ \w\w\w/);
  });
  it('names the cups that were lost', () => {
    const { reasons } = changesBy({ kind: 'ended', culture: 'c4', reason: 'mould', on });
    // Lost on the day of the earlier plan: not after its evening.
    expect(reasons).toEqual([]);
    const later = planChanges(
      frogFacts(),
      frogFacts({ kind: 'ended', culture: 'c4', reason: 'mould', on: addDays(on, 1) }),
      on,
      {
        ...question,
        on: addDays(on, 1),
      },
    );
    expect(later.reasons).toContain('Lost: C4.');
  });
});

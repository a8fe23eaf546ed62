import { describe, expect, it } from 'vitest';
import { frogFacts, on } from '../../tests/simulation/frog-household.ts';
import { addDays } from '../foundation/index.ts';
import { fold } from '../logbook/index.ts';
import { type Job, todayAnswer } from './answers.ts';
import { today } from './today.ts';

const question = { on, seed: 1, weeks: 3 };
const listOf = (...more: object[]) => today(frogFacts(...more), question);
const seen = (culture: string, fields: object) => ({ kind: 'seen', culture, on, ...fields });
const sources = (jobs: Job[], kind?: string) =>
  jobs.filter((job) => kind === undefined || job.kind === kind).flatMap((job) => job.fromCultures ?? []);
const bought = (culture: string, daysAgo: number) => ({
  kind: 'bought',
  culture,
  label: culture.toUpperCase(),
  strain: 'melanogaster',
  ageDays: 13,
  on: addDays(on, -daysAgo),
});

describe('the day’s list', () => {
  const usual = listOf();
  const usualJobs = [...usual.jobs, ...usual.soon];

  it('knows its figures on the evening on which a cup was started', () => {
    const answer = listOf({ kind: 'started', culture: 'new', strain: 'melanogaster', founders: 50, on });
    expect(todayAnswer.parse(answer)).toEqual(answer);
    expect(answer.jobs.map((job) => job.why).join(' ')).not.toContain('NaN');
    expect(sources(answer.jobs)).not.toContain('new');
  });

  it('neither feeds nor starts from cups in which mites or mould were seen, but throws them out', () => {
    const [fullest, other] = [...new Set(sources(usualJobs))] as [string, string];
    const { jobs, soon, onHandFlies } = listOf(seen(fullest, { mites: true }), seen(other, { mould: true }));
    expect(sources([...jobs, ...soon])).not.toContain(fullest);
    expect(sources([...jobs, ...soon])).not.toContain(other);
    expect(jobs.filter((job) => job.kind === 'discard').flatMap((job) => job.cultures)).toEqual(
      expect.arrayContaining([fullest, other]),
    );
    expect(onHandFlies.melanogaster?.p50).toBeLessThan(usual.onHandFlies.melanogaster?.p50 ?? 0);
  });

  it('foretells nothing of a cup for after the day on which it is thrown out', () => {
    const events = usual.cultures.flatMap((cup) => cup.nextEvents.map((event) => ({ ...event, out: cup.spentOn })));
    expect(events.length).toBeGreaterThan(10);
    for (const { p05, p50, p95, out } of events) expect([p05, p50, p95, out]).toEqual([p05, p50, p95, out].toSorted());
    expect(events.filter(({ event, p50, out }) => event !== 'throw out' && p50 >= out)).toEqual([]);
  });

  it('starts none from a cup in which winged flies were seen, and feeds from it', () => {
    const founders = sources(usualJobs, 'start');
    expect(founders.length).toBeGreaterThan(0);
    const { jobs, soon, onHandFlies } = listOf(...founders.map((culture) => seen(culture, { winged: 2 })));
    for (const culture of founders) expect(sources([...jobs, ...soon], 'start')).not.toContain(culture);
    expect(onHandFlies).toEqual(usual.onHandFlies);
  });

  it('asks for a look at a cup in quarantine a week after it came or was looked at, not every day', () => {
    const looked = (culture: string, daysAgo: number) =>
      seen(culture, { present: ['adults'], on: addDays(on, -daysAgo) });
    const { jobs } = listOf(
      bought('early', 3),
      bought('due', 9),
      bought('looked', 9),
      looked('looked', 2),
      bought('due-again', 9),
      looked('due-again', 8),
    );
    const looks = jobs.filter((job) => job.kind === 'look' && job.why.includes('quarantine'));
    expect(looks.flatMap((job) => job.cultures)).toEqual(['due', 'due-again']);
    expect(looks[0]?.why).toBe('DUE: in quarantine until Mon 30 Nov; look for mites at its lid and rim.');
  });

  it('says that nothing is there when there is nothing to feed', () => {
    const group = { kind: 'group', group: 'frogs', count: 6, fliesPerFeeding: 10, strain: 'melanogaster', on };
    const id = '0190a000-0000-7000-8000-000000000001';
    const { jobs } = today(fold([{ ...group, id, recordedAt: '2026-11-24T20:00:00Z', by: 'test' }] as never), question);
    expect(jobs.filter((job) => job.kind === 'feed')).toEqual([]);
    expect(jobs.find((job) => job.kind === 'stretch')?.why).toMatch(
      /^No flies for the 60 wanted: frogs can wait until Thu 26 Nov\. Buy flies to feed from a shop or another keeper/,
    );
  });
});

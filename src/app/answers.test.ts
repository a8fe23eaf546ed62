import { describe, expect, it } from 'vitest';
import { addDays, type Day, day } from '../foundation/index.ts';
import { type Entry, type EntryDraft, fold } from '../logbook/index.ts';
import { forecastAnswer, planAnswer, todayAnswer } from './answers.ts';
import { forecast } from './forecast.ts';
import { plan } from './plan.ts';
import { today } from './today.ts';

const on = day('2026-11-25');
const question = { on, seed: 5, scenarios: 200, weeks: 8 };

const entries = (drafts: object[]) =>
  drafts.map((draft, i) => ({
    on: addDays(on, -30),
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: '2026-11-24T20:00:00Z',
    by: 'test',
  })) as unknown as Entry[];
const facts = (drafts: object[]) => fold(entries(drafts));

const settings = [
  { kind: 'household', name: 'Test', workWeekdays: ['mon', 'thu', 'sat'] },
  { kind: 'place', place: 'shelf', temperatureC: 23 },
  { kind: 'group', group: 'frogs', name: 'Frogs', count: 8, fliesPerFeeding: 12, strain: 'melanogaster' },
];
const cup = (culture: string, daysAgo: number): Partial<EntryDraft> & object => ({
  kind: 'started',
  culture,
  strain: 'melanogaster',
  place: 'shelf',
  founders: 50,
  on: addDays(on, -daysAgo),
});
const shelf = [cup('a', 26), cup('b', 19), cup('c', 12), cup('d', 5)];
const seen = (culture: string, fields: object) => ({ kind: 'seen', culture, on, ...fields });

describe('today', () => {
  const answer = today(facts([...settings, ...shelf]), question);
  it('has the shape that the doors promise', () => expect(todayAnswer.parse(answer)).toEqual(answer));
  it('feeds the group from cups that hold flies, and shows every living cup', () => {
    const feed = answer.jobs.find((job) => job.kind === 'feed');
    expect(feed?.flies).toBe(96);
    expect(feed?.fromCultures?.length).toBeGreaterThan(0);
    expect(answer.cultures.map((c) => c.id)).toEqual(['a', 'b', 'c', 'd']);
    expect(answer.cultures.at(-1)?.onHandFlies.p95).toBe(0);
  });
  it('believes a count made today: the cup is taken to hold about that many', () => {
    const counted = today(facts([...settings, ...shelf, seen('b', { count: 40 })]), question);
    const before = answer.cultures.find((c) => c.id === 'b')?.onHandFlies.p50 ?? 0;
    const after = counted.cultures.find((c) => c.id === 'b')?.onHandFlies ?? { p05: 0, p50: 0, p95: 0 };
    expect(before).toBeGreaterThan(100);
    expect(after.p50).toBeLessThan(0.6 * before);
    expect(after.p95).toBeGreaterThan(40);
  });
  it('warns of mites', () => {
    const mites = today(facts([...settings, ...shelf, seen('a', { mites: true })]), question);
    expect(mites.cultures.find((c) => c.id === 'a')?.warnings.join()).toContain('Mites');
  });
  it('moves every coming event when the room is cooler', () => {
    const cool = [settings[0], { kind: 'place', place: 'shelf', temperatureC: 19 }, settings[2]] as object[];
    const answers = [answer, today(facts([...cool, ...shelf]), question)];
    const events = answers.map((a) => a.cultures.find((c) => c.id === 'd')?.nextEvents ?? []);
    for (const { event, p50 } of events[0] ?? []) {
      const later = events[1]?.find((e) => e.event === event)?.p50;
      expect(later !== undefined && later > p50, event).toBe(true);
    }
  });
});

describe('forecast', () => {
  const logbook = [...settings, ...shelf];
  const answer = forecast(facts(logbook), question);
  it('has the shape that the doors promise', () => expect(forecastAnswer.parse(answer)).toEqual(answer));
  it('is the same to the last digit for the same log, day and seed, whatever order entries came in', () => {
    const reversed = fold(entries(logbook).reverse());
    expect(forecast(reversed, question)).toEqual(answer);
  });
  it('begins with the flies that today shows: nothing that emerged is counted twice', () => {
    const shown = today(facts(logbook), { on, seed: 5 }).onHandFlies.melanogaster?.p50 ?? 0;
    const [first] = forecast(facts(logbook), { ...question, scenarios: 1000 }).days;
    expect(shown).toBeGreaterThan(100);
    // Medians of 1,000 draws of the same belief; an extra day's emergence would be a fifth more.
    expect(Math.abs((first?.onHandFlies.p50 ?? 0) / shown - 1)).toBeLessThan(0.06);
  });
  it('falls when flies are harvested, and ends in shortage when nothing is started any more', () => {
    const emptied = { kind: 'harvested', culture: 'b', flies: 300, emptied: true, on, purpose: 'given' };
    const after = forecast(facts([...logbook, emptied]), question);
    expect(after.days[1]?.onHandFlies.p50).toBeLessThan(answer.days[1]?.onHandFlies.p50 ?? 0);
    const idle = forecast(facts(logbook), { ...question, starts: 'nothing' });
    expect(idle.days.at(-1)?.serviceLevel).toBe(0);
    expect(idle.firstRiskyDay).not.toBeNull();
  });
});

describe('plan', () => {
  it('starts cups on work days only, from cups that exist, each with its reason', () => {
    const answer = plan(facts([...settings, ...shelf]), question);
    expect(planAnswer.parse(answer)).toEqual(answer);
    const starts = answer.jobs.filter((job) => job.kind === 'start');
    expect(starts.length).toBeGreaterThan(0);
    for (const job of starts) {
      expect([1, 4, 6]).toContain(new Date(`${job.date}T12:00:00Z`).getUTCDay());
      expect(job.why.length).toBeGreaterThan(20);
    }
    expect(answer.lowerBoundCultures).toBeLessThanOrEqual(answer.culturesPlanned + answer.boughtCultures);
  });
  it('mixes medium once a day, for all cups of that day', () => {
    const two = [...settings, { ...settings[2], group: 'newts', strain: 'hydei' }, ...shelf];
    const { jobs } = plan(facts(two), question);
    const mixes = jobs.filter((job) => job.kind === 'mix');
    const cupsOn = (date: string) =>
      jobs.filter((job) => job.kind === 'start' && job.date === date).reduce((sum, job) => sum + (job.cups ?? 0), 0);
    expect(new Set(mixes.map((job) => job.date)).size).toBe(mixes.length);
    for (const mix of mixes) expect(mix.cups).toBe(cupsOn(mix.date));
    expect(mixes.length).toBeGreaterThan(0);
  });
  it('starts none while everyone is away', () => {
    const away = { kind: 'absence', until: addDays(on, 12), sitterFeeds: true, on: addDays(on, 1) };
    const answer = plan(facts([...settings, ...shelf, away]), question);
    const starts = answer.jobs.filter((job) => job.kind === 'start').map((job) => job.date as Day);
    expect(starts.every((date) => date <= on || date > addDays(on, 12))).toBe(true);
  });
  it('buys for a household that has animals and no cup, and says when home-grown flies take over', () => {
    const answer = plan(facts(settings), question);
    // Nothing is on hand: the next parcel is ordered today, not on the last day that still makes it.
    expect(answer.jobs.some((job) => job.kind === 'buy' && job.date === on)).toBe(true);
    expect(answer.boughtCultures).toBeGreaterThan(0);
    expect(answer.homeGrownFrom.melanogaster ?? '').toMatch(/^2026-12|^2027/);
  });
});

describe('a parcel on its way', () => {
  const first = plan(facts(settings), question).jobs.filter((job) => job.kind === 'buy' && job.date === on);
  const ordered = first.map((job, i) => ({
    kind: 'purchase',
    purchase: `p${i}`,
    strain: 'melanogaster',
    cups: job.cups,
    stage: job.boughtStage,
    arrives: job.arrives,
    on,
  }));
  const arrives = first[0]?.arrives as Day;
  const after = plan(facts([...settings, ...ordered]), question);
  const cupsOf = (jobs: typeof first) => jobs.reduce((sum, job) => sum + (job.cups ?? 0), 0);

  it('is not ordered again for the same delivery', () => {
    expect(cupsOf(first)).toBeGreaterThanOrEqual(3);
    const again = after.jobs.filter((job) => job.kind === 'buy' && job.arrives === arrives);
    expect(cupsOf(again)).toBe(0);
  });
  it('is a job on the day it comes, once', () => {
    const unpack = after.jobs.filter((job) => job.kind === 'receive' && job.date === arrives);
    expect(cupsOf(unpack)).toBe(cupsOf(first));
  });
  it('is no longer awaited when its cups were written down as bought, with or without its name', () => {
    const came = Array.from({ length: cupsOf(first) }, (_, i) => ({
      kind: 'bought',
      culture: `b${i}`,
      strain: 'melanogaster',
      ageDays: 12,
      on: arrives,
    }));
    expect(facts([...settings, ...ordered, ...came]).purchases).toEqual([]);
    const missing = facts([...settings, ...ordered, ...came.slice(1)]).purchases;
    expect(missing.reduce((sum, p) => sum + p.cups, 0)).toBe(1);
  });
});

describe('a place where no fly develops', () => {
  const cold = [settings[0], { kind: 'place', place: 'shelf', temperatureC: -5 }, settings[2]] as object[];
  const answer = plan(facts(cold), question);
  it('is said, and nothing is started or bought for it', () => {
    expect(answer.warnings[0]).toContain('does not multiply');
    expect(answer.jobs.filter((job) => ['start', 'buy', 'receive'].includes(job.kind))).toEqual([]);
    expect(today(facts(cold), question).warnings[0]).toContain('(about -5 °C)');
    const { warnings } = today(facts(cold), { ...question, degrees: 'F' });
    expect(warnings[0]).toMatch(/\(about 23 °F\).* 64 to 79 °F\./);
  });
  it('promises nothing', () => {
    expect(answer.worstDayServiceLevel).toBe(0);
    expect(answer.chanceOfNoShortfall).toBe(0);
  });
});

describe('a shelf that is small', () => {
  it('is not filled beyond what it holds by purchases of one day', () => {
    const small = [{ ...settings[0], shelfCups: 4 }, settings[1], { ...settings[2], count: 400 }] as object[];
    for (const job of plan(facts(small), question).jobs.filter((j) => j.kind === 'buy')) {
      expect(job.cups).toBeLessThanOrEqual(4);
    }
  });
});

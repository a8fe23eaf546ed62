import { describe, expect, it } from 'vitest';
import { end, entry, harvest, start } from '../../../tests/fixtures/entries-written.ts';
import { day } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';
import { fold } from './fold.ts';

describe('an empty logbook', () => {
  const facts = fold([]);
  it('has a household that can be planned for', () => {
    expect(facts.household).toMatchObject({ serviceLevel: 0.99, workWeekdays: ['wed', 'sun'], presumeFeeding: true });
    expect(facts.places).toEqual([
      { place: 'home', name: 'Home', expected: { allYearC: 22 }, cupOffsetC: 0, readings: [] },
    ]);
  });
  it('has nothing else', () => {
    expect(facts).toMatchObject({ cultures: [], groups: [], feedings: [], problems: [], lastEntryOn: null });
  });
});

describe('warmth in cups and loggers', () => {
  const place = entry('2026-03-01', 'place', { place: 'shelf' });
  it('a cup read beside its shelf is a pair, and no reading of the room', () => {
    const pair = entry('2026-03-02', 'temperature', { place: 'shelf', cupC: 25, shelfC: 22.5 });
    const both = entry('2026-03-03', 'temperature', { place: 'shelf', meanC: 22, cupC: 24, shelfC: 22 });
    const [shelf] = fold([place, both, pair]).places;
    expect(shelf?.cupPairs).toEqual([
      { on: '2026-03-02', cupC: 25, shelfC: 22.5 },
      { on: '2026-03-03', cupC: 24, shelfC: 22 },
    ]);
    expect(shelf?.readings).toEqual([{ on: '2026-03-03', meanC: 22, minC: null, maxC: null }]);
  });
  it('a pair at a place that no entry describes is a problem, once', () => {
    const lost = entry('2026-03-02', 'temperature', { place: 'attic', cupC: 25, shelfC: 22 });
    expect(fold([place, lost]).problems).toMatchObject([{ entryId: lost.id }]);
  });
  it('half a pair, or a cup that boils, is refused', () => {
    const wrong = [{ cupC: 25 }, { shelfC: 22 }, { cupC: 45, shelfC: 20 }];
    for (const fields of wrong) {
      expect(() => entry('2026-03-02', 'temperature', { place: 'shelf', ...fields })).toThrow(/cupC/);
    }
  });
  it('what is said later of a logger is the whole of it', () => {
    const first = { logger: 'l1', headings: ['t', 'c'], place: 'shelf', temperature: 'c', timeZone: '+01:00' };
    const later = entry('2026-03-02', 'logger', { logger: 'l1', headings: ['t', 'c'], unit: 'F' });
    const { loggers } = fold([place, entry('2026-03-01', 'logger', first), later]);
    expect(loggers).toMatchObject([{ logger: 'l1', place: null, temperature: null, timeZone: null, unit: 'F' }]);
  });
});

describe('settings', () => {
  it('a later entry overrides the fields that it gives, in parts too', () => {
    const { household } = fold([
      entry('2026-03-02', 'household', { purchase: { leadDays: 5 }, workWeekdays: ['mon'] }),
      entry('2026-03-01', 'household', { name: 'Pond', purchase: { leadDays: 2, pricePerCup: 9 }, workWeekdays: [] }),
    ]);
    expect(household.name).toBe('Pond');
    expect(household.workWeekdays).toEqual(['mon']);
    expect(household.purchase).toMatchObject({ leadDays: 5, pricePerCup: 9, quarantineDays: 14 });
  });

  it('several readings of a day become one', () => {
    const facts = fold([
      entry('2026-03-01', 'place', { place: 'shelf', temperatureC: 22 }),
      entry('2026-03-02', 'temperature', { place: 'shelf', meanC: 20 }),
      entry('2026-03-02', 'temperature', { place: 'shelf', minC: 18, maxC: 26 }),
    ]);
    expect(facts.places[0]?.readings).toEqual([{ on: '2026-03-02', meanC: 21, minC: 18, maxC: 26 }]);
  });

  it('a cup takes what it lacks from its container, and a container from the usual one', () => {
    const facts = fold([
      entry('2026-03-01', 'container', { container: 'jar', mediumMassG: 90 }),
      start('2026-03-02', 'M1', { container: 'jar' }),
      start('2026-03-02', 'M2', { mediumMassG: 200 }),
    ]);
    expect(facts.cultures.map((c) => [c.mediumMassG, c.surfaceCm2])).toEqual([
      [90, 85],
      [200, 85],
    ]);
  });
});

describe('of two entries of one day', () => {
  const named = (name: string, id: number, recordedAt: string): Entry => ({
    id: `019f0001-0000-7000-8000-${String(id).padStart(12, '0')}`,
    kind: 'household',
    on: day('2026-03-01'),
    recordedAt,
    by: 'Ana',
    name,
  });
  const nameAfter = (...log: Entry[]) => fold(log).household.name;

  it('the one recorded later holds, whatever its id', () => {
    const [a, b] = [named('first', 2, '2026-03-01T10:00:00Z'), named('second', 1, '2026-03-01T10:00:00.5Z')];
    expect([nameAfter(a, b), nameAfter(b, a)]).toEqual(['second', 'second']);
  });
  it('recorded at the same instant, the one with the greater id', () => {
    const [a, b] = [named('first', 1, '2026-03-01T10:00:00Z'), named('second', 2, '2026-03-01T10:00:00.000Z')];
    expect([nameAfter(a, b), nameAfter(b, a)]).toEqual(['second', 'second']);
  });
  it('a correction of the earlier does not make it the later', () => {
    const [a, b] = [named('first', 1, '2026-03-01T10:00:00Z'), named('second', 2, '2026-03-01T11:00:00Z')];
    const fix = entry('2026-03-09', 'amended', { amends: a.id, replacement: { kind: 'household', name: 'corrected' } });
    expect(nameAfter(a, b, fix)).toBe('second');
  });
  it('with the same id, the same one holds in either order', () => {
    const [a, b] = [named('one', 1, '2026-03-01T10:00:00Z'), named('other', 1, '2026-03-01T10:00:00Z')];
    expect(fold([a, b])).toEqual(fold([b, a]));
  });
});

describe('cultures', () => {
  it('a bought cup is as old as it was when it came, and in quarantine', () => {
    const facts = fold([
      start('2026-03-01', 'M1'),
      entry('2026-03-20', 'bought', { culture: 'H1', strain: 'hydei', ageDays: 18 }),
    ]);
    expect(facts.cultures[1]).toMatchObject({
      on: '2026-03-20',
      startedOn: '2026-03-02',
      quarantinedUntil: '2026-04-03',
      founders: 50,
    });
  });

  it('a cup bought where no home-grown one stood is not in quarantine, unless its entry says so', () => {
    const came = { strain: 'hydei', ageDays: 18 };
    const untilOf = (...more: Parameters<typeof fold>[0][]) =>
      fold([
        ...more.flatMap((entries) => [...entries]),
        entry('2026-03-20', 'bought', { culture: 'H1', ...came }),
      ]).cultures.find(({ culture }) => culture === 'H1')?.quarantinedUntil;
    const kept = entry('2026-03-20', 'bought', { culture: 'H2', ...came, quarantineUntil: '2026-03-30' });
    expect(untilOf([])).toBeNull();
    expect(fold([kept]).cultures[0]?.quarantinedUntil).toBe('2026-03-30');
    // The first home-grown cup, started of it on the same day, changes nothing; an older one does until it ends.
    expect(untilOf([start('2026-03-20', 'M1')])).toBeNull();
    expect(untilOf([start('2026-03-19', 'M1')])).toBe('2026-04-03');
    const ended = entry('2026-03-19', 'ended', { culture: 'M1', reason: 'mites' });
    expect(untilOf([start('2026-03-01', 'M1'), ended])).toBeNull();
  });

  it('founders leave the cups that they come from', () => {
    const facts = fold([
      start('2026-03-01', 'M1'),
      start('2026-03-01', 'M2'),
      harvest('2026-03-25', 'M2', 7),
      start('2026-03-20', 'M3', { founders: 25, fromCultures: ['M1', 'M2'] }),
    ]);
    const taken = facts.cultures.map((c) => c.harvests.map((h) => [h.flies, h.purpose]));
    expect(taken).toEqual([
      [[13, 'founders']],
      [
        [12, 'founders'],
        [7, 'feeding'],
      ],
      [],
    ]);
  });

  it('a cup is where it was moved last on a day', () => {
    const facts = fold([
      entry('2026-03-01', 'place', { place: 'shelf' }),
      entry('2026-03-01', 'place', { place: 'cellar' }),
      start('2026-03-02', 'M1', { place: 'shelf' }),
      entry('2026-03-05', 'moved', { culture: 'M1', place: 'shelf', time: '19:00' }),
      entry('2026-03-05', 'moved', { culture: 'M1', place: 'cellar', time: '08:00' }),
      entry('2026-03-07', 'moved', { culture: 'M1', place: 'cellar' }),
    ]);
    expect(facts.cultures[0]?.places).toEqual([
      { from: '2026-03-02', place: 'shelf' },
      { from: '2026-03-05', place: 'shelf' },
      { from: '2026-03-07', place: 'cellar' },
    ]);
  });

  it('on the day of its start and of its end a cup may be harvested', () => {
    const facts = fold([
      start('2026-03-01', 'M1'),
      harvest('2026-03-01', 'M1'),
      end('2026-04-01', 'M1'),
      harvest('2026-04-01', 'M1'),
    ]);
    expect(facts.problems).toEqual([]);
    expect(facts.cultures[0]?.harvests).toHaveLength(2);
  });
});

describe('groups', () => {
  const base = { group: 'frogs', strain: 'melanogaster', fliesPerFeeding: 12 };
  it('feeding days go on until they are given anew, and a count of 0 ends the group', () => {
    const facts = fold([
      entry('2026-03-01', 'group', { ...base, count: 4, feedingWeekdays: ['mon', 'thu'] }),
      entry('2026-03-10', 'group', { ...base, count: 9, from: '2026-05-01' }),
      entry('2026-03-11', 'group', { ...base, count: 0, from: '2026-08-01' }),
    ]);
    expect(facts.groups[0]?.periods.map((p) => [p.from, p.count, p.feedingWeekdays.length])).toEqual([
      ['2026-03-01', 4, 2],
      ['2026-05-01', 9, 2],
      ['2026-08-01', 0, 2],
    ]);
  });
  it('a period written again takes the place of the first', () => {
    const facts = fold([
      entry('2026-03-01', 'group', { ...base, count: 4, from: '2026-05-01' }),
      entry('2026-03-10', 'group', { ...base, count: 9, from: '2026-05-01' }),
    ]);
    expect(facts.groups[0]?.periods.map((p) => p.count)).toEqual([9]);
  });
});

it('looking back leaves out what happened later', () => {
  const log = [
    start('2026-03-01', 'M1'),
    harvest('2026-03-15', 'M1'),
    harvest('2026-03-20', 'M1'),
    end('2026-04-01', 'M1'),
  ];
  const then = fold(log, { until: log[1]?.on as never });
  expect(then.cultures[0]).toMatchObject({ ended: null, harvests: [{ on: '2026-03-15' }] });
  expect(then.lastEntryOn).toBe('2026-03-15');
});

it('stock is as last counted; a price stays until a new one, or another unit', () => {
  const count = (on: string, fields: object) => entry(on, 'stock', { item: 'agar', unit: 'g', ...fields });
  const log = [count('2026-03-01', { amount: 500, pricePerUnit: 0.04 }), count('2026-03-09', { amount: 120 })];
  expect(fold(log).stock).toEqual([{ item: 'agar', amount: 120, unit: 'g', on: '2026-03-09', pricePerUnit: 0.04 }]);
  const inKg = fold([...log, count('2026-03-10', { amount: 1, unit: 'kg' })]).stock;
  expect(inKg.map((s) => s.pricePerUnit)).toEqual([null]);
});

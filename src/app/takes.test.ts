import { describe, expect, it } from 'vitest';
import { addDays, day, dayNumber } from '../foundation/index.ts';
import { type Entry, fold } from '../logbook/index.ts';
import { cupHistories } from './evidence.ts';
import { householdModel } from './household-model.ts';
import type { Take } from './cup-history.ts';

const on = day('2026-11-25');
const ago = (days: number) => addDays(on, -days);

function takesOf(culture: string, more: object[], presumeFeeding = false): Take[] {
  const drafts: object[] = [
    { kind: 'household', name: 'Test', presumeFeeding, on: ago(60) },
    { kind: 'place', place: 'shelf', temperatureC: 23, on: ago(60) },
    {
      kind: 'group',
      group: 'frogs',
      name: 'Frogs',
      count: 4,
      fliesPerFeeding: 10,
      strain: 'melanogaster',
      on: ago(60),
    },
    { kind: 'started', culture: 'old', strain: 'melanogaster', place: 'shelf', founders: 50, on: ago(24) },
    { kind: 'started', culture: 'young', strain: 'melanogaster', place: 'shelf', founders: 50, on: ago(18) },
    ...more,
  ];
  const entries = drafts.map((draft, i) => ({
    ...draft,
    id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
    recordedAt: '2026-11-24T20:00:00Z',
    by: 'test',
  })) as Entry[];
  const histories = cupHistories(householdModel(fold(entries), on, 0));
  return (histories.get('melanogaster') ?? []).find((cup) => cup.culture.culture === culture)?.takes ?? [];
}
const amounts = (takes: Take[]) => takes.map(({ day: at, flies }) => [dayNumber(on) - at, flies]);

describe('flies taken out of cups', () => {
  it('counts founders once, though the start of a cup and the giver both speak of them', () => {
    const start = {
      kind: 'started',
      culture: 'new',
      strain: 'melanogaster',
      place: 'shelf',
      founders: 50,
      fromCultures: ['old'],
      on: ago(5),
    };
    expect(amounts(takesOf('old', [start]))).toEqual([[5, 50]]);
  });
  it('shares founders between the cups that gave them', () => {
    const start = {
      kind: 'started',
      culture: 'new',
      strain: 'melanogaster',
      founders: 50,
      fromCultures: ['old', 'young'],
      on: ago(5),
    };
    expect(amounts(takesOf('young', [start]))).toEqual([[5, 25]]);
  });
  it('counts flies once that are written out of the cup and into the animals', () => {
    const harvested = { kind: 'harvested', culture: 'old', flies: 40, on: ago(3) };
    const fed = { kind: 'fed', group: 'frogs', flies: 40, fromCultures: ['old'], on: ago(3) };
    expect(amounts(takesOf('old', [harvested, fed]))).toEqual([[3, 40]]);
    expect(amounts(takesOf('old', [fed]))).toEqual([[3, 40]]);
  });
  it('turns a weight into flies by the mass of the cup’s own flies', () => {
    const [take] = takesOf('old', [{ kind: 'harvested', culture: 'old', weightMg: 90, on: ago(3) }]);
    // Published fresh masses of melanogaster at 25 C: .77 mg male, 1.17 mg female; crowded flies are lighter.
    expect(take?.flies).toBeGreaterThan(90 / 1.17);
    expect(take?.flies).toBeLessThan(90 / 0.45);
  });
});

describe('feeding that nobody wrote down', () => {
  it('is presumed of the oldest cup that holds flies, until yesterday, and not where a day has a note', () => {
    const takes = takesOf('old', [{ kind: 'harvested', culture: 'old', flies: 25, on: ago(3) }], true);
    const days = new Map(takes.map((take) => [dayNumber(on) - take.day, take]));
    expect(days.get(3)).toMatchObject({ flies: 25, presumed: false });
    expect(days.get(2)).toMatchObject({ flies: 40, presumed: true });
    expect(days.get(1)).toMatchObject({ flies: 40, presumed: true });
    expect(days.has(0)).toBe(false);
    expect(takesOf('young', [], true).filter((take) => dayNumber(on) - take.day === 1)).toEqual([]);
  });
  it('is not presumed where the household says that it writes everything down', () => {
    expect(takesOf('old', [])).toEqual([]);
  });
  it('asks a young cup for nothing while an older one was seen to hold far more than the books say', () => {
    const hungry = {
      kind: 'group',
      group: 'toads',
      name: 'Toads',
      count: 1,
      fliesPerFeeding: 160,
      strain: 'melanogaster',
      on: ago(60),
    };
    const looks = [8, 6, 4, 2].map((days) => ({ kind: 'seen', culture: 'old', count: 1500, on: ago(days) }));
    const asked = (more: object[]) =>
      takesOf('young', [hungry, ...more], true).filter((t) => t.presumed && dayNumber(on) - t.day <= 8);
    expect(asked([]).length).toBeGreaterThan(0);
    expect(asked(looks)).toEqual([]);
  });
  it('presumes together no more than the ration of a day', () => {
    const counts = ['old', 'young'].flatMap((culture) => [
      { kind: 'seen', culture, count: 500, on: ago(4) },
      { kind: 'seen', culture, count: 450, on: ago(2) },
    ]);
    const takes = ['old', 'young'].flatMap((culture) => takesOf(culture, counts, true)).filter((t) => t.presumed);
    for (const { day: at } of takes) {
      const sum = takes.filter((t) => t.day === at).reduce((flies, t) => flies + (t.flies ?? 0), 0);
      expect(sum).toBeLessThanOrEqual(40.001);
    }
  });
});

/** A small household for tests: six frogs, seven cups of one strain, work on two weekdays. */
import { addDays, day } from '../../src/foundation/index.ts';
import { type Entry, type Facts, fold } from '../../src/logbook/index.ts';

export const on = day('2026-11-25');
export const frogDrafts = [
  {
    kind: 'household',
    workWeekdays: ['wed', 'sat'],
    shelfCups: 50,
    weights: { perCup: 1, perSession: 1, perBoughtCup: 6 },
  },
  { kind: 'place', place: 'room', temperatureC: 23 },
  { kind: 'group', group: 'frogs', count: 6, fliesPerFeeding: 10, strain: 'melanogaster', canWaitDays: 0 },
  ...[25, 21, 18, 14, 11, 7, 4].map((ago, i) => ({
    kind: 'started',
    culture: `c${i}`,
    label: `C${i}`,
    strain: 'melanogaster',
    place: 'room',
    founders: 50,
    on: addDays(on, -ago),
  })),
];
export function frogFacts(...more: object[]): Facts {
  return fold(
    [...frogDrafts, ...more].map((draft, i) => ({
      on: addDays(on, -30),
      ...draft,
      id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
      recordedAt: '2026-11-24T20:00:00Z',
      by: 'test',
    })) as unknown as Entry[],
  );
}

export const facts = frogFacts();

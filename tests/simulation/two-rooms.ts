/** A household for tests with a warm shelf and a cellar: eight frogs, cups of one strain, work on two weekdays. */
import { addDays, day } from '../../src/foundation/index.ts';
import { type Entry, type Facts, fold } from '../../src/logbook/index.ts';

export const on = day('2026-11-25');

export interface TwoRooms {
  cellarC: number;
  shelfC: number;
  /** Where the cups stand, and how many days ago each was started. */
  stand: 'cellar' | 'shelf';
  startedDaysAgo: number[];
}

/** Two cups that give for some days, with what is in them counted, and young ones that come a little late. */
export const lateCups: TwoRooms = {
  cellarC: 19,
  shelfC: 26,
  stand: 'cellar',
  startedDaysAgo: [33, 32, 10, 10, 9, 9, 6, 4],
};
export const lateLooks = lateCups.startedDaysAgo.map((ago, i) => ({
  kind: 'seen',
  culture: `c${i}`,
  on,
  ...(ago > 20 ? { present: ['adults'], count: 300 } : { present: ['larvae'], absent: ['adults'] }),
}));

/** Cups that all give at once, before days on which none can be started. */
export const manyAtOnce: TwoRooms = { cellarC: 18, shelfC: 25, stand: 'shelf', startedDaysAgo: [14, 13, 12, 9, 8, 7] };
export const awayDays = { kind: 'absence', on, until: addDays(on, 12), sitterFeeds: true };

export function twoRooms({ cellarC, shelfC, stand, startedDaysAgo }: TwoRooms): object[] {
  return [
    {
      kind: 'household',
      workWeekdays: ['wed', 'sat'],
      shelfCups: 50,
      presumeFeeding: true,
      purchase: { leadDays: 3, deliveryWeekdays: ['wed', 'sat'], quarantineDays: 14, pricePerCup: 6 },
      weights: { perCup: 1, perSession: 1, perBoughtCup: 6 },
    },
    { kind: 'place', place: 'cellar', name: 'Cellar', temperatureC: cellarC },
    { kind: 'place', place: 'shelf', name: 'Warm shelf', temperatureC: shelfC },
    {
      kind: 'group',
      group: 'frogs',
      name: 'Frogs',
      count: 8,
      fliesPerFeeding: 10,
      strain: 'melanogaster',
      canWaitDays: 0,
    },
    ...startedDaysAgo.map((ago, i) => ({
      kind: 'started',
      culture: `c${i}`,
      label: `C${i}`,
      strain: 'melanogaster',
      place: stand,
      founders: 50,
      on: addDays(on, -ago),
    })),
  ].map((draft) => ({ on: addDays(on, -50), ...draft }));
}

export function twoRoomsFacts(rooms: TwoRooms, ...more: object[]): Facts {
  return fold(
    [...twoRooms(rooms), ...more].map((draft, i) => ({
      ...draft,
      id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
      recordedAt: '2026-11-25T20:00:00Z',
      by: 'test',
    })) as unknown as Entry[],
  );
}

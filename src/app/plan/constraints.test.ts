import { describe, expect, it } from 'vitest';
import { addDays, day } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { today } from '../today.ts';
import { situation } from '../planning-problem.ts';

const on = day('2026-11-25');
const settings = [
  {
    kind: 'household',
    workWeekdays: ['wed', 'sat'],
    backup: { cupsPerStrain: 6, inTwoPlaces: true },
    leastFounders: 80,
  },
  { kind: 'place', place: 'room', name: 'Room', temperatureC: 23 },
  { kind: 'place', place: 'cellar', name: 'Cellar', temperatureC: 18 },
  {
    kind: 'group',
    group: 'frogs',
    name: 'Frogs',
    count: 4,
    fliesPerFeeding: 10,
    strain: 'melanogaster',
    canWaitDays: 0,
  },
  {
    kind: 'group',
    group: 'newts',
    name: 'Newts',
    count: 5,
    fliesPerFeeding: 6,
    strain: 'melanogaster',
    canWaitDays: 2,
  },
  ...[18, 17, 14, 10].map((ago, i) => ({
    kind: 'started',
    culture: `c${i}`,
    label: `C${i}`,
    strain: 'melanogaster',
    place: 'room',
    founders: 50,
    on: addDays(on, -ago),
  })),
];
const factsOf = (...more: object[]) =>
  fold(
    [...settings, ...more].map((draft, i) => ({
      on: addDays(on, -30),
      ...draft,
      id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
      recordedAt: '2026-11-24T20:00:00Z',
      by: 'test',
    })) as unknown as Entry[],
  );
const question = { on, seed: 1 };

describe('what the keeper asked for', () => {
  const { problem } = situation(factsOf(), question, 8);
  const strain = problem.strains[0];
  it('reaches the planner: backup cups, least founders, patience of each group', () => {
    expect(strain).toMatchObject({ backupCups: 6, foundersPerCup: 80 });
    expect(strain?.groups?.map(({ group, waitDays }) => [group, waitDays])).toEqual([
      ['frogs', 0],
      ['newts', 2],
    ]);
    expect((strain?.groups ?? []).map(({ flies }) => flies[3])).toEqual([40, 30]);
    expect(strain?.wantedFlies[3]).toBe(70);
  });
  it('has failures come at the ages of mould and mites: most in the first fortnight, fewer at mid-life', () => {
    const failed = strain?.uncertainty.failure.failedBefore ?? new Float64Array(1);
    expect(failed[0]).toBe(0);
    expect(failed.at(-1)).toBe(1);
    const within = (from: number, until: number) => (failed[until] as number) - (failed[from] as number);
    // Half of the failures are mould, most of it in the first fortnight (docs/models/failure-and-mites.md).
    expect(within(0, 14)).toBeGreaterThan(0.5);
    expect(within(14, 21)).toBeLessThan(0.6 * within(4, 11));
  });
  it('limits today to the clean cups in the house, and tomorrow to those that can be washed', () => {
    const counted = { kind: 'stock', item: 'cup', amount: 2, unit: 'piece', on };
    const dirty = { ...counted, item: 'cup-dirty', amount: 5 };
    expect(problem.cupsOnHandByDay).toEqual([]);
    expect(situation(factsOf(counted, dirty), question, 8).problem.cupsOnHandByDay).toEqual([2, 7]);
  });
  it('says where a backup cup goes when all stand in one place', () => {
    const first = today(factsOf(), { ...question, weeks: 8 }).jobs.find((job) => job.kind === 'start');
    expect(first?.why).toMatch(/Put one of them at Cellar: all the others stand at Room\./);
    expect(first?.flies).toBe(80 * (first?.cups ?? 0));
  });
});

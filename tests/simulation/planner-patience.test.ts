import { describe, expect, it } from 'vitest';
import { type PlanningProblem, verifyPolicy } from '../../src/planner/index.ts';
import { burst, plainProblem } from './planner-problems.ts';

const days = 100;
const nothing = {
  kind: 'habit' as const,
  habit: { weekdays: [0], cups: [[0]] },
  bridge: { safety: [[2]], coverDays: 0, founderCups: 1, rescueSafety: 0 },
};

/** A cup that gives `perDay(day)` flies each day and is never thrown out. */
function spring(perDay: (day: number) => number) {
  const emergedByAge = Float32Array.from({ length: days + 60 }, (_, day) => perDay(day));
  const curve = { emergedByAge, founderFromAge: 0, founderUntilAge: days + 60, spentAge: days + 60 };
  const draws = {
    logPace: new Float64Array(1),
    logYield: new Float64Array(1),
    endAge: Float64Array.of(10_000),
    fliesNow: new Float64Array(1),
  };
  return { id: 'spring', ageDays: 0, curve, foundersFromDay: 0, draws };
}

function fedBy(perDay: (day: number) => number, groups: { group: string; waitDays: number; flies: number }[]) {
  const total = days + 40;
  const need = groups.reduce((sum, { flies }) => sum + flies, 0);
  const problem: PlanningProblem = plainProblem({
    days,
    curve: burst(10, 1, 5),
    need,
    weekdays: [0],
    strain: {
      existing: [spring(perDay)],
      adultDailySurvival: 0,
      groups: groups.map((one) => ({ ...one, flies: new Float64Array(total).fill(one.flies) })),
    },
  });
  return verifyPolicy(problem, nothing, { seed: 1, scenarios: 3, purchases: 'none' });
}

describe('rations that can wait', () => {
  // 200 flies every other day, none of which lives until the next, for a need of 100 a day.
  const everyOther = (day: number) => (day % 2 === 0 ? 200 : 0);
  it('are short every other day when nobody can wait', () => {
    const { serviceByDay } = fedBy(everyOther, [{ group: 'frogs', waitDays: 0, flies: 100 }]);
    expect(Array.from(serviceByDay[0]?.slice(0, 4) ?? [])).toEqual([1, 0, 1, 0]);
  });
  it('are never missed when all can wait a day, and are said to be late', () => {
    const { serviceByDay, fullRationByDay } = fedBy(everyOther, [{ group: 'frogs', waitDays: 1, flies: 100 }]);
    expect(Math.min(...(serviceByDay[0] ?? [0]))).toBe(1);
    expect(Array.from(fullRationByDay[0]?.slice(0, 4) ?? [])).toEqual([1, 0, 1, 0]);
  });
});

describe('who can wait and who cannot', () => {
  // 50 a day for 40 + 60: hatchlings take 40, frogs 10. Of the frogs' 60 of day 0, 10 are given on each of
  // days 0, 1 and 2, so 30 are missed on day 2; from then on 50 or more every day.
  const { serviceByDay, meanMissingFlies, groups, noShortfall, meanMissingShare } = fedBy(
    () => 50,
    [
      { group: 'hatchlings', waitDays: 0, flies: 40 },
      { group: 'frogs', waitDays: 2, flies: 60 },
    ],
  );
  it('feeds those first that cannot wait, and misses a ration only when its time is over', () => {
    expect(Array.from(serviceByDay[0]?.slice(0, 5) ?? [])).toEqual([1, 1, 0, 0, 0]);
    expect(Array.from(meanMissingFlies[0]?.slice(0, 5) ?? [])).toEqual([0, 0, 30, 50, 50]);
  });
  it('reckons group by group', () => {
    const [hatchlings, frogs] = groups;
    expect(hatchlings).toMatchObject({ group: 'hatchlings', worstDay: null, shortDays: 0 });
    expect(hatchlings?.noShortfall.map(({ chance }) => chance)).toEqual([1, 1]);
    // Rations of day 1 (the first that home-grown flies could reach) to day 97 are missed by the last day.
    expect(frogs).toMatchObject({ group: 'frogs', shortDays: 97 });
    expect(frogs?.noShortfall.map(({ chance }) => chance)).toEqual([0, 0]);
  });
  it('tells the chance of none over 13 weeks and over the horizon, and how large one is', () => {
    expect(noShortfall).toEqual([
      { days: 91, chance: 0 },
      { days: 100, chance: 0 },
    ]);
    // 30 of 100 on the first short day, 50 of 100 on the other 97.
    expect(meanMissingShare).toBeCloseTo((0.3 + 97 * 0.5) / 98, 12);
  });
});

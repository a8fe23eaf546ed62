import { describe, expect, it } from 'vitest';
import { day, dayNumber } from '../foundation/index.ts';
import { dustingPlan } from './dusting-plan.ts';

const monday = dayNumber(day('2026-11-23'));

describe('dusting plan', () => {
  const week = Array.from({ length: 7 }, (_, i) => monday + i);
  it('spreads each supplement over its week, one at a time while there is room', () => {
    const plan = dustingPlan(week, [
      { supplement: 'vitamins', timesPerWeek: 2 },
      { supplement: 'calcium', timesPerWeek: 5 },
    ]);
    expect(plan.filter(({ supplements }) => supplements.includes('vitamins'))).toHaveLength(2);
    expect(plan.every(({ supplements }) => supplements.length === 1)).toBe(true);
    const two = dustingPlan(week, [
      { supplement: 'vitamins', timesPerWeek: 1 },
      { supplement: 'calcium', timesPerWeek: 1 },
    ]);
    expect(two.filter(({ supplements }) => supplements.length === 1)).toHaveLength(2);
  });
  it('doubles up when the week has no bare feeding left', () => {
    const plan = dustingPlan(
      [monday, monday + 3],
      [
        { supplement: 'calcium', timesPerWeek: 7 },
        { supplement: 'vitamins', timesPerWeek: 1 },
      ],
    );
    expect(plan.map(({ supplements }) => supplements.length).sort((a, b) => a - b)).toEqual([1, 2]);
  });
  it('counts weeks from Monday', () => {
    const plan = dustingPlan([monday - 1, monday], [{ supplement: 'vitamins', timesPerWeek: 1 }]);
    expect(plan.map(({ supplements }) => supplements.length)).toEqual([1, 1]);
    expect(() => dustingPlan(week, [{ supplement: 'x', timesPerWeek: -1 }])).toThrow(/timesPerWeek of x/);
  });
});

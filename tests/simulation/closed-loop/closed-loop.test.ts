import { describe, expect, it } from 'vitest';
import { habitYear, smallestHabit } from './habit.ts';
import { feedFrom, liveADay, newCup, otherHousehold } from './other-world.ts';
import { keeperYear } from './virtual-keeper.ts';

describe('the other world', () => {
  const calm = { ...otherHousehold(1, 10), yieldFactor: 1, paceFactor: 1, cupSd: 0, failureChance: 0 };
  it('has cups as keepers know them: first flies after about two weeks, some hundreds to a thousand or more', () => {
    const cup = newCup(calm, 'c', 0, 50, () => 0.5);
    let first = 0;
    let total = 0;
    for (let day = 0; day < 32; day++) {
      liveADay(cup, day, 22.5);
      const out = feedFrom([cup], 1e9);
      total += out;
      if (first === 0 && total >= 5) first = day;
    }
    expect(first).toBeGreaterThan(8);
    expect(first).toBeLessThan(15);
    expect(total).toBeGreaterThan(400);
    expect(total).toBeLessThan(1600);
  });
  it('lets a habit that is too small fall short, and a generous one not', () => {
    const hungry = { ...calm, fliesADay: 500, weeks: 20 };
    expect(habitYear(hungry, [1, 4], 1).shortDays).toBeGreaterThan(5);
    expect(habitYear(hungry, [1, 4], 6).shortDays).toBe(0);
  });
});

describe('a keeper who follows the tool in a world that it does not know', () => {
  const household = otherHousehold(4, 12);
  it('is hardly ever short, with no more cups than the smallest two-weekday habit that is not', {
    timeout: 240_000,
  }, () => {
    const year = keeperYear(household);
    // 0.99 asked of 84 days: five short days or more have a chance below 0.002 (binomial).
    expect(year.shortDays).toBeLessThanOrEqual(4);
    const habit = smallestHabit(household, 2, 1);
    expect(year.cups + year.bought).toBeLessThanOrEqual(habit?.cups ?? 0);
  });
});

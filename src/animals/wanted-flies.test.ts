import { describe, expect, it } from 'vitest';
import { day, dayNumber, randomStream, type Weekday, weekdays } from '../foundation/index.ts';
import type { FeedingPeriod } from './feeding-period.ts';
import { wantedFlies } from './wanted-flies.ts';

// 2026-11-23 was a Monday.
const monday = dayNumber(day('2026-11-23'));
const daily: Weekday[] = [...weekdays];
const period = (more: Partial<FeedingPeriod> = {}): FeedingPeriod => ({
  from: monday,
  until: null,
  count: 4,
  fliesPerFeeding: 10,
  strain: 'mel',
  feedingWeekdays: daily,
  ...more,
});
const need = (periods: FeedingPeriod[], days = 7) =>
  wantedFlies({ groups: [{ group: 'g', periods }], fromDay: monday, days });

describe('flies wanted, by hand', () => {
  it('counts animals times flies on feeding weekdays only', () => {
    const mel = need([period({ feedingWeekdays: ['mon', 'thu'] })]).get('mel');
    expect([...(mel?.flies ?? [])]).toEqual([40, 0, 0, 40, 0, 0, 0]);
    expect(mel?.logSd).toBe(0);
  });
  it('begins and ends on the days given, both included', () => {
    const mel = need([period({ from: monday + 1, until: monday + 3 })]).get('mel');
    expect([...(mel?.flies ?? [])]).toEqual([0, 40, 40, 40, 0, 0, 0]);
  });
  it('lets the next period take over, with another strain', () => {
    const needs = need([period(), period({ from: monday + 5, strain: 'hydei', fliesPerFeeding: 3 })]);
    expect([...(needs.get('mel')?.flies ?? [])]).toEqual([40, 40, 40, 40, 40, 0, 0]);
    expect([...(needs.get('hydei')?.flies ?? [])]).toEqual([0, 0, 0, 0, 0, 12, 12]);
  });
  it('ends a group whose count falls to 0, and leaves out a strain that nobody wants', () => {
    const needs = need([period({ count: 0, strain: 'hydei' }), period({ from: monday + 2, count: 0 })]);
    expect(needs.size).toBe(0);
  });
  it('sums groups', () => {
    const groups = ['a', 'b'].map((group) => ({ group, periods: [period()] }));
    expect(wantedFlies({ groups, fromDay: monday, days: 1 }).get('mel')?.flies[0]).toBe(80);
  });
});

describe('an uncertain hatch', () => {
  const arrival = { earliest: monday + 2, latest: monday + 5, countLow: 40, countHigh: 200 };
  const hatch = period({ count: 120, fliesPerFeeding: 3, arrival });
  it('rises over its range of days to the mean of its range of numbers', () => {
    const flies = [...(need([hatch]).get('mel')?.flies ?? [])];
    expect(flies).toEqual([0, 0, 90, 180, 270, 360, 360]);
  });
  it('has the moments of a simulated hatch', () => {
    const stream = randomStream(3, 'hatch');
    const draws = 20_000;
    const sums = new Float64Array(7);
    const squares = new Float64Array(7);
    for (let s = 0; s < draws; s++) {
      const arrives = 2 + stream.below(4);
      const flies = (40 + 160 * stream.uniform()) * 3;
      for (let i = arrives; i < 7; i++) {
        sums[i] = (sums[i] as number) + flies;
        squares[i] = (squares[i] as number) + flies * flies;
      }
    }
    const mel = need([hatch]).get('mel');
    for (let i = 2; i < 7; i++) {
      const mean = (sums[i] as number) / draws;
      const sd = Math.sqrt((squares[i] as number) / draws - mean * mean);
      const standardError = sd / Math.sqrt(draws);
      expect(Math.abs((mel?.flies[i] as number) - mean)).toBeLessThan(5 * standardError);
      expect(Math.abs((mel?.sd[i] as number) - sd)).toBeLessThan(5 * standardError);
    }
  });
  it('gives one factor of the same relative spread: uniform 40 to 200 has sd 160/sqrt(12) on mean 120', () => {
    const certainDay = period({ arrival: { ...arrival, earliest: monday, latest: monday } });
    const relative = 160 / Math.sqrt(12) / 120;
    expect(need([certainDay]).get('mel')?.logSd).toBeCloseTo(Math.sqrt(Math.log(1 + relative ** 2)), 12);
  });
});

describe('bad input', () => {
  it('names the group and the field', () => {
    expect(() => need([period({ count: -1 })])).toThrow(/count of g is -1/);
    expect(() => need([period({ fliesPerFeeding: Number.NaN })])).toThrow(/fliesPerFeeding of g/);
    expect(() => need([period({ arrival: { earliest: 5, latest: 4, countLow: 1, countHigh: 2 } })])).toThrow(/latest/);
    expect(() => need([period({ arrival: { earliest: 4, latest: 4, countLow: 3, countHigh: 2 } })])).toThrow(
      /countHigh/,
    );
    expect(() => wantedFlies({ groups: [], fromDay: 0.5, days: 1 })).toThrow(/fromDay/);
    expect(() => wantedFlies({ groups: [], fromDay: 0, days: -1 })).toThrow(/days/);
  });
});

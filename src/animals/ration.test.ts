import { describe, expect, it } from 'vitest';
import { compareRations, practiceReckoning } from './ration.ts';
import { dividedBy, rangeOf } from './range.ts';

describe('practice beside energy', () => {
  const thumbnail = { fliesLow: 10, fliesHigh: 20, everyDaysLow: 1, everyDaysHigh: 2 };
  const fly = { usualMg: 0.95, nowMg: rangeOf(0.95, 0.95) };
  it('practice runs from the small feeding seldom to the large one often', () => {
    const { fliesPerDay } = practiceReckoning(thumbnail, fly);
    expect(fliesPerDay.low).toBeCloseTo(5, 12);
    expect(fliesPerDay.high).toBeCloseTo(20, 12);
  });
  it('small flies of a crowded cup count for less', () => {
    const small = practiceReckoning(thumbnail, { ...fly, nowMg: rangeOf(0.6, 0.7) }).fliesPerDay;
    expect(small.high).toBeCloseTo((20 * 0.95) / 0.6, 12);
    expect(small.low).toBeCloseTo((5 * 0.95) / 0.7, 12);
  });
  it('says how the two agree', () => {
    const verdict = (low: number, high: number) => compareRations(thumbnail, rangeOf(low, high), fly).verdict;
    expect(verdict(10, 30)).toBe('they overlap');
    expect(verdict(30, 60)).toBe('energy asks for more');
    expect(verdict(1, 2)).toBe('energy asks for less');
    expect(compareRations(thumbnail, null, fly)).toMatchObject({
      energy: null,
      ratio: null,
      verdict: 'no energy reckoning',
    });
    expect(compareRations(thumbnail, rangeOf(19, 19), fly).ratio).toBeCloseTo(2, 12);
  });
  it('ranges run upwards', () => {
    expect(() => rangeOf(2, 1)).toThrow(/2 to 1/);
    expect(() => dividedBy(rangeOf(1, 2), rangeOf(0, 1))).toThrow(/divisor/);
    expect(rangeOf(0, 4).middle).toBe(2);
  });
});

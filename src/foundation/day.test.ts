import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, day, dayFromNumber, dayNumber, parseDay, weekdayOf } from './day.ts';

describe('days', () => {
  it('counts from 1970-01-01', () => expect(dayNumber(day('2000-03-01'))).toBe(11017));
  it('knows the weekday of a known date (2000-01-01 was a Saturday)', () =>
    expect(weekdayOf(day('2000-01-01'))).toBe('sat'));
  it('goes over the end of a leap February', () => expect(addDays(day('2028-02-28'), 2)).toBe('2028-03-01'));
  it('refuses days that do not exist', () => {
    for (const text of ['2027-02-29', '2027-13-01', '27-01-01', '2027-1-1', '1066-10-14', '']) {
      expect(parseDay(text).ok, text).toBe(false);
    }
  });
  it('number and day are inverses', () => {
    fc.assert(fc.property(fc.integer({ min: 7400, max: 80000 }), (n) => dayNumber(dayFromNumber(n)) === n));
  });
});

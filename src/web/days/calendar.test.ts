import { describe, expect, it } from 'vitest';
import { addDays, day, dayNumber, weekdayOf } from '../../foundation/index.ts';
import { dayAt, dayIndex, dayOfClock, longDay, plusDays, weekdayKey } from './calendar.ts';

describe('the page’s calendar', () => {
  const days = ['1999-12-31', '2024-02-28', '2024-02-29', '2026-03-29', '2026-10-25', '2199-12-31'];

  it('counts days as the foundation does', () => {
    for (const text of days) {
      expect(dayIndex(text)).toBe(dayNumber(day(text)));
      expect(dayAt(dayIndex(text))).toBe(text);
      expect(weekdayKey(text)).toBe(weekdayOf(day(text)));
      if (text < '2199') expect(plusDays(text, 400)).toBe(addDays(day(text), 400));
    }
  });

  it('takes the day from the clock on the wall, not from UTC', () => {
    expect(dayOfClock(new Date(2026, 10, 25, 0, 5))).toBe('2026-11-25');
    expect(dayOfClock(new Date(2026, 10, 25, 23, 55))).toBe('2026-11-25');
  });

  it('writes days the way of the locale', () => {
    expect(longDay('2026-11-25', 'en-GB')).toBe('Wednesday 25 November');
    expect(longDay('2026-11-25', 'de')).toBe('Mittwoch, 25. November');
  });
});

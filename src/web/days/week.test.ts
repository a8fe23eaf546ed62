import { describe, expect, it } from 'vitest';
import { daysIntoWeek, firstWeekdayOf, weekdaysFrom } from './week.ts';

describe('weeks', () => {
  // Unicode CLDR, supplemental data weekData: firstDay is Monday for 001, Sunday for US, Saturday for EG.
  it('begin as the Unicode locale data say', () => {
    expect(['de-DE', 'en-US', 'ar-EG', 'en-GB'].map(firstWeekdayOf)).toEqual(['mon', 'sun', 'sat', 'mon']);
  });

  it('keep their seven days in order from any first', () => {
    expect(weekdaysFrom('sun')).toEqual(['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat']);
    expect(weekdaysFrom('mon')[0]).toBe('mon');
  });

  it('count the days into a week', () => {
    // 2026-11-25 is a Wednesday.
    expect(daysIntoWeek('2026-11-25', 'mon')).toBe(2);
    expect(daysIntoWeek('2026-11-25', 'sun')).toBe(3);
    expect(daysIntoWeek('2026-11-22', 'sun')).toBe(0);
  });
});

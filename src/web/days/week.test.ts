import { describe, expect, it } from 'vitest';
import { daysIntoWeek, firstWeekdayOf, weekdaysFrom, weeksThrough } from './week.ts';

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

  it('hold whole weeks of the calendar, from the day that weeks begin with', () => {
    // 2026-11-25 is a Wednesday, 2026-12-06 a Sunday.
    const edges = (first: 'mon' | 'sat' | 'sun', until = '2026-12-06') =>
      weeksThrough('2026-11-25', until, first).map((week) => [week[0], week[6]]);
    expect(edges('mon')).toEqual([
      ['2026-11-23', '2026-11-29'],
      ['2026-11-30', '2026-12-06'],
    ]);
    expect(edges('sun').at(0)).toEqual(['2026-11-22', '2026-11-28']);
    expect(edges('sun').at(-1)).toEqual(['2026-12-06', '2026-12-12']);
    expect(edges('sat', '2026-11-25')).toEqual([['2026-11-21', '2026-11-27']]);
  });
});

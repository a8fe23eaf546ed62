/** The time axis that every picture shares: days to x, with the first of each week and month marked. */
import type { Weekday } from '../../foundation/index.ts';
import { dayAt, dayIndex } from '../days/calendar.ts';
import { daysIntoWeek } from '../days/week.ts';

export interface TimeAxis {
  from: string;
  until: string;
  width: number;
  /** x of the middle of a day; fractions of days are allowed. */
  x: (day: string, plusDays?: number) => number;
  dayWidth: number;
  days: string[];
  /** The first day of each week. */
  weekStarts: string[];
}

/** Days `from` to `until`, both drawn, over `width` px; weeks begin on `firstDay`. */
export function timeAxis(from: string, until: string, width: number, firstDay: Weekday = 'mon'): TimeAxis {
  const first = dayIndex(from);
  const last = Math.max(dayIndex(until), first + 1);
  const dayWidth = width / (last - first + 1);
  const days = Array.from({ length: last - first + 1 }, (_, i) => dayAt(first + i));
  return {
    from,
    until: dayAt(last),
    width,
    days,
    weekStarts: days.filter((day) => daysIntoWeek(day, firstDay) === 0),
    dayWidth,
    x: (day, plusDays = 0) => (dayIndex(day) + plusDays - first + 0.5) * dayWidth,
  };
}

/** The first days of weeks that can carry a date without touching each other. */
export function labelledWeeks(axis: TimeAxis, minGapPx = 64): string[] {
  const every = Math.max(1, Math.ceil(minGapPx / (axis.dayWidth * 7)));
  return axis.weekStarts.filter((_, i) => i % every === 0);
}

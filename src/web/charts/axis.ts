/** The time axis that every picture shares: days to x, with the first of each week and month marked. */
import { dayAt, dayIndex, weekdayNumber } from '../days/calendar.ts';

export interface TimeAxis {
  from: string;
  until: string;
  width: number;
  /** x of the middle of a day; fractions of days are allowed. */
  x: (day: string, plusDays?: number) => number;
  dayWidth: number;
  days: string[];
  mondays: string[];
}

/** Days `from` to `until`, both drawn, over `width` px. */
export function timeAxis(from: string, until: string, width: number): TimeAxis {
  const first = dayIndex(from);
  const last = Math.max(dayIndex(until), first + 1);
  const dayWidth = width / (last - first + 1);
  const days = Array.from({ length: last - first + 1 }, (_, i) => dayAt(first + i));
  return {
    from,
    until: dayAt(last),
    width,
    days,
    mondays: days.filter((day) => weekdayNumber(day) === 0),
    dayWidth,
    x: (day, plusDays = 0) => (dayIndex(day) + plusDays - first + 0.5) * dayWidth,
  };
}

/** The Mondays that can carry a date without touching each other. */
export function labelledMondays(axis: TimeAxis, minGapPx = 64): string[] {
  const every = Math.max(1, Math.ceil(minGapPx / (axis.dayWidth * 7)));
  return axis.mondays.filter((_, i) => i % every === 0);
}

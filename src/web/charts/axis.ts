/** The time axis that every picture shares: days to x, with the first of each week and month marked. */
import { scaleLinear } from 'd3-scale';
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
  const scale = scaleLinear([first - 0.5, last + 0.5], [0, width]);
  const days = Array.from({ length: last - first + 1 }, (_, i) => dayAt(first + i));
  return {
    from,
    until: dayAt(last),
    width,
    days,
    mondays: days.filter((day) => weekdayNumber(day) === 0),
    dayWidth: width / (last - first + 1),
    x: (day, plusDays = 0) => scale(dayIndex(day) + plusDays),
  };
}

/** The Mondays that can carry a date without touching each other. */
export function labelledMondays(axis: TimeAxis, minGapPx = 64): string[] {
  const every = Math.max(1, Math.ceil(minGapPx / (axis.dayWidth * 7)));
  return axis.mondays.filter((_, i) => i % every === 0);
}

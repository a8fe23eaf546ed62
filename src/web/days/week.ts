/** Which day a week begins with, and the weekdays in that order. */
import type { Day, Weekday } from '../../foundation/index.ts';
import { daysFrom, plusDays, weekdayKeys, weekdayNumber } from './calendar.ts';

/** What the browser knows of a locale's week; older ones know nothing, or name it differently. */
interface KnowsWeek {
  getWeekInfo?: () => { firstDay: number };
  weekInfo?: { firstDay: number };
}

/** Where the browser says nothing, ISO 8601's Monday. */
export function firstWeekdayOf(tag: string): Weekday {
  const locale = new Intl.Locale(tag) as KnowsWeek;
  const { firstDay } = locale.getWeekInfo?.() ?? locale.weekInfo ?? { firstDay: 1 };
  return weekdayKeys[(firstDay - 1) % 7] as Weekday;
}

/** The seven weekdays, `first` foremost. */
export function weekdaysFrom(first: Weekday): Weekday[] {
  const at = weekdayKeys.indexOf(first);
  return [...weekdayKeys.slice(at), ...weekdayKeys.slice(0, at)];
}

/** Days since the week of that day began: 0 on its first day. */
export function daysIntoWeek(day: string, first: Weekday): number {
  return (weekdayNumber(day) - weekdayKeys.indexOf(first) + 7) % 7;
}

/** The days from the beginning of `from`'s week to the end of `until`'s, week by week. */
export function weeksThrough(from: string, until: string, first: Weekday): Day[][] {
  const begin = plusDays(from, -daysIntoWeek(from, first));
  const count = Math.floor(daysFrom(begin, until) / 7) + 1;
  return Array.from({ length: count }, (_, week) => weekdayKeys.map((_, day) => plusDays(begin, 7 * week + day)));
}

/**
 * Days as the page needs them: today by the clock on the wall, steps of days, and days as words. The
 * page uses the browser's own calendar, so that no calendar library is loaded for it.
 */
import type { Day, Weekday } from '../../foundation/index.ts';

const msPerDay = 86_400_000;
export const weekdayKeys = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

/** Today where the keeper is. */
export function dayOfClock(now: Date): Day {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}` as Day;
}

export function dayIndex(day: string): number {
  return Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / msPerDay;
}

export function dayAt(index: number): Day {
  return new Date(index * msPerDay).toISOString().slice(0, 10) as Day;
}

export function plusDays(day: string, days: number): Day {
  return dayAt(dayIndex(day) + days);
}

/** Whole days from `a` to `b`. */
export function daysFrom(a: string, b: string): number {
  return dayIndex(b) - dayIndex(a);
}

/** 0 Monday to 6 Sunday. */
export function weekdayNumber(day: string): number {
  return (((dayIndex(day) + 3) % 7) + 7) % 7;
}

export function weekdayKey(day: string): Weekday {
  return weekdayKeys[weekdayNumber(day)] as Weekday;
}

/** How a locale writes a day, cached because a formatter is dear to make. */
function formatter(locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  let format = formatters.get(key);
  if (!format) formatters.set(key, (format = new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' })));
  return format;
}
const formatters = new Map<string, Intl.DateTimeFormat>();

function written(day: string, locale: string, options: Intl.DateTimeFormatOptions): string {
  return formatter(locale, options).format(dayIndex(day) * msPerDay);
}

/** `Wednesday 25 November` in the locale's own order. */
export function longDay(day: string, locale: string): string {
  return written(day, locale, { weekday: 'long', day: 'numeric', month: 'long' });
}

/** `Wed 25 Nov`. */
export function shortDay(day: string, locale: string): string {
  return written(day, locale, { weekday: 'short', day: 'numeric', month: 'short' });
}

/** `25 Nov`. */
export function bareDay(day: string, locale: string): string {
  return written(day, locale, { day: 'numeric', month: 'short' });
}

export function fullDay(day: string, locale: string): string {
  return written(day, locale, { day: 'numeric', month: 'short', year: 'numeric' });
}

export function monthName(day: string, locale: string): string {
  return written(day, locale, { month: 'long' });
}

/** The weekday's name; `narrow` is one or two letters. */
export function weekdayName(weekday: Weekday, locale: string, width: 'long' | 'short' | 'narrow' = 'short'): string {
  // 1970-01-05 was a Monday.
  return written(dayAt(4 + weekdayKeys.indexOf(weekday)), locale, { weekday: width });
}

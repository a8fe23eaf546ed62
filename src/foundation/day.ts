/**
 * Calendar days. At the doors a day is ISO 8601 text (`2026-11-25`); inside, models count whole days
 * since 1970-01-01, so that arithmetic is plain integers. No clock and no time zone live here.
 */
// The library's functions one by one, so that the page carries only those it calls.
import * as PlainDate from 'temporal-polyfill/fns/PlainDate';
import { failed, ok, type Result } from './result.ts';

/** An ISO 8601 calendar day, checked: made only by `parseDay` and the functions of this file. */
export type Day = string & { readonly [dayBrand]: true };
declare const dayBrand: unique symbol;

/** Whole days since 1970-01-01. */
export type DayNumber = number;

export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export type Weekday = (typeof weekdays)[number];

const firstYear = 1990;
const lastYear = 2200;
const epoch = PlainDate.create(1970, 1, 1);
const numberByDay = new Map<string, DayNumber>();
const dayByNumber = new Map<DayNumber, Day>();

/** The day that `text` names, if it is a real day `YYYY-MM-DD` between 1990 and 2200. */
export function parseDay(text: string, where = 'date'): Result<Day> {
  const expected = 'a real calendar day such as 2026-11-25, from 1990 to 2200';
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return failed({ where, found: quoted(text), expected });
  const year = Number(text.slice(0, 4));
  if (year < firstYear || year > lastYear) return failed({ where, found: text, expected });
  try {
    plainDate(text);
  } catch {
    return failed({ where, found: `${text}, a day that does not exist`, expected });
  }
  return ok(text as Day);
}

/** As `parseDay`, for text the caller knows to be a day. Throws RangeError otherwise. */
export function day(text: string): Day {
  const result = parseDay(text);
  if (!result.ok) throw new RangeError(`day: ${text} is not a calendar day (1990 to 2200)`);
  return result.value;
}

/** Days since 1970-01-01. @example dayNumber(day('1970-01-02')) // => 1 */
export function dayNumber(d: Day): DayNumber {
  let n = numberByDay.get(d);
  if (n === undefined) {
    n = PlainDate.diffDays(epoch, plainDate(d));
    numberByDay.set(d, n);
  }
  return n;
}

/** The inverse of `dayNumber`. Throws RangeError when `n` is not a whole number. */
export function dayFromNumber(n: DayNumber): Day {
  let d = dayByNumber.get(n);
  if (d === undefined) {
    if (!Number.isInteger(n)) throw new RangeError(`dayFromNumber: ${n} is not a whole number of days`);
    d = PlainDate.toString(PlainDate.addDays(epoch, n)) as Day;
    dayByNumber.set(n, d);
  }
  return d;
}

/** @example addDays(day('2026-12-31'), 1) // => '2027-01-01' */
export function addDays(d: Day, days: number): Day {
  return dayFromNumber(dayNumber(d) + days);
}

/** Whole days from `a` to `b`; negative when `b` is earlier. */
export function daysBetween(a: Day, b: Day): number {
  return dayNumber(b) - dayNumber(a);
}

/** 0 for Monday to 6 for Sunday. */
export function weekdayIndex(n: DayNumber): number {
  // 1970-01-01 was a Thursday.
  return (((n + 3) % 7) + 7) % 7;
}

export function weekdayOf(d: Day): Weekday {
  return weekdays[weekdayIndex(dayNumber(d))] as Weekday;
}

/** Day of the year, 1 to 366. */
export function dayOfYear(d: Day): number {
  return PlainDate.dayOfYear(plainDate(d));
}

export function monthOf(d: Day): number {
  return Number(d.slice(5, 7));
}

function quoted(text: string): string {
  return text.length > 40 ? `"${text.slice(0, 40)}..."` : `"${text}"`;
}

/** Throws where there is no such day. */
function plainDate(text: string) {
  return PlainDate.create(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8, 10)));
}

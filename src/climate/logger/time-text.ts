/** A moment as a logger writes it: any order of day, month and year, 12 or 24 hours, with or without an offset. */
import { type DayNumber, dayNumber, parseDay } from '../../foundation/index.ts';
import { monthOfName } from './month-names.ts';

/** How the numbers of a time are ordered; the last three are one number that counts. */
export const timeOrders = ['ymd', 'dmy', 'mdy', 'unixSeconds', 'unixMilliseconds', 'spreadsheetDays'] as const;
export type TimeOrder = (typeof timeOrders)[number];

export interface WallTime {
  day: DayNumber;
  /** Milliseconds since that day's midnight. */
  ms: number;
  /** False for a day without a time. */
  hasClock: boolean;
  /** The offset written beside it, ms; 0 for UTC; null when none was. */
  offsetMs: number | null;
}

const dayMs = 86_400_000;
/** Day 0 of spreadsheets, 1899-12-30, before 1970-01-01. */
const spreadsheetEpoch = 25_569;

/** The moment that `text` names, or null when it names none in that order. */
export function wallTime(text: string, order: TimeOrder): WallTime | null {
  if (order === 'unixSeconds') return counted(text, 1000 / dayMs, 0, 0);
  if (order === 'unixMilliseconds') return counted(text, 1 / dayMs, 0, 0);
  if (order === 'spreadsheetDays') return counted(text, 1, spreadsheetEpoch, null);
  return written(text, order);
}

/** A time of day alone, in ms since midnight, or null. */
export function clockTimeMs(text: string): number | null {
  const scan = scanned(text);
  return scan && scan.clockFrom === 0 ? clockOf(scan, 0) : null;
}

function counted(text: string, days: number, epochDays: number, offsetMs: number | null): WallTime | null {
  const value = /^\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
  const at = value * days - epochDays;
  if (!(at >= 7305 && at < 84_000)) return null;
  const day = Math.floor(at);
  return { day, ms: Math.round((at - day) * dayMs), hasClock: true, offsetMs };
}

interface Scan {
  numbers: number[];
  /** Digits of each number. */
  lengths: number[];
  /** Index of the number that a month's name stood for, or -1. */
  monthAt: number;
  /** Index of the first number followed by a colon, or -1. */
  clockFrom: number;
  half: 'am' | 'pm' | null;
  offsetMs: number | null;
}

function written(text: string, order: 'ymd' | 'dmy' | 'mdy'): WallTime | null {
  const scan = scanned(text);
  if (!scan || scan.numbers.length === 0) return null;
  if (scan.lengths[0] === 8 || (scan.lengths[0] as number) >= 12) splitCompact(scan);
  if (scan.numbers.length < 3) return null;
  const day = calendarDay(scan, order);
  const ms = scan.numbers.length === 3 ? 0 : clockOf(scan, 3);
  if (day === null || ms === null) return null;
  return { day, ms, hasClock: scan.numbers.length > 3, offsetMs: scan.offsetMs };
}

/** 20261125 and 20261125143000 as the numbers they are made of. */
function splitCompact(scan: Scan): void {
  const digits = String(scan.numbers[0]);
  const parts = [digits.slice(0, 4), digits.slice(4, 6), digits.slice(6, 8), ...(digits.slice(8).match(/\d\d/g) ?? [])];
  const rest = scan.numbers.slice(1);
  const restLengths = scan.lengths.slice(1);
  const clock = restLengths[0] === 4 || restLengths[0] === 6 ? twos(rest[0] as number, restLengths[0]) : rest;
  scan.numbers = [...parts.map(Number), ...clock];
  scan.lengths = [4, 2, 2, ...Array.from({ length: scan.numbers.length - 3 }, () => 2)];
  scan.clockFrom = scan.numbers.length > 3 ? 3 : -1;
}

function twos(value: number, digits: number): number[] {
  return (String(value).padStart(digits, '0').match(/\d\d/g) ?? []).map(Number);
}

function calendarDay(scan: Scan, order: 'ymd' | 'dmy' | 'mdy'): DayNumber | null {
  const [a, b, c] = scan.numbers as [number, number, number];
  if (scan.monthAt > 1) return null;
  if (scan.lengths[0] === 4 || (order === 'ymd' && scan.monthAt < 0)) return dayOf(a, b, c);
  const monthFirst = scan.monthAt >= 0 ? scan.monthAt === 0 : order === 'mdy';
  const year = (scan.lengths[2] as number) <= 2 ? 2000 + c : c;
  return monthFirst ? dayOf(year, a, b) : dayOf(year, b, a);
}

const dayCache = new Map<number, DayNumber | null>();

function dayOf(yearOrTwo: number, month: number, dayOfMonth: number): DayNumber | null {
  const year = yearOrTwo < 100 ? 2000 + yearOrTwo : yearOrTwo;
  if (month > 12 || dayOfMonth > 31 || year > 9999) return null;
  const key = (year * 16 + month) * 32 + dayOfMonth;
  let found = dayCache.get(key);
  if (found === undefined) {
    const text = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
    const parsed = parseDay(text);
    found = parsed.ok ? dayNumber(parsed.value) : null;
    dayCache.set(key, found);
  }
  return found;
}

function clockOf(scan: Scan, from: number): number | null {
  let hour = scan.numbers[from] as number;
  const minute = scan.numbers[from + 1] ?? 0;
  const second = scan.numbers[from + 2] ?? 0;
  if (scan.half !== null) {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (scan.half === 'pm' ? 12 : 0);
  }
  // 24:00 is the end of the day; a leap second counts as the last of its minute.
  if (hour > 24 || minute > 59 || second > 60 || (hour === 24 && minute + second > 0)) return null;
  return ((hour * 60 + minute) * 60 + Math.min(second, 59)) * 1000;
}

/** The numbers and words of a time, or null when something in it belongs to no time. */
function scanned(text: string): Scan | null {
  const scan: Scan = { numbers: [], lengths: [], monthAt: -1, clockFrom: -1, half: null, offsetMs: null };
  const body = withoutOffset(text, scan);
  let i = 0;
  while (i < body.length) {
    const code = body.charCodeAt(i);
    if (isDigit(code)) i = readDigits(body, i, scan);
    else if (isSeparator(code)) i += 1;
    else {
      const end = wordEnd(body, i);
      if (!readWord(body.slice(i, end), scan)) return null;
      i = end;
    }
  }
  return scan.numbers.length <= 7 ? scan : null;
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** Space, comma, hyphen, point, slash, colon, no-break spaces. */
function isSeparator(code: number): boolean {
  return code === 32 || code === 58 || code === 160 || code === 0x202f || (code >= 44 && code <= 47) || code === 39;
}

function readDigits(text: string, from: number, scan: Scan): number {
  let i = from;
  let value = 0;
  while (i < text.length && isDigit(text.charCodeAt(i))) {
    value = value * 10 + text.charCodeAt(i) - 48;
    i += 1;
  }
  if (text.charCodeAt(i) === 58 && scan.clockFrom < 0) scan.clockFrom = scan.numbers.length;
  scan.numbers.push(value);
  scan.lengths.push(i - from);
  return i;
}

function wordEnd(text: string, from: number): number {
  let i = from + 1;
  while (i < text.length && !isDigit(text.charCodeAt(i)) && !isSeparator(text.charCodeAt(i))) i += 1;
  return i;
}

function readWord(word: string, scan: Scan): boolean {
  if (word === 'T' || word === 't' || /^(h|hrs?|uhr)$/i.test(word)) return true;
  if (/^[ap](\.?m\.?)?$/i.test(word)) {
    scan.half = word.toLowerCase().startsWith('p') ? 'pm' : 'am';
    return true;
  }
  // The points of "p.m." are separators: its m comes alone.
  if (/^m$/i.test(word) && scan.half !== null) return true;
  const month = monthOfName(word);
  // A weekday before the date says nothing more; any other word is no time.
  if (month === null) return scan.numbers.length === 0 && /^\p{L}{2,10}$/u.test(word);
  if (scan.monthAt >= 0) return false;
  scan.monthAt = scan.numbers.length;
  scan.numbers.push(month);
  scan.lengths.push(2);
  return true;
}

const offsetAtEnd = /(?:(Z|UTC|GMT)|(?:UTC|GMT)?([+-])(\d\d):?(\d\d)?)$/;

function withoutOffset(text: string, scan: Scan): string {
  const clockAt = text.indexOf(':');
  if (clockAt < 0) return text;
  const last = text.charCodeAt(text.length - 1);
  const signed = text.indexOf('+', clockAt) > 0 || text.indexOf('-', clockAt) > 0;
  if (!signed && last !== 90 && last !== 67 && last !== 84) return text;
  const match = offsetAtEnd.exec(text);
  if (!match) return text;
  const minutes = match[1] ? 0 : Number(match[3]) * 60 + Number(match[4] ?? 0);
  scan.offsetMs = (match[2] === '-' ? -1 : 1) * minutes * 60_000;
  return text.slice(0, match.index).trimEnd();
}

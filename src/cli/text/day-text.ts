/** Days in words, short and long. */
import { type Day, day, weekdayOf } from '../../foundation/index.ts';

const monthNames = 'January February March April May June July August September October November December'.split(' ');
const weekdayNames = {
  mon: 'Monday',
  tue: 'Tuesday',
  wed: 'Wednesday',
  thu: 'Thursday',
  fri: 'Friday',
  sat: 'Saturday',
  sun: 'Sunday',
};

const monthOf = (text: string) => monthNames[Number(text.slice(5, 7)) - 1] as string;
const dateOf = (text: string) => Number(text.slice(8));

/** @example longDay('2026-11-25') // => 'Wednesday 25 November 2026' */
export function longDay(text: string): string {
  return `${weekdayNames[weekdayOf(day(text))]} ${dateOf(text)} ${monthOf(text)} ${text.slice(0, 4)}`;
}

/** @example shortDay('2026-11-25') // => 'Wed 25 Nov' */
export function shortDay(text: string | Day): string {
  return `${weekdayNames[weekdayOf(day(text))].slice(0, 3)} ${String(dateOf(text)).padStart(2)} ${monthOf(text).slice(0, 3)}`;
}

/** @example bareDay('2026-11-25') // => '25 Nov' */
export function bareDay(text: string): string {
  return `${dateOf(text)} ${monthOf(text).slice(0, 3)}`;
}

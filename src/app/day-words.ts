/** Days as people say them, in English: `Thu 3 Dec`. */
import { type Day, dayFromNumber, weekdayOf } from '../foundation/index.ts';

const weekdayWords = { mon: 'Mon', tue: 'Tue', wed: 'Wed', thu: 'Thu', fri: 'Fri', sat: 'Sat', sun: 'Sun' };
const monthWords = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** @example dayWords(day('2026-12-03')) // => 'Thu 3 Dec' */
export function dayWords(day: Day): string {
  return `${weekdayWords[weekdayOf(day)]} ${Number(day.slice(8))} ${monthWords[Number(day.slice(5, 7)) - 1]}`;
}

/** The day that lies `offset` days after `today`, in words. */
export function dayWordsFrom(today: number): (offset: number) => string {
  return (offset) => dayWords(dayFromNumber(today + offset));
}

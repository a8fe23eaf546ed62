/** Days as people say them: `Thu 3 Dec`, `Do 3. Dez`. */
import { type Day, type Weekday, weekdayOf } from '../../foundation/index.ts';
import type { Language } from '../../paper/index.ts';

const weekdayWords: Record<Language, Record<Weekday, string>> = {
  en: { mon: 'Mon', tue: 'Tue', wed: 'Wed', thu: 'Thu', fri: 'Fri', sat: 'Sat', sun: 'Sun' },
  de: { mon: 'Mo', tue: 'Di', wed: 'Mi', thu: 'Do', fri: 'Fr', sat: 'Sa', sun: 'So' },
};
const monthWords: Record<Language, string[]> = {
  en: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  de: ['Jan', 'Feb', 'März', 'Apr', 'Mai', 'Juni', 'Juli', 'Aug', 'Sept', 'Okt', 'Nov', 'Dez'],
};

/** @example dayWords(day('2026-12-03')) // => 'Thu 3 Dec' */
export function dayWords(day: Day, language: Language = 'en'): string {
  const month = monthWords[language][Number(day.slice(5, 7)) - 1];
  return `${weekdayWords[language][weekdayOf(day)]} ${Number(day.slice(8))}${language === 'de' ? '.' : ''} ${month}`;
}

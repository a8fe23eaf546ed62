/** Which of the daily copies stay: all of the last days, then one a week, then one a month. */
import { addDays, day, dayNumber, weekdayIndex } from '../../foundation/index.ts';

export interface KeptCopies {
  days: number;
  weeks: number;
  months: number;
}

export const keepByDefault: KeptCopies = { days: 7, weeks: 5, months: 12 };

/** Of the days that have a copy, those whose copy stays, newest first. */
export function keptCopies(days: readonly string[], keep: KeptCopies): string[] {
  const newestFirst = [...days].sort().reverse();
  const kept = new Set([
    ...newestFirst.slice(0, keep.days),
    ...oldestOfEach(newestFirst, keep.weeks, mondayOf),
    ...oldestOfEach(newestFirst, keep.months, (d) => d.slice(0, 7)),
  ]);
  return newestFirst.filter((d) => kept.has(d));
}

/** The oldest copy of each of the newest periods: it stays the same while the period fills up. */
function oldestOfEach(newestFirst: readonly string[], periods: number, periodOf: (day: string) => string): string[] {
  const oldest = new Map<string, string>();
  for (const d of newestFirst) oldest.set(periodOf(d), d);
  return [...oldest.values()].slice(0, periods);
}

function mondayOf(text: string): string {
  const d = day(text);
  return addDays(d, -weekdayIndex(dayNumber(d)));
}

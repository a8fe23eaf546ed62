/** A group on one day. */
import { type DayNumber, dayNumber } from '../../foundation/index.ts';
import type { GroupFacts, GroupPeriod } from '../../logbook/index.ts';

/** The period that holds on a day; null before the first and after the last. */
export function periodOn({ periods }: GroupFacts, onDay: DayNumber): GroupPeriod | null {
  const begun = periods.findLast(({ from }) => dayNumber(from) <= onDay);
  return begun && (begun.until === null || dayNumber(begun.until) >= onDay) ? begun : null;
}

/** How long a group has waited beyond its feeding days. */
import { type Day, dayFromNumber, dayNumber, weekdayOf } from '../../foundation/index.ts';
import type { Facts, GroupFacts } from '../../logbook/index.ts';

/**
 * Days since the first feeding day that was missed, 0 when none was: before today, after the last feeding
 * that was written down. Where the household presumes feeding, and where none was ever written, 0.
 */
export function overdueDays({ household, feedings }: Facts, { group, periods }: GroupFacts, on: Day): number {
  const fedOn = feedings.findLast((one) => one.group === group && one.on <= on)?.on;
  if (household.presumeFeeding || fedOn === undefined) return 0;
  const today = dayNumber(on);
  for (let at = dayNumber(fedOn) + 1; at < today; at++) {
    const date = dayFromNumber(at);
    const period = periods.findLast(({ from }) => from <= date);
    const due = period && period.count > 0 && (period.until === null || period.until >= date);
    if (due && period.feedingWeekdays.includes(weekdayOf(date))) return today - at;
  }
  return 0;
}

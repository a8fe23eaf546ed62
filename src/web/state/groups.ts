/** A group of animals on one day. */
import type { GroupFacts, GroupPeriod } from '../../logbook/index.ts';

/** The period that holds on that day, or null before the first and after the last. */
export function periodOn(group: GroupFacts, on: string): GroupPeriod | null {
  const begun = group.periods.filter((period) => period.from <= on).at(-1);
  return begun && (begun.until === null || begun.until >= on) ? begun : null;
}

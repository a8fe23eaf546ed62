/** Flies wanted per day and strain, from the logbook's groups and orders. */
import { type FeedingGroup, type StrainNeed, wantedFlies } from '../animals/index.ts';
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import type { Facts, GroupFacts } from '../logbook/index.ts';

export function needOf(facts: Facts, fromDay: DayNumber, days: number): Map<string, StrainNeed> {
  return wantedFlies({ groups: feedingGroups(facts), fromDay, days });
}

export function feedingGroups(facts: Facts): FeedingGroup[] {
  return facts.groups.map(feedingGroup);
}

export function feedingGroup({ group, periods }: GroupFacts): FeedingGroup {
  return {
    group,
    periods: periods.map((p) => ({
      from: dayNumber(p.from),
      until: p.until === null ? null : dayNumber(p.until),
      count: p.count,
      fliesPerFeeding: p.fliesPerFeeding,
      strain: p.strain,
      feedingWeekdays: p.feedingWeekdays,
      arrival: p.arrival && {
        earliest: dayNumber(p.arrival.earliest),
        latest: dayNumber(p.arrival.latest),
        countLow: p.arrival.countLow,
        countHigh: p.arrival.countHigh,
      },
    })),
  };
}

/** Flies promised to others by due day, index 0 = `fromDay`. */
export function orderedFlies(facts: Facts, strain: string, fromDay: DayNumber, days: number): Float64Array {
  const flies = new Float64Array(days);
  for (const order of facts.orders) {
    const at = dayNumber(order.due) - fromDay;
    if (order.strain === strain && at >= 0 && at < days) flies[at] = (flies[at] as number) + order.flies;
  }
  return flies;
}

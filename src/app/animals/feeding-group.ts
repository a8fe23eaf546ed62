/** The logbook's groups in the animals' own terms, as they are written. */
import type { FeedingGroup, FeedingPeriod } from '../../animals/index.ts';
import { dayNumber } from '../../foundation/index.ts';
import type { GroupFacts, GroupPeriod } from '../../logbook/index.ts';

export function feedingGroup({ group, periods }: GroupFacts): FeedingGroup {
  return { group, periods: periods.map(feedingPeriod) };
}

export function feedingPeriod(p: GroupPeriod): FeedingPeriod {
  return {
    from: dayNumber(p.from),
    until: p.until === null ? null : dayNumber(p.until),
    count: p.count,
    fliesPerFeeding: p.fliesPerFeeding,
    strain: p.strain,
    feedingWeekdays: p.feedingWeekdays,
    waitDays: p.canWaitDays,
    arrival: p.arrival && {
      earliest: dayNumber(p.arrival.earliest),
      latest: dayNumber(p.arrival.latest),
      countLow: p.arrival.countLow,
      countHigh: p.arrival.countHigh,
    },
  };
}

/** Flies wanted per day and strain, from the logbook's groups and orders. */
import { type FeedingGroup, type StrainNeed, wantedFlies } from '../animals/index.ts';
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import type { Facts, GroupFacts } from '../logbook/index.ts';
import type { NeedGroup } from '../planner/index.ts';

export function needOf(facts: Facts, fromDay: DayNumber, days: number): Map<string, StrainNeed> {
  return wantedFlies({ groups: feedingGroups(facts), fromDay, days });
}

/** Each group's part of the need of a strain, with its patience; a group whose patience changes has several. */
export function groupNeeds(facts: Facts, strain: string, fromDay: DayNumber, days: number): NeedGroup[] {
  return facts.groups.flatMap((group) => {
    const waits = new Set(group.periods.filter((p) => p.strain === strain).map((p) => p.canWaitDays));
    return [...waits].flatMap((waitDays) => {
      const flies = wantedFlies({ groups: [partOf(group, strain, waitDays)], fromDay, days }).get(strain)?.flies;
      return flies ? [{ group: group.group, waitDays, flies }] : [];
    });
  });
}

/** The group in the periods in which it eats the strain with that patience; away in the others. */
function partOf(group: GroupFacts, strain: string, waitDays: number): FeedingGroup {
  const isPart = (p: GroupFacts['periods'][number]) => p.strain === strain && p.canWaitDays === waitDays;
  return feedingGroup({
    ...group,
    periods: group.periods.map((p) => (isPart(p) ? p : { ...p, count: 0, arrival: null })),
  });
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

/** Flies wanted per day and strain, from the logbook's groups and orders. */
import { type FeedingGroup, needDraws, type StrainNeed, wantedFlies } from '../animals/index.ts';
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { NeedGroup } from '../planner/index.ts';
import { groupsOf } from './animals/feeding-now.ts';

/** Facts of `feedingNow` give the need as it is to be fed; others as it is written. */
export function needOf(facts: Facts, fromDay: DayNumber, days: number): Map<string, StrainNeed> {
  return wantedFlies({ groups: groupsOf(facts), fromDay, days });
}

/** Scenarios of the need that the planner takes in turn. */
const draws = 256;

/** Scenarios of need by strain, where any group's hatch, moult or appetite is uncertain. */
export function needScenarios(
  facts: Facts,
  fromDay: DayNumber,
  days: number,
  seed: number,
): Map<string, Float32Array[]> {
  return needDraws({ groups: groupsOf(facts), fromDay, days, draws, seed });
}

/**
 * Each group's part of the need of a strain, with its patience and in the same scenarios; a group whose patience
 * changes has several.
 */
export function groupNeeds(facts: Facts, strain: string, fromDay: DayNumber, days: number, seed: number): NeedGroup[] {
  return groupsOf(facts).flatMap((group) => {
    const waits = new Set(group.periods.filter((p) => p.strain === strain).map((p) => p.waitDays ?? 0));
    return [...waits].flatMap((waitDays) => {
      const groups = [partOf(group, strain, waitDays)];
      const flies = wantedFlies({ groups, fromDay, days }).get(strain)?.flies;
      const own = needDraws({ groups, fromDay, days, draws, seed }).get(strain);
      return flies ? [{ group: group.group, waitDays, flies, ...(own && { draws: own }) }] : [];
    });
  });
}

/** The group in the periods in which it eats the strain with that patience; fed nothing in the others. */
function partOf(group: FeedingGroup, strain: string, waitDays: number): FeedingGroup {
  const isPart = (p: FeedingGroup['periods'][number]) => p.strain === strain && (p.waitDays ?? 0) === waitDays;
  return { ...group, periods: group.periods.map((p) => (isPart(p) ? p : { ...p, fliesPerFeeding: 0 })) };
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

/** The coming week's feedings with their supplements. */
import { type DustingRule, dustingPlan, type Range } from '../../animals/index.ts';
import { type Day, type DayNumber, dayFromNumber, dayNumber, weekdayIndex, weekdayOf } from '../../foundation/index.ts';
import type { Facts, GroupFacts } from '../../logbook/index.ts';
import type { AnimalsAnswer } from './animal-answers.ts';
import type { FeedingNow } from './feeding-now.ts';
import { periodOn } from './group-periods.ts';
import { nearMoult } from './moult.ts';

type Feeding = AnimalsAnswer['week'][number];

/**
 * Feedings that are certain to be due in the seven days from `on`. Supplements are spread over whole
 * calendar weeks, so that the plan of a day is the same whenever it is asked for.
 * @param facts as written, with what `now` made of them.
 */
export function weekOfFeedings(
  facts: Facts,
  now: FeedingNow,
  on: Day,
  dusting: readonly DustingRule[],
  flyMassMg: ReadonlyMap<string, Range>,
): Feeding[] {
  const due = now.facts.groups.flatMap((group) => feedingsOf(facts, now, group, on, dusting, flyMassMg));
  return due.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function feedingsOf(
  facts: Facts,
  now: FeedingNow,
  group: GroupFacts,
  on: Day,
  dusting: readonly DustingRule[],
  flyMassMg: ReadonlyMap<string, Range>,
): Feeding[] {
  const first = dayNumber(on);
  const supplements = supplementsFor(group, on, dusting);
  const ration = now.rations.get(group.group);
  const moult = ration ? nearMoult(ration, on) : null;
  return certainFeedings(group, first, 7).map(({ onDay, period }) => {
    const date = dayFromNumber(onDay);
    const flies = period.count * period.fliesPerFeeding;
    const { low, middle, high } = flyMassMg.get(period.strain) ?? { low: 1, middle: 1, high: 1 };
    return {
      date,
      group: group.group,
      name: group.name,
      strain: period.strain,
      flies,
      fliesRange:
        low > 0 ? { low: (flies * middle) / high, high: (flies * middle) / low } : { low: flies, high: flies },
      mg: flies * middle,
      supplements: supplements.get(onDay) ?? [],
      nearMoult: moult !== null && moult.from <= date && date <= moult.until,
      fed: facts.feedings.some((one) => one.group === group.group && one.on === date),
    };
  });
}

/** Supplements of each feeding day in this calendar week and the next. */
export function supplementsFor(
  group: GroupFacts,
  on: Day,
  household: readonly DustingRule[],
): Map<DayNumber, string[]> {
  const first = dayNumber(on);
  const days = certainFeedings(group, first - weekdayIndex(first), 14).map(({ onDay }) => onDay);
  const plan = dustingPlan(days, group.dusting ?? household);
  return new Map(plan.map(({ onDay, supplements }) => [onDay, supplements]));
}

function certainFeedings(group: GroupFacts, fromDay: DayNumber, days: number) {
  return Array.from({ length: days }, (_, i) => fromDay + i).flatMap((onDay) => {
    const period = periodOn(group, onDay);
    if (!period || period.arrival || period.count * period.fliesPerFeeding === 0) return [];
    return period.feedingWeekdays.includes(weekdayOf(dayFromNumber(onDay))) ? [{ onDay, period }] : [];
  });
}

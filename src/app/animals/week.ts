/** The coming week's feedings with their supplements, and what the week's food gives. */
import {
  type DustingRule,
  dustingPlan,
  dustMgFor,
  type FlyNutrients,
  foodQuality,
  type Range,
  type Supplement,
} from '../../animals/index.ts';
import { type Day, type DayNumber, dayFromNumber, dayNumber, weekdayIndex, weekdayOf } from '../../foundation/index.ts';
import type { Facts, GroupFacts } from '../../logbook/index.ts';
import { publishedDustingFigures, publishedFlyCompositions } from '../../reference/index.ts';
import type { AnimalsAnswer } from './animal-answers.ts';
import { periodOn } from './group-need.ts';

type Feeding = AnimalsAnswer['week'][number];

/**
 * Feedings that are certain to be due in the seven days from `on`. Supplements are spread over whole
 * calendar weeks, so that the plan of a day is the same whenever it is asked for.
 */
export function weekOfFeedings(facts: Facts, on: Day, dusting: readonly DustingRule[]): Feeding[] {
  const first = dayNumber(on);
  const due = facts.groups.flatMap((group) => {
    const feeds = certainFeedings(group, first - weekdayIndex(first), 14);
    const supplements = supplementsByDay(
      feeds.map(({ onDay }) => onDay),
      dusting,
    );
    return feeds
      .filter(({ onDay }) => onDay >= first && onDay < first + 7)
      .map(({ onDay, period }) => ({
        date: dayFromNumber(onDay) as string,
        group: group.group,
        name: group.name,
        strain: period.strain,
        flies: period.count * period.fliesPerFeeding,
        supplements: supplements.get(onDay) ?? [],
      }));
  });
  return due.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function certainFeedings(group: GroupFacts, fromDay: DayNumber, days: number) {
  return Array.from({ length: days }, (_, i) => fromDay + i).flatMap((onDay) => {
    const period = periodOn(group, onDay);
    if (!period || period.arrival || period.count * period.fliesPerFeeding === 0) return [];
    return period.feedingWeekdays.includes(weekdayOf(dayFromNumber(onDay))) ? [{ onDay, period }] : [];
  });
}

function supplementsByDay(days: DayNumber[], dusting: readonly DustingRule[]): Map<DayNumber, string[]> {
  return new Map(dustingPlan(days, dusting).map(({ onDay, supplements }) => [onDay, supplements]));
}

const figure = (item: string) => {
  const found = publishedDustingFigures.find((one) => one.item === item);
  if (!found) throw new RangeError(`weekQuality: dusting.csv has no ${item}`);
  return found.value;
};

/** Calcium carbonate stands for a plain calcium powder; what a label says of another goes by its shares. */
const carbonate: Supplement = {
  supplement: 'calcium',
  calciumShare: figure('calcium-in-carbonate'),
  phosphorusShare: 0,
};

/** Null when nothing is fed. Feedings whose supplements name calcium are taken as dusted for 1.5 : 1. */
export function weekQuality(week: readonly Feeding[], flyMassMg: ReadonlyMap<string, Range>): AnimalsAnswer['quality'] {
  const flies = flyNutrients();
  const target = figure('target-calcium-to-phosphorus');
  const feedings = week.map(({ strain, flies: count, supplements }) => {
    const flyMg = count * (flyMassMg.get(strain)?.middle ?? 0);
    const dusted = supplements.some((name) => /calcium/i.test(name));
    return { flyMg, dust: dusted ? [{ supplement: carbonate, mg: dustMgFor(flyMg, target, flies, carbonate) }] : [] };
  });
  const count = week.reduce((sum, one) => sum + one.flies, 0);
  const flyMg = feedings.reduce((sum, one) => sum + one.flyMg, 0);
  if (!(flyMg > 0)) return null;
  const { calciumToPhosphorus, verdict, proteinMg, fatMg } = foodQuality(feedings, flies);
  const carbonateMgPer100Flies = dustMgFor((100 * flyMg) / count, target, flies, carbonate);
  return { calciumToPhosphorus, verdict, proteinMg, fatMg, carbonateMgPer100Flies };
}

/** The one analysis that was read with both minerals. */
function flyNutrients(): FlyNutrients {
  for (const { status, calciumOfDry, phosphorusOfDry, ...rest } of publishedFlyCompositions)
    if (status === 'read' && calciumOfDry !== null && phosphorusOfDry !== null)
      return { ...rest, calciumOfDry, phosphorusOfDry };
  throw new RangeError('weekQuality: fly-composition.csv has no analysis with minerals');
}

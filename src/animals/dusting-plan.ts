/** Which supplement goes on which feeding, by the keeper's or the vet's schedule. */
import type { DayNumber } from '../foundation/index.ts';

export interface DustingRule {
  supplement: string;
  /** Feedings of a week that carry it; more than there are means every one. */
  timesPerWeek: number;
}

export interface DustedFeeding {
  onDay: DayNumber;
  supplements: string[];
}

/**
 * The feeding days with their supplements, each spread evenly over the feedings of its week (weeks count from
 * Monday). Rules come in order of care: where two fall together both are listed, unless another feeding of
 * the week is bare.
 */
export function dustingPlan(feedingDays: readonly DayNumber[], rules: readonly DustingRule[]): DustedFeeding[] {
  for (const { supplement, timesPerWeek } of rules)
    if (!(timesPerWeek >= 0)) throw new RangeError(`dustingPlan: timesPerWeek of ${supplement} is ${timesPerWeek}`);
  const feedings = [...new Set(feedingDays)]
    .sort((a, b) => a - b)
    .map((onDay) => ({ onDay, supplements: [] as string[] }));
  for (const week of byWeek(feedings)) for (const rule of rules) spread(week, rule);
  return feedings;
}

function byWeek(feedings: DustedFeeding[]): DustedFeeding[][] {
  const weeks = new Map<number, DustedFeeding[]>();
  for (const feeding of feedings) {
    // 1970-01-01 was a Thursday: three days on, weeks begin on Monday.
    const week = Math.floor((feeding.onDay + 3) / 7);
    weeks.set(week, [...(weeks.get(week) ?? []), feeding]);
  }
  return [...weeks.values()];
}

function spread(week: DustedFeeding[], { supplement, timesPerWeek }: DustingRule): void {
  const times = Math.min(week.length, Math.round(timesPerWeek));
  for (let k = 0; k < times; k++) {
    const wanted = ((k + 0.5) * week.length) / times - 0.5;
    const free = week.filter((feeding) => !feeding.supplements.includes(supplement));
    const best = free.sort((a, b) => cost(week, a, wanted) - cost(week, b, wanted))[0];
    best?.supplements.push(supplement);
  }
}

/** Distance from the even place, and a whole week more for a feeding that carries something already. */
function cost(week: DustedFeeding[], feeding: DustedFeeding, wanted: number): number {
  return Math.abs(week.indexOf(feeding) - wanted) + (feeding.supplements.length > 0 ? week.length : 0);
}

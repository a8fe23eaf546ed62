/** One feeding job a group and day: which cups, about how many flies, dusted with what, and why so many. */
import { type Day, dayFromNumber, type Said, said, saidTogether, weekdayOf } from '../../foundation/index.ts';
import type { Facts, GroupFacts, GroupPeriod } from '../../logbook/index.ts';
import { withFood } from './feeding-food.ts';
import type { SaidJob } from './said-job.ts';

/** Flies that the planner takes from a cup for feeding on a day (0 = today). */
export interface PlannedFeeding {
  day: number;
  cup: string;
  flies: number;
}

/**
 * Feeding jobs of one day; each group takes from the planned cups in order until it has its ration. A hatch that
 * nobody wrote down is looked for, not fed.
 * @param facts those of `feedingNow`.
 * @param planned null while no plan says yet which cups give.
 */
export function feedJobs(
  facts: Facts,
  strain: string,
  today: number,
  offset: number,
  planned: PlannedFeeding[] | null,
  labels: Map<string, string>,
): SaidJob[] {
  const left = planned && planned.filter((f) => f.day === offset).map((f) => ({ ...f }));
  return facts.groups.flatMap((group) => {
    const period = feedingPeriodOn(group, today + offset);
    if (!period || period.strain !== strain || period.count === 0) return [];
    if (period.arrival) return offset === 0 ? hatchLook(group, period, dayFromNumber(today)) : [];
    if (wasFed(facts, group.group, today + offset)) return [];
    const job = feedJob(group, period, today + offset, left && takeFrom(left, wantedBy(period)), labels);
    return [withFood(facts, group, period, dayFromNumber(today), job)];
  });
}

/** From the first day on which the young may come until somebody says that they have. */
function hatchLook({ group, name }: GroupFacts, { strain, arrival }: GroupPeriod, on: Day): SaidJob[] {
  if (!arrival || arrival.earliest > on) return [];
  const { countLow, countHigh, latest } = arrival;
  const why = said`${name}: ${countLow} to ${countHigh} are expected by ${{ day: latest }}. Write down how many came; they are fed from then on.`;
  return [{ id: `${on}:look:${group}`, date: on, kind: 'look', strain, group, why, firmness: 'firm' }];
}

/** A feeding that was written down is no job any more. */
export function wasFed({ feedings }: Facts, group: string, on: number): boolean {
  const date = dayFromNumber(on);
  return feedings.some((feeding) => feeding.group === group && feeding.on === date);
}

function feedJob(
  group: GroupFacts,
  period: GroupPeriod,
  on: number,
  taken: PlannedFeeding[] | null,
  labels: Map<string, string>,
): SaidJob {
  const date = dayFromNumber(on);
  return {
    id: `${date}:feed:${group.group}`,
    date,
    kind: 'feed',
    strain: period.strain,
    group: group.group,
    fromCultures: (taken ?? []).map((t) => t.cup),
    flies: wantedBy(period),
    why: rationSaid(group, period, taken, labels),
    firmness: 'firm',
  };
}

function rationSaid(
  { name }: GroupFacts,
  period: GroupPeriod,
  taken: PlannedFeeding[] | null,
  labels: Map<string, string>,
): Said {
  const each = said`${period.count} × ${Math.round(10 * period.fliesPerFeeding) / 10}`;
  if (!taken) return said`${name}: ${each} flies.`;
  const missing = wantedBy(period) - taken.reduce((sum, t) => sum + t.flies, 0);
  const from = taken.map((t) => said`${labels.get(t.cup) ?? t.cup} about ${Math.round(t.flies)}`);
  const ration =
    from.length === 0
      ? said`${name}: ${each} flies, from whatever gives.`
      : said`${name}: ${each} flies, from ${{ list: from }}.`;
  return missing > 1 ? saidTogether(ration, said`Expect about ${Math.round(missing)} too few.`) : ration;
}

function takeFrom(left: PlannedFeeding[], wanted: number): PlannedFeeding[] {
  const taken: PlannedFeeding[] = [];
  let missing = wanted;
  for (const source of left) {
    const flies = Math.min(missing, source.flies);
    if (flies < 0.5) continue;
    taken.push({ ...source, flies });
    source.flies -= flies;
    missing -= flies;
  }
  return taken;
}

function wantedBy(period: GroupPeriod): number {
  return Math.round(period.count * period.fliesPerFeeding);
}

/** The group's ration on a day, or null when it is not fed then. */
export function feedingPeriodOn(group: GroupFacts, on: number): GroupPeriod | null {
  const date = dayFromNumber(on);
  const period = group.periods.findLast((p) => p.from <= date);
  if (!period || (period.until !== null && period.until < date)) return null;
  return period.feedingWeekdays.includes(weekdayOf(date)) ? period : null;
}

/** One group: its need by day, patience, appetite and weight. */
import { learnedAppetite, type LeftOverWord, type Range, wantedFlies, weightCheck } from '../../animals/index.ts';
import { type Day, type DayNumber, dayNumber, daysBetween } from '../../foundation/index.ts';
import type { Facts, GroupFacts, GroupPeriod } from '../../logbook/index.ts';
import { publishedRations } from '../../reference/index.ts';
import { feedingGroup } from '../need.ts';
import { ration } from '../ration.ts';
import type { AnimalsAnswer } from './animal-answers.ts';
import { overdueDays } from './overdue.ts';
import { stagesAhead } from './stages-ahead.ts';

type GroupNeed = AnimalsAnswer['groups'][number];

/** Feedings further back than this say little of today's appetite. */
const appetiteDays = 60;

export function groupNeed(
  facts: Facts,
  group: GroupFacts,
  on: Day,
  days: number,
  flyMassMg: ReadonlyMap<string, Range>,
): GroupNeed {
  const fromDay = dayNumber(on);
  const now = periodOn(group, fromDay);
  const needs = wantedFlies({ groups: [feedingGroup(group)], fromDay, days });
  const fliesByDay = Array.from({ length: days }, () => 0);
  const mgByDay = Array.from({ length: days }, () => 0);
  for (const [strain, { flies }] of needs) {
    const mg = flyMassMg.get(strain)?.middle ?? 0;
    flies.forEach((wanted, i) => {
      fliesByDay[i] = (fliesByDay[i] as number) + wanted;
      mgByDay[i] = (mgByDay[i] as number) + wanted * mg;
    });
  }
  const lastFedOn = facts.feedings.filter((one) => one.group === group.group && one.on <= on).at(-1)?.on ?? null;
  const canWaitDays = now?.canWaitDays ?? 0;
  return {
    group: group.group,
    name: group.name,
    animal: group.animal,
    count: now?.count ?? 0,
    strain: now?.strain ?? null,
    canWaitDays,
    stages: stagesAhead(group, on),
    arrival: group.periods.find(({ arrival }) => arrival && arrival.latest >= on)?.arrival ?? null,
    lastFedOn,
    slackDays: canWaitDays - overdueDays(facts, group, on),
    fliesByDay,
    mgByDay,
    appetite: now ? appetiteOf(facts, group.group, now, on) : null,
    weight: weightOf(group, on),
    comparison: now ? comparisonOf(facts, group, now, on) : null,
  };
}

/** The period that holds on a day; null before the first and after the last. */
export function periodOn({ periods }: GroupFacts, onDay: DayNumber): GroupPeriod | null {
  const begun = periods.findLast(({ from }) => dayNumber(from) <= onDay);
  return begun && (begun.until === null || dayNumber(begun.until) >= onDay) ? begun : null;
}

function appetiteOf(
  facts: Facts,
  group: string,
  { count, fliesPerFeeding }: GroupPeriod,
  on: Day,
): GroupNeed['appetite'] {
  const seen = facts.feedings.flatMap(({ group: fed, on: fedOn, flies, leftOver }) => {
    const age = daysBetween(fedOn, on);
    const counts = fed === group && leftOver !== null && flies > 0 && age >= 0 && age <= appetiteDays;
    return counts ? [{ flies, leftOver: leftOver as LeftOverWord }] : [];
  });
  const planned = count * fliesPerFeeding;
  return seen.length > 0 && planned > 0 ? { ...learnedAppetite(planned, seen), feedings: seen.length } : null;
}

/** Weights are written with the group; one that is only carried on from the entry before is no weighing. */
function weightOf({ periods }: GroupFacts, on: Day): GroupNeed['weight'] {
  const weighings = periods.flatMap(({ from, massG }, i) =>
    massG !== null && from <= on && massG !== periods[i - 1]?.massG ? [{ onDay: dayNumber(from), massG }] : [],
  );
  if (weighings.length < 2) return null;
  return weightCheck(weighings, { changePerDay: 0 });
}

function comparisonOf(
  facts: Facts,
  { animal }: GroupFacts,
  { massG, strain }: GroupPeriod,
  on: Day,
): GroupNeed['comparison'] {
  if (animal === null || !publishedRations.some((row) => row.animal === animal)) return null;
  const result = ration(facts, { animal, on, strain, ...(massG === null ? {} : { massG }) });
  return result.ok ? { verdict: result.value.verdict, ratio: result.value.ratio } : null;
}

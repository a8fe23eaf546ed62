/** Weighings of a group against what its kind gains: the growth line, and whether it is fed enough. */
import { preyFor, q10Factor, type WeightCheck, weightCheck, type Weighing } from '../../animals/index.ts';
import { type Day, dayNumber, said } from '../../foundation/index.ts';
import type { Facts, GroupFacts } from '../../logbook/index.ts';
import { type PublishedRation, publishedFlyLengths } from '../../reference/index.ts';
import { kindOf, stageQ10, stageTemperatureC } from './animal-kinds.ts';
import { periodOn } from './group-periods.ts';

export interface GroupWeighing {
  on: Day;
  massG: number;
  animals: number;
}

/**
 * Weighings, oldest first. A weight written with the group is the mean of all; one that is only carried on from
 * the entry before is no weighing.
 */
export function weighingsOf(facts: Facts, { group, periods }: GroupFacts, on: Day): GroupWeighing[] {
  const written = periods.flatMap(({ from, massG, count }, i) =>
    massG !== null && from <= on && massG !== periods[i - 1]?.massG
      ? [{ on: from, massG, animals: Math.max(1, count) }]
      : [],
  );
  const weighed = facts.weighings.flatMap((one) =>
    one.group === group && one.massG !== null && one.on <= on
      ? [{ on: one.on, massG: one.massG, animals: one.animals }]
      : [],
  );
  return [...written, ...weighed].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
}

export interface ExpectedGain {
  /** Shares of the mass a day. */
  low: number;
  high: number;
}

/** What a stage gains a day: its range of mass in its time, quicker in the warm; 0 for a grown kind; null unknown. */
export function expectedGain(row: PublishedRation | null, temperatureC: number | null): ExpectedGain | null {
  if (!row) return null;
  if (row.next === '') return { low: 0, high: 0 };
  if (row.stageDaysLow === null || row.stageDaysHigh === null) return null;
  const logGain = Math.log(row.massHighG / row.massLowG);
  const pace = q10Factor(stageQ10, (temperatureC ?? stageTemperatureC) - stageTemperatureC);
  return { low: (logGain / row.stageDaysHigh) * pace, high: (logGain / row.stageDaysLow) * pace };
}

/** Weighings further back than this are another animal. */
const lineDays = 120;

/** Null without two weighings. A kind of which nobody knows how it grows is never said to gain too much. */
export function weightOf(facts: Facts, group: GroupFacts, on: Day): WeightCheck | null {
  const today = dayNumber(on);
  const weighings = weighingsOf(facts, group, on).filter((one) => today - dayNumber(one.on) <= lineDays);
  if (weighings.length < 2) return null;
  const period = periodOn(group, today);
  const gain = expectedGain(kindOf(period?.animal ?? group.animal), period?.temperatureC ?? null);
  const check = weightCheck(
    weighings.map((one) => inTerms(one, group)),
    {
      changePerDay: gain ? (gain.low + gain.high) / 2 : 0,
    },
  );
  return gain === null && check.verdict === 'too much'
    ? { ...check, verdict: 'enough', why: said`It gains mass.` }
    : check;
}

function inTerms({ on, massG, animals }: GroupWeighing, group: GroupFacts): Weighing {
  const count = periodOn(group, dayNumber(on))?.count ?? animals;
  return { onDay: dayNumber(on), massG, animals, share: count > 0 ? Math.min(1, animals / count) : 1 };
}

/** What fits the mouth of animals that were measured lately, where the rule goes by body length; else null. */
export function preyOf(facts: Facts, group: GroupFacts, on: Day) {
  const row = kindOf(periodOn(group, dayNumber(on))?.animal ?? null);
  if (!row || (row.taxon !== 'insect' && row.taxon !== 'spider')) return null;
  const last = facts.weighings.findLast((one) => one.group === group.group && one.lengthMm !== null && one.on <= on);
  if (!last || last.lengthMm === null || dayNumber(on) - dayNumber(last.on) > lineDays) return null;
  const flies = publishedFlyLengths.map(({ species, lengthMm }) => ({ fly: species, lengthMm }));
  return {
    lengthMm: last.lengthMm,
    ...preyFor({ by: 'body length', lengthMm: last.lengthMm, flies, outgrowsAtMm: null }),
  };
}

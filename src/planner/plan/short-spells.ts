/** Runs of days that are likelier to fall short than is allowed: which, how likely, by how many flies. */
import type { NeedClass, PreparedHousehold } from '../forecast/prepared-household.ts';
import type { Tally } from './tally.ts';

export interface ShortSpell {
  strain: string;
  /** First and last day, counted from today. */
  fromDay: number;
  untilDay: number;
  /** Chance that the worst of the days falls short, patience used up. */
  chance: number;
  /** Of a day that falls short, mean: flies missing on it, and flies that can wait no longer than that day. */
  missingFlies: number;
  wantedFlies: number;
}

/** Standard errors by which a day's risk must exceed the allowed one, as there are many days. */
const clearErrors = 3;
/** Safe days between two that are not, for which it is still one spell. */
const mostBetween = 2;

export function shortSpells(household: PreparedHousehold, tally: Tally, k: number): ShortSpell[] {
  const allowed = 1 - household.problem.serviceLevel;
  const clear = allowed + clearErrors * Math.sqrt((allowed * (1 - allowed)) / tally.worlds);
  const spells: [number, number][] = [];
  (tally.shortWorlds[k] as Float64Array).forEach((short, t) => {
    if (short <= clear * tally.worlds) return;
    const last = spells.at(-1);
    if (last && t - last[1] <= mostBetween + 1) last[1] = t;
    else spells.push([t, t]);
  });
  return spells.map(([from, until]) => spellOf(household, tally, k, from, until));
}

function spellOf(household: PreparedHousehold, tally: Tally, k: number, fromDay: number, untilDay: number): ShortSpell {
  const { strain, classes } = household.strains[k] as PreparedHousehold['strains'][number];
  const sumOf = (values: Float64Array) => values.subarray(fromDay, untilDay + 1).reduce((sum, x) => sum + x, 0);
  const short = tally.shortWorlds[k] as Float64Array;
  const due = short.map((worlds, t) => worlds * dueOn(classes, t));
  const shortDays = Math.max(1, sumOf(short));
  return {
    strain: strain.strain,
    fromDay,
    untilDay,
    chance: Math.max(...short.subarray(fromDay, untilDay + 1)) / tally.worlds,
    missingFlies: sumOf(tally.missingFlies[k] as Float64Array) / shortDays,
    wantedFlies: sumOf(due) / shortDays,
  };
}

/** Flies of the day's rations and of those put off as long as they could be. */
function dueOn(classes: readonly NeedClass[], day: number): number {
  return classes.reduce((sum, { need, waitDays }) => sum + (need[day - waitDays] ?? 0), 0);
}

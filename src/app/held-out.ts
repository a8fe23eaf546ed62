/**
 * Last flies of cups that ended, tapped out on that day and not fed yet. Without a harvest that day they went with
 * the cup. The logbook's custom is that the same flies are written twice, out of the cup and into the animals: so
 * left is what went beyond that day's feeding, less what was fed from it since and what died, in whatever order the
 * day's entries were written.
 */
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import type { EndReason, FeedingFact } from '../logbook/index.ts';
import type { HouseholdModel, StrainModel } from './household-model.ts';
import { needOf } from './need.ts';
import { heldOutDays } from './nominal-cup.ts';
import { isSick } from './sick-cup.ts';
import type { CupHistory } from './cup-history.ts';

/** Flies by culture that ended in the last days. */
export type HeldOut = ReadonlyMap<string, number>;

/** Of other ends nothing is carried over. */
const endsWithFlies: readonly EndReason[] = ['spent', 'dry', 'wet', 'other'];

export function heldOut(model: HouseholdModel, strain: StrainModel, cups: readonly CupHistory[]): HeldOut {
  const held = new Map<string, number>();
  for (let day = model.today - heldOutDays; day <= model.today; day++) {
    const out = cups.map((cup) => (endedOn(cup, day) ? harvestedOn(cup, day) : 0));
    const sum = out.reduce((a, b) => a + b, 0);
    const left = sum - usedOn(model, strain, cups, day);
    if (left <= 0) continue;
    cups.forEach((cup, i) => {
      const flies = sinceThen(model, strain, cup, day, (left * (out[i] as number)) / sum);
      if (flies >= 1) held.set(cup.culture.culture, flies);
    });
  }
  return held;
}

function endedOn({ culture, end }: CupHistory, day: DayNumber): boolean {
  return end === day && !isSick(culture) && endsWithFlies.includes(culture.ended?.reason ?? 'other');
}

/** Flies harvested to be fed, or to be kept; those nobody counted are not known of. */
function harvestedOn({ culture }: CupHistory, day: DayNumber): number {
  const kept = culture.harvests.filter(
    (h) => dayNumber(h.on) === day && (h.purpose === 'feeding' || (h.purpose === 'other' && h.emptied)),
  );
  return kept.reduce((sum, { flies }) => sum + (flies ?? 0), 0);
}

/**
 * Of what was tapped out, the flies that animals got that day: those written, and on a past day no less than the
 * ration, where unwritten feeding is presumed done.
 */
function usedOn(model: HouseholdModel, { facts }: StrainModel, cups: readonly CupHistory[], day: DayNumber): number {
  const fed = fedOn(model, facts.strain, day).reduce((sum, { flies }) => sum + flies, 0);
  const others = cups.reduce((sum, cup) => sum + (endedOn(cup, day) ? 0 : harvestedOn(cup, day)), 0);
  const isPresumed = model.facts.household.presumeFeeding && day < model.today;
  const ration = isPresumed ? (needOf(model.facts, day, 1).get(facts.strain)?.flies[0] ?? 0) : 0;
  return Math.max(0, Math.max(fed, ration) - others);
}

/** Feedings of the day to groups that eat the strain. */
export function fedOn({ facts }: HouseholdModel, strain: string, day: DayNumber): FeedingFact[] {
  const eats = (group: string, on: string) =>
    facts.groups.some((g) => g.group === group && g.periods.findLast(({ from }) => from <= on)?.strain === strain);
  return facts.feedings.filter((fed) => dayNumber(fed.on) === day && eats(fed.group, fed.on));
}

/** What is left today of flies held out on a day: some die, some were fed. */
function sinceThen(model: HouseholdModel, strain: StrainModel, cup: CupHistory, day: DayNumber, flies: number): number {
  let left = flies;
  for (let d = day + 1; d <= model.today; d++) {
    left *= strain.adultDailySurvival;
    for (const { flies: fed, fromCultures } of fedOn(model, strain.facts.strain, d)) {
      if (fromCultures.includes(cup.culture.culture)) left -= fed / fromCultures.length;
    }
  }
  return left;
}

/** To which places a cup may be carried today, by warmth and by what the keeper asked for. */
import { addDays, dayFromNumber } from '../../foundation/index.ts';
import type { CultureFacts, PlaceFacts } from '../../logbook/index.ts';
import { hourlyAt, type HouseholdModel, type StrainModel } from '../household-model.ts';
import { limitsOf, usualLimitsC } from '../temperature/alarms.ts';

/** Days whose expected warmth is looked at. */
const aheadDays = 30;
/** Two places are alike within this, mean C. */
const leastDifferenceC = 1.5;
/** In cooler places cups hardly go on: chosen, no source. */
const coolestC = 15;
/** A cup that was carried lately stays where it is. */
const restDays = 7;

/** Places warmer or cooler than where the cup stands, within what cups, strain and keeper bear. */
export function placesToMove(model: HouseholdModel, strain: StrainModel, culture: CultureFacts): PlaceFacts[] {
  const here = culture.places.at(-1)?.place;
  if (here === undefined || !model.places.has(here) || !mayBeMoved(model, culture)) return [];
  const meanHere = warmthAhead(model, here).meanC;
  return [...model.places.values()].filter((place) => {
    if (place.place === here || leavesOnePlace(model, culture, place.place)) return false;
    const { meanC, lowC, highC } = warmthAhead(model, place.place);
    const limits = limitsOf(place);
    const high = Math.min(usualLimitsC.high, limits.high, strain.life.developmentLimitsC.upper);
    return Math.abs(meanC - meanHere) >= leastDifferenceC && highC <= high && lowC >= Math.max(coolestC, limits.low);
  });
}

/** Not from quarantine, not with mites or mould in it, and not again and again. */
function mayBeMoved({ today }: HouseholdModel, { quarantinedUntil, seen, places }: CultureFacts): boolean {
  const on = dayFromNumber(today);
  const moved = places.slice(1).some(({ from }) => from > addDays(on, -restDays));
  return !moved && (quarantinedUntil === null || quarantinedUntil <= on) && !seen.some((s) => s.mites || s.mould);
}

/** Whether the keeper wants each strain in two places, and this would put all its cups into one. */
function leavesOnePlace({ facts }: HouseholdModel, { culture, strain }: CultureFacts, to: string): boolean {
  if (!facts.household.backup?.inTwoPlaces) return false;
  const others = facts.cultures.filter((c) => c.strain === strain && c.ended === null && c.culture !== culture);
  return others.length > 0 && others.every((c) => c.places.at(-1)?.place === to);
}

function warmthAhead(model: HouseholdModel, place: string): { meanC: number; lowC: number; highC: number } {
  const from = 24 * (model.today - model.firstDay);
  const hours = hourlyAt(model, place).subarray(from, from + 24 * aheadDays);
  let [sum, lowC, highC] = [0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const celsius of hours) {
    sum += celsius;
    lowC = Math.min(lowC, celsius);
    highC = Math.max(highC, celsius);
  }
  return { meanC: sum / hours.length, lowC, highC };
}

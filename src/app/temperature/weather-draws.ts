/**
 * Beliefs about living cups with the weather still to come in them: a warm or cool spell ahead hurries or
 * holds all cups of a place together, the more the longer they still have to develop.
 */
import { meanAnomalySdC } from '../../climate/index.ts';
import { bandOf, randomStream } from '../../foundation/index.ts';
import type { Beliefs, CupBelief } from '../../learning/index.ts';
import type { Histories } from '../evidence.ts';
import { hourlyAt, type HouseholdModel, placeTemperature, type StrainModel } from '../household-model.ts';
import type { CupHistory } from '../cup-history.ts';

/** The beliefs with wider paces; flies on hand and cups past their best are as they were. */
export function withWeatherAhead(model: HouseholdModel, histories: Histories, beliefs: Beliefs, seed: number): Beliefs {
  const cups = new Map(beliefs.cups);
  const spells = new Map<string, Float64Array>();
  for (const [key, cupsOfStrain] of histories) {
    const strain = model.strains.get(key) as StrainModel;
    for (const cup of cupsOfStrain.filter((c) => c.end === null)) {
      const belief = cups.get(cup.culture.culture);
      const sd = belief ? paceSdAhead(model, strain, cup, belief) : 0;
      if (!belief || sd === 0) continue;
      const place = placeOf(cup);
      const spell = spells.get(place) ?? spellOf(seed, place, belief.draws.logPace.length);
      spells.set(place, spell);
      const logPace = belief.draws.logPace.map((pace, s) => pace + sd * (spell[s] as number));
      cups.set(cup.culture.culture, { ...belief, draws: { ...belief.draws, logPace } });
    }
  }
  return { ...beliefs, cups };
}

function placeOf({ culture }: CupHistory): string {
  return culture.places.at(-1)?.place ?? '';
}

/** One spell a scenario: cups that stand together are warmed together. */
function spellOf(seed: number, place: string, draws: number): Float64Array {
  const random = randomStream(seed, 'weather', place);
  return Float64Array.from({ length: draws }, () => random.normal());
}

/**
 * Standard deviation of the logarithm of a cup's whole pace that the days until most of its flies have come
 * still bring: theirs, times their share of the cup's time.
 */
function paceSdAhead(model: HouseholdModel, strain: StrainModel, cup: CupHistory, belief: CupBelief): number {
  const pace = Math.exp(bandOf(belief.draws.logPace).p50);
  const whole = cup.nominal.dates.peak / pace;
  const left = Math.round(whole - (model.today - cup.start));
  if (left < 1) return 0;
  const sd = logPaceByDegree(model, strain, placeOf(cup), left) * anomalySdC(model, placeOf(cup), left);
  return (sd * left) / whole;
}

function anomalySdC(model: HouseholdModel, place: string, days: number): number {
  return meanAnomalySdC(placeTemperature(model, place), model.today + 1, days);
}

/** How much a degree changes the logarithm of pace at the place's mean of the coming days. */
export function logPaceByDegree(model: HouseholdModel, { life }: StrainModel, place: string, days: number): number {
  const from = 24 * (model.today + 1 - model.firstDay);
  const hours = hourlyAt(model, place).subarray(from, from + 24 * days);
  const meanC = hours.reduce((sum, c) => sum + c, 0) / hours.length;
  const [cooler, warmer] = [life.developmentRate(meanC - 0.5), life.developmentRate(meanC + 0.5)];
  return cooler > 0 && warmer > 0 ? Math.abs(Math.log(warmer / cooler)) : 0;
}

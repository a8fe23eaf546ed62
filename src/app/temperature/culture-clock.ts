/** How far a cup's own clock has run: development, degree-days, and what the last week's warmth did to it. */
import { bandOf, dayFromNumber, quantileSorted, type Said, said } from '../../foundation/index.ts';
import type { CupBelief } from '../../learning/index.ts';
import { type HouseholdModel, paceOf, type StrainModel } from '../household-model.ts';
import { nominalCup } from '../nominal-cup.ts';
import type { CupHistory } from '../cup-history.ts';
import { dayMeanC } from './place-warmth.ts';
import type { CultureClock } from './temperature-answers.ts';

/** Readings of so many days are held against what was expected before them. */
export const lookBackDays = 7;
/** A shift that is said, days. */
const leastShiftDays = 0.5;
/** A day so far off what was expected is a cool or a warm one, C. */
const offC = 0.5;

/** Its sentence is not yet in a language. */
export type SaidClock = Omit<CultureClock, 'shift'> & { shift: Said | null };

export function cultureClock(
  model: HouseholdModel,
  before: HouseholdModel,
  strain: StrainModel,
  cup: CupHistory,
  belief: CupBelief,
): SaidClock {
  const { culture, nominal, start } = cup;
  const pace = paceOf(model, strain, culture.places);
  const quick = Math.exp(bandOf(belief.draws.logPace).p50);
  const [from, to] = [24 * (start - model.firstDay), 24 * (model.today - model.firstDay)];
  const done = quick * ((pace.development[to] as number) - (pace.development[from] as number));
  const firstAge = nominal.dates.firstAdults / quick;
  const firstHour = from + Math.round(24 * firstAge);
  const haveCome = culture.harvests.length > 0 || culture.seen.some((s) => s.present.includes('adults'));
  const shiftDays = haveCome ? 0 : shiftOf(model, before, strain, cup, firstAge) / quick;
  const cause = shiftCause(model, before, cup, shiftDays);
  return {
    id: culture.culture,
    label: culture.label,
    strain: culture.strain,
    place: culture.places.at(-1)?.place ?? null,
    ageDays: model.today - start,
    developmentShare: haveCome ? 1 : Math.min(1, Math.round(1000 * done) / 1000),
    degreeDays: tenth(degreeDays(pace.temperature, strain, from, to)),
    degreeDaysNeeded: tenth(degreeDays(pace.temperature, strain, from, firstHour)),
    thresholdC: strain.life.developmentLimitsC.lower,
    fliesHaveCome: haveCome,
    firstAdults: dayFromNumber(start + Math.round(firstAge)),
    firstAdultsBand: bandOfDates(cup, belief),
    shiftDays: tenth(shiftDays),
    shiftCause: cause,
    shift: shiftSentence(model, cause, cup, shiftDays, start + firstAge),
  };
}

function bandOfDates({ start, nominal }: CupHistory, belief: CupBelief): CultureClock['firstAdultsBand'] {
  const paces = Float64Array.from(belief.draws.logPace).sort();
  const on = (p: number) =>
    dayFromNumber(start + Math.round(nominal.dates.firstAdults / Math.exp(quantileSorted(paces, p))));
  return { p05: on(0.95), p50: on(0.5), p95: on(0.05) };
}

/** Book days by which the first flies come later than the readings of a week ago had them; 0 when they are long due. */
function shiftOf(
  model: HouseholdModel,
  before: HouseholdModel,
  strain: StrainModel,
  { culture, nominal, start }: CupHistory,
  firstAge: number,
): number {
  if (start + firstAge < model.today - lookBackDays) return 0;
  const then = before.strains.get(strain.facts.strain) as StrainModel;
  return nominal.dates.firstAdults - nominalCup(before, then, culture).dates.firstAdults;
}

/** Hour by hour above the lower limit, nothing more above the upper one; `degreeHours` is a running sum of day C. */
function degreeDays(degreeHours: Float64Array, { life }: StrainModel, from: number, to: number): number {
  const { lower, upper } = life.developmentLimitsC;
  const last = Math.min(to, degreeHours.length - 1);
  let sum = 0;
  for (let hour = from; hour < last; hour += 1) {
    const celsius = 24 * ((degreeHours[hour + 1] as number) - (degreeHours[hour] as number));
    sum += Math.max(0, Math.min(celsius, upper) - lower) / 24;
  }
  return sum;
}

function shiftCause(
  model: HouseholdModel,
  before: HouseholdModel,
  { culture }: CupHistory,
  shiftDays: number,
): CultureClock['shiftCause'] {
  if (Math.abs(shiftDays) < leastShiftDays) return null;
  const place = culture.places.at(-1)?.place ?? '';
  const off = Array.from({ length: lookBackDays }, (_, i) => model.today - i).map(
    (day) => dayMeanC(model, place, day) - dayMeanC(before, place, day),
  );
  const kind = shiftDays > 0 ? 'cool' : 'warm';
  const days = off.filter((c) => (kind === 'cool' ? c < -offC : c > offC)).length;
  return { kind, days, meanOffC: tenth(off.reduce((sum, c) => sum + c, 0) / off.length) };
}

function shiftSentence(
  model: HouseholdModel,
  cause: CultureClock['shiftCause'],
  { culture }: CupHistory,
  shiftDays: number,
  firstAdults: number,
): Said | null {
  if (cause === null) return null;
  const place = culture.places.at(-1)?.place ?? '';
  const name = model.places.get(place)?.name ?? place;
  const off = Math.abs(cause.meanOffC);
  const days =
    cause.kind === 'cool'
      ? said`Cool days at ${name} in the last week: ${cause.days}`
      : said`Warm days at ${name} in the last week: ${cause.days}`;
  const mean =
    cause.meanOffC < 0
      ? said`${{ degreesApartC: off }} below what was expected`
      : said`${{ degreesApartC: off }} above what was expected`;
  const first = { day: dayFromNumber(Math.round(firstAdults)) };
  const by = tenth(Math.abs(shiftDays));
  return shiftDays > 0
    ? said`${days} (${mean}): the first flies of ${culture.label} come ${by} days later, on ${first}.`
    : said`${days} (${mean}): the first flies of ${culture.label} come ${by} days earlier, on ${first}.`;
}

function tenth(value: number): number {
  return Math.round(10 * value) / 10;
}

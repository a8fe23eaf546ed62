/** How warm each place is and will be, and how far each cup's own clock has run because of it. */
import { type HindcastError, meanTemperatureSdC, outlookErrors } from '../../climate/index.ts';
import { addDays, type Day, dayFromNumber, dayNumber, told } from '../../foundation/index.ts';
import type { CultureFacts, Facts } from '../../logbook/index.ts';
import { dayWords } from '../words/day-words.ts';
import {
  hourlyAt,
  type HouseholdModel,
  householdModel,
  paceOf,
  placeTemperature,
  type StrainModel,
} from '../household-model.ts';
import { nominalCup } from '../nominal-cup.ts';
import type { Question } from '../question.ts';
import { wordsOf } from '../words/words.ts';
import { limitsOf, placeAlarms } from './alarms.ts';
import type { CultureClock, PlaceTemperatureAnswer, TemperatureAnswer } from './temperature-answers.ts';

const aheadDays = 14;
/** Readings of so many days are held against what was expected before them. */
const lookBackDays = 7;
/** A shift that is said, days. */
const leastShiftDays = 0.5;
const band90 = 1.6449;
const hindcastLeadDays = 7;

export function temperature(facts: Facts, question: Question): TemperatureAnswer {
  const model = householdModel(facts, question.on, aheadDays);
  const before = householdModel(withoutLastWeek(facts, question.on), question.on, aheadDays);
  return {
    on: question.on,
    places: facts.places.map((place) => placeAnswer(model, place.place, question)),
    cultures: livingCultures(model).map(([culture, strain]) => cultureClock(model, before, culture, strain)),
  };
}

/** Cups that stand today, with their strain. */
export function livingCultures(model: HouseholdModel): [CultureFacts, StrainModel][] {
  return model.facts.cultures.flatMap((culture) => {
    const strain = model.strains.get(culture.strain);
    const stands = dayNumber(culture.on) <= model.today && dayNumber(culture.startedOn) > model.firstDay;
    return strain && stands && !culture.ended ? [[culture, strain] as [CultureFacts, StrainModel]] : [];
  });
}

function withoutLastWeek(facts: Facts, on: Day): Facts {
  const until = addDays(on, -lookBackDays);
  const places = facts.places.map((p) => ({ ...p, readings: p.readings.filter((r) => r.on <= until) }));
  return { ...facts, places };
}

function placeAnswer(model: HouseholdModel, key: string, question: Question): PlaceTemperatureAnswer {
  const place = model.facts.places.find((p) => p.place === key) as Facts['places'][number];
  const on = dayFromNumber(model.today);
  const readings = place.readings.filter((r) => r.on <= on);
  const latest = readings.at(-1);
  return {
    place: key,
    name: place.name,
    latest: latest ? { on: latest.on, meanC: tenth(latest.meanC), minC: latest.minC, maxC: latest.maxC } : null,
    readings: readings.length,
    limitsC: limitsOf(place),
    cupOffsetC: place.cupOffsetC,
    ahead: Array.from({ length: aheadDays }, (_, i) => dayAhead(model, key, i + 1, place.cupOffsetC)),
    hindcast: hindcast(model, key),
    alarms: told(placeAlarms(place, on), wordsOf(question.language)),
  };
}

function hindcast(model: HouseholdModel, place: string): PlaceTemperatureAnswer['hindcast'] {
  const errors = outlookErrors(placeTemperature(model, place), hindcastLeadDays);
  const meanOf = (value: (error: HindcastError) => number) =>
    errors.length === 0 ? null : errors.reduce((sum, error) => sum + value(error), 0) / errors.length;
  const within = (error: HindcastError) => Math.abs(error.cameC - error.expectedC) <= band90 * error.sdC;
  const rms = meanOf(({ cameC, expectedC }) => (cameC - expectedC) ** 2);
  const mean = meanOf(({ cameC, expectedC }) => cameC - expectedC);
  return {
    leadDays: hindcastLeadDays,
    days: errors.map((error) => ({
      date: dayFromNumber(error.day),
      expectedC: tenth(error.expectedC),
      cameC: tenth(error.cameC),
      within90: within(error),
    })),
    meanErrorC: mean === null ? null : Math.round(100 * mean) / 100,
    rmsErrorC: rms === null ? null : Math.round(100 * Math.sqrt(rms)) / 100,
    within90Share: meanOf((error) => (within(error) ? 1 : 0)),
  };
}

function dayAhead(model: HouseholdModel, place: string, lag: number, offsetC: number) {
  const day = model.today + lag;
  const meanC = dayMeanC(model, place, day) - offsetC;
  const half = band90 * meanTemperatureSdC(placeTemperature(model, place), day, 1);
  return { date: dayFromNumber(day), p05C: tenth(meanC - half), p50C: tenth(meanC), p95C: tenth(meanC + half) };
}

function dayMeanC(model: HouseholdModel, place: string, day: number): number {
  const from = 24 * (day - model.firstDay);
  return (
    hourlyAt(model, place)
      .subarray(from, from + 24)
      .reduce((sum, c) => sum + c, 0) / 24
  );
}

function cultureClock(
  model: HouseholdModel,
  before: HouseholdModel,
  culture: CultureFacts,
  strain: StrainModel,
): CultureClock {
  const pace = paceOf(model, strain, culture.places);
  const start = dayNumber(culture.startedOn);
  const [from, to] = [24 * (start - model.firstDay), 24 * (model.today - model.firstDay)];
  const done = (pace.development[to] as number) - (pace.development[from] as number);
  const firstAdults = nominalCup(model, strain, culture).dates.firstAdults;
  const beforeStrain = before.strains.get(culture.strain) as StrainModel;
  const expected = nominalCup(before, beforeStrain, culture).dates.firstAdults;
  const isDue = start + firstAdults >= model.today - lookBackDays;
  const shiftDays = isDue ? firstAdults - expected : 0;
  return {
    id: culture.culture,
    label: culture.label,
    strain: culture.strain,
    place: culture.places.at(-1)?.place ?? null,
    developmentShare: Math.min(1, Math.round(1000 * done) / 1000),
    degreeDays: tenth(degreeDaysSince(pace.temperature, strain, from, to)),
    thresholdC: strain.life.developmentLimitsC.lower,
    firstAdults: dayFromNumber(start + Math.round(firstAdults)),
    shiftDays: tenth(shiftDays),
    shift: shiftSentence(model, before, culture, shiftDays, start + firstAdults),
  };
}

/** Hour by hour above the lower limit, nothing more above the upper one; `degreeHours` is a running sum of day C. */
function degreeDaysSince(degreeHours: Float64Array, { life }: StrainModel, from: number, to: number): number {
  const { lower, upper } = life.developmentLimitsC;
  let sum = 0;
  for (let hour = from; hour < to; hour += 1) {
    const celsius = 24 * ((degreeHours[hour + 1] as number) - (degreeHours[hour] as number));
    sum += Math.max(0, Math.min(celsius, upper) - lower) / 24;
  }
  return sum;
}

function shiftSentence(
  model: HouseholdModel,
  before: HouseholdModel,
  culture: CultureFacts,
  shiftDays: number,
  firstAdults: number,
): string | null {
  if (Math.abs(shiftDays) < leastShiftDays) return null;
  const place = culture.places.at(-1)?.place ?? '';
  const off = Array.from({ length: lookBackDays }, (_, i) => model.today - i).map(
    (day) => dayMeanC(model, place, day) - dayMeanC(before, place, day),
  );
  const later = shiftDays > 0;
  const days = off.filter((c) => (later ? c < -0.5 : c > 0.5)).length;
  const middle = off.reduce((sum, c) => sum + c, 0) / off.length;
  const name = model.places.get(place)?.name ?? place;
  const why = `${days} ${later ? 'cool' : 'warm'} ${days === 1 ? 'day' : 'days'} at ${name} (${tenth(Math.abs(middle))} °C ${middle < 0 ? 'below' : 'above'} what was expected over the week)`;
  const first = dayWords(dayFromNumber(Math.round(firstAdults)));
  return `${why}: the first flies of ${culture.label} come ${tenth(Math.abs(shiftDays))} days ${later ? 'later' : 'earlier'}, on ${first}.`;
}

function tenth(value: number): number {
  return Math.round(10 * value) / 10;
}

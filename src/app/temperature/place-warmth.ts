/** One place: what was read in the last weeks, what is likely ahead, its limits, alarms and cups' own warmth. */
import { type HindcastError, ordinaryMeanC, outlookErrors, temperatureSdC } from '../../climate/index.ts';
import { dayFromNumber } from '../../foundation/index.ts';
import type { PlaceFacts } from '../../logbook/index.ts';
import { hourlyAt, type HouseholdModel, placeTemperature } from '../household-model.ts';
import { limitsOf, type PlaceAlarm, placeAlarms } from './alarms.ts';
import { cupWarmth } from './cup-warmth.ts';
import type { PlaceTemperatureAnswer } from './temperature-answers.ts';

export const aheadDays = 14;
/** Days looked back at in the picture: four weeks. */
export const pastDays = 28;
const band90 = 1.6449;
const hindcastLeadDays = 7;

/** Its alarms are not yet in a language. */
export type SaidPlace = Omit<PlaceTemperatureAnswer, 'alarms'> & { alarms: PlaceAlarm[] };

export function placeWarmth(model: HouseholdModel, place: PlaceFacts): SaidPlace {
  const on = dayFromNumber(model.today);
  const readings = place.readings.filter((r) => r.on <= on);
  const latest = readings.at(-1);
  const offset = cupWarmth(place, on);
  return {
    place: place.place,
    name: place.name,
    latest: latest ? { on: latest.on, meanC: tenth(latest.meanC), minC: latest.minC, maxC: latest.maxC } : null,
    readings: readings.length,
    limitsC: limitsOf(place),
    limitsAreUsual: place.limitsC === undefined,
    cupOffsetC: tenth(offset.meanC),
    cupOffset: {
      keeperC: place.cupOffsetC,
      meanC: hundredth(offset.meanC),
      sdC: hundredth(offset.sdC),
      pairs: offset.pairs,
    },
    past: pastOf(model, place, offset.meanC),
    ahead: aheadOf(model, place.place, offset.meanC),
    hindcast: hindcast(model, place.place),
    alarms: placeAlarms(place, on),
  };
}

function pastOf(model: HouseholdModel, place: PlaceFacts, offsetC: number): PlaceTemperatureAnswer['past'] {
  const temperature = placeTemperature(model, place.place);
  const sdC = temperatureSdC(temperature);
  const days = Array.from({ length: pastDays }, (_, i) => model.today - pastDays + 1 + i);
  const usual = ordinaryMeanC(temperature, days);
  const byDay = new Map(place.readings.map((r) => [r.on, r]));
  return days.map((day, i) => {
    const date = dayFromNumber(day);
    const read = byDay.get(date);
    const meanC = dayMeanC(model, place.place, day) - offsetC;
    const half = band90 * (sdC[day - model.firstDay] as number);
    return {
      date,
      read: read !== undefined,
      minC: read?.minC ?? null,
      maxC: read?.maxC ?? null,
      ...bandC(meanC, half),
      usualC: tenth(usual[i] as number),
    };
  });
}

function aheadOf(model: HouseholdModel, place: string, offsetC: number): PlaceTemperatureAnswer['ahead'] {
  const temperature = placeTemperature(model, place);
  const sdC = temperatureSdC(temperature);
  const days = Array.from({ length: aheadDays }, (_, i) => model.today + 1 + i);
  const usual = ordinaryMeanC(temperature, days);
  return days.map((day, i) => {
    const half = band90 * (sdC[day - model.firstDay] as number);
    const meanC = dayMeanC(model, place, day) - offsetC;
    return { date: dayFromNumber(day), ...bandC(meanC, half), usualC: tenth(usual[i] as number) };
  });
}

function bandC(meanC: number, half: number) {
  return { p05C: tenth(meanC - half), p50C: tenth(meanC), p95C: tenth(meanC + half) };
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
    meanErrorC: mean === null ? null : hundredth(mean),
    rmsErrorC: rms === null ? null : hundredth(Math.sqrt(rms)),
    within90Share: meanOf((error) => (within(error) ? 1 : 0)),
  };
}

/** Mean of the cups' temperature over a day of the model's series, C. */
export function dayMeanC(model: HouseholdModel, place: string, day: number): number {
  const from = 24 * (day - model.firstDay);
  const hours = hourlyAt(model, place).subarray(from, from + 24);
  return hours.reduce((sum, c) => sum + c, 0) / 24;
}

function tenth(value: number): number {
  return Math.round(10 * value) / 10;
}

function hundredth(value: number): number {
  return Math.round(100 * value) / 100;
}

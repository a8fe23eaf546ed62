/** What was expected of a place's days some days before, from the readings there were then, and what came. */
import type { DayNumber } from '../foundation/index.ts';
import { hourlyTemperatureC, meanTemperatureSdC, type PlaceTemperature } from './hourly-temperature.ts';

export interface HindcastError {
  day: DayNumber;
  expectedC: number;
  cameC: number;
  /** Standard deviation that was given with it, C. */
  sdC: number;
}

/** Readings before the first day that is looked back at. */
const leastReadings = 7;
/** The latest days that are looked back at. */
const mostDays = 365;

/** One for each of the latest readings that had a week of readings by `leadDays` before; oldest first. */
export function outlookErrors(place: PlaceTemperature, leadDays: number): HindcastError[] {
  const readings = place.readings.toSorted((a, b) => a.day - b.day);
  const errors: HindcastError[] = [];
  for (const { day, meanC } of readings.slice(-mostDays)) {
    const known = readings.filter((reading) => reading.day <= day - leadDays);
    if (known.length < leastReadings) continue;
    const then = { ...place, fromDay: day, days: 1, readings: known, cupOffsetC: 0 };
    const expectedC = hourlyTemperatureC(then).reduce((sum, c) => sum + c, 0) / 24;
    errors.push({ day, expectedC, cameC: meanC, sdC: meanTemperatureSdC(then, day, 1) });
  }
  return errors;
}

/** What was expected of a place's days some days before, from the readings there were then, and what came. */
import type { DayNumber } from '../foundation/index.ts';
import { expectedMeanC } from './expected-temperature.ts';
import { dayAhead, deviationsOf, type PlaceTemperature } from './hourly-temperature.ts';
import { type DeviationOnDay, SeasonLearner } from './learned-season.ts';

export interface HindcastError {
  day: DayNumber;
  expectedC: number;
  cameC: number;
  /** Standard deviation that was given with it, C. */
  sdC: number;
}

/** Readings before the first day that is looked back at. */
const leastReadings = 7;
/** The outlook leans on no more than the last week. */
const latelyDays = 8;
/** The latest days that are looked back at. */
const mostDays = 365;

/** One for each of the latest readings that had a week of readings by `leadDays` before; oldest first. */
export function outlookErrors(place: PlaceTemperature, leadDays: number): HindcastError[] {
  const deviations = deviationsOf(place);
  const learner = new SeasonLearner();
  const errors: HindcastError[] = [];
  let known = 0;
  for (const [i, { day, deviationC }] of deviations.entries()) {
    while ((deviations[known]?.day ?? Number.POSITIVE_INFINITY) <= day - leadDays) {
      learner.add(deviations[known] as DeviationOnDay);
      known += 1;
    }
    if (known < leastReadings || i < deviations.length - mostDays) continue;
    const lately = deviations.slice(Math.max(0, known - latelyDays), known);
    const { meanC, sdC } = dayAhead(place, learner.learned(), lately, day);
    errors.push({
      day,
      expectedC: meanC,
      cameC: deviationC + expectedMeanC(place.expected, place.hemisphere, day),
      sdC,
    });
  }
  return errors;
}

/** The temperature a place has on an ordinary day of the year, from one number or one a season. */
import { dayFromNumber, type DayNumber, dayOfYear } from '../foundation/index.ts';

export type Hemisphere = 'north' | 'south';

/** Mean temperature of a room, C: the whole year's, or one for each of the keeper's own seasons. */
export type ExpectedTemperature =
  | { allYearC: number }
  | { winterC: number; springC: number; summerC: number; autumnC: number };

/** Middle of January, the coldest time of the north, as a day of the year. */
const midWinterDay = 15;
const yearDays = 365.25;

/**
 * Expected mean temperature of day `on`, C. Seasons are joined by the one smooth yearly curve that has
 * each season's value in its middle (15 January, April, July and October in the north).
 */
export function expectedMeanC(expected: ExpectedTemperature, hemisphere: Hemisphere, on: DayNumber): number {
  if ('allYearC' in expected) return expected.allYearC;
  const { winterC, springC, summerC, autumnC } = expected;
  const shift = hemisphere === 'south' ? 0.5 : 0;
  const angle = 2 * Math.PI * ((dayOfYear(dayFromNumber(on)) - midWinterDay) / yearDays + shift);
  const mean = (winterC + springC + summerC + autumnC) / 4;
  const cosine = (winterC - summerC) / 2;
  const sine = (springC - autumnC) / 2;
  const second = (winterC - springC + summerC - autumnC) / 4;
  return mean + cosine * Math.cos(angle) + sine * Math.sin(angle) + second * Math.cos(2 * angle);
}

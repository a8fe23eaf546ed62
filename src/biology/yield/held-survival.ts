/** How adults fare that wait in their cup until they are fed out. */
import type { StrainLife } from '../culture.ts';
import { gompertzAt } from '../life/adult-tables.ts';
import { adultClock } from '../life/pace.ts';

/** Age of an ordinary waiting fly, days: what the age part of its hazard is taken at. */
const waitingAgeDays = 4;

/** Share of the adults held in an ordinary cup at `temperatureC` that are alive a day later. */
export function heldDailySurvival(strain: StrainLife, temperatureC: number): number {
  const { a, b } = gompertzAt(strain, temperatureC);
  const cup = strain.adult.cupDeathPerDay * adultClock(strain, temperatureC);
  return Math.exp(-cup - a * Math.exp(b * waitingAgeDays));
}

/**
 * How much warmer and cooler spells ahead spread the pace of the cups that are started together. What is
 * steady about a place that nobody measured is no part of it: that is learned as the household's pace.
 */
import { meanAnomalySdC } from '../../climate/index.ts';
import { type HouseholdModel, placeTemperature, type StrainModel, usualPlace } from '../household-model.ts';
import { logPaceByDegree } from './weather-draws.ts';

/** Days over which a cup develops, roughly. */
const cupDays = 14;

/** Standard deviation of the logarithm of pace over the coming fortnight at the strain's usual place. */
export function weatherPaceSd(model: HouseholdModel, strain: StrainModel): number {
  const place = usualPlace(model, strain.facts.strain);
  const anomalySdC = meanAnomalySdC(placeTemperature(model, place), model.today + 1, cupDays);
  return logPaceByDegree(model, strain, place, cupDays) * anomalySdC;
}

/**
 * How much warmer and cooler spells ahead spread the pace of the cups that are started together. What is
 * steady about a place that nobody measured is no part of it: that is learned as the household's pace.
 */
import { meanAnomalySdC } from '../../climate/index.ts';
import { hourlyAt, type HouseholdModel, placeTemperature, type StrainModel, usualPlace } from '../household-model.ts';

/** Days over which a cup develops, roughly. */
const cupDays = 14;

/** Standard deviation of the logarithm of pace over the coming fortnight at the strain's usual place. */
export function weatherPaceSd(model: HouseholdModel, strain: StrainModel): number {
  const place = usualPlace(model, strain.facts.strain);
  const from = 24 * (model.today + 1 - model.firstDay);
  const fortnight = hourlyAt(model, place).subarray(from, from + 24 * cupDays);
  const meanC = fortnight.reduce((sum, c) => sum + c, 0) / fortnight.length;
  const rate = strain.life.developmentRate;
  const [cooler, warmer] = [rate(meanC - 0.5), rate(meanC + 0.5)];
  if (!(cooler > 0 && warmer > 0)) return 0;
  return Math.abs(Math.log(warmer / cooler)) * meanAnomalySdC(placeTemperature(model, place), model.today + 1, cupDays);
}

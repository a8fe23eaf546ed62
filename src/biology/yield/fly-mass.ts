/** Fresh mass of flies by sex, rearing temperature and crowding, and counting them on a scale. */
import { valueAt } from '../curve.ts';
import type { StrainLife } from '../culture.ts';
import { massRatioAt } from '../life/crowding.ts';

export type Sex = 'female' | 'male' | 'mixed';

/**
 * Mean fresh mass of a fly, mg: of one sex or of the mixture that emerges, reared at `temperatureC` with
 * larvae that met `crowding` (multiples of the medium's capacity, 0 = alone).
 */
export function flyMassMg(strain: StrainLife, sex: Sex, temperatureC: number, crowding = 0): number {
  const { female, male } = strain.massMg;
  const share = { female: 0, male: 1, mixed: strain.adult.maleShare }[sex];
  const uncrowded = female * (1 - share) + male * share;
  return uncrowded * valueAt(strain.massByTemperature, temperatureC) * massRatioAt(strain.crowding, crowding);
}

/** Flies in `weightMg` of them (vessel taken off), at a mean mass of `meanMassMg` a fly. */
export function fliesByWeight(weightMg: number, meanMassMg: number): number {
  if (!(weightMg >= 0)) throw new RangeError(`fliesByWeight: weightMg is ${weightMg}, less than nothing`);
  if (!(meanMassMg > 0)) throw new RangeError(`fliesByWeight: meanMassMg is ${meanMassMg}, not above 0`);
  return weightMg / meanMassMg;
}

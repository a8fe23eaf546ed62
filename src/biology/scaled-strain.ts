/** A keeper's own strain: a published one with its pace, yield and fly mass corrected. */
import type { StrainLife } from './culture.ts';

export interface StrainScale {
  /** 1.1 = development 10 % quicker. */
  paceFactor: number;
  /** 1.1 = 10 % more flies from the same cup. */
  yieldFactor: number;
  /** 1.1 = flies 10 % heavier. */
  massFactor: number;
}

/** `base` with those factors, each from 0.2 to 5; RangeError outside. Yield scales laying and medium alike. */
export function scaledStrain(base: StrainLife, scale: StrainScale): StrainLife {
  const { paceFactor, yieldFactor, massFactor } = scale;
  for (const [name, factor] of Object.entries({ paceFactor, yieldFactor, massFactor })) {
    if (!(factor >= 0.2 && factor <= 5)) throw new RangeError(`scaledStrain: ${name} is ${factor}, not 0.2 to 5`);
  }
  if (paceFactor === 1 && yieldFactor === 1 && massFactor === 1) return base;
  return {
    ...base,
    developmentRate: (temperatureC) => paceFactor * base.developmentRate(temperatureC),
    laying: { ...base.laying, cupShare: base.laying.cupShare * yieldFactor },
    crowding: { ...base.crowding, larvaePerCm2: base.crowding.larvaePerCm2 * yieldFactor },
    medium: { ...base.medium, fliesPerG: base.medium.fliesPerG * yieldFactor },
    massMg: { female: base.massMg.female * massFactor, male: base.massMg.male * massFactor },
  };
}

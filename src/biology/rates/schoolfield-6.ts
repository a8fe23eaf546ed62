/**
 * Rate of development from reaction kinetics in the form of Schoolfield et al. 1981: one activation
 * enthalpy and an enzyme that is inactive when too cold and when too hot.
 */
export interface Schoolfield6 {
  /** Rate at 25 C were the enzyme all active, per day. */
  rate25: number;
  /** Activation enthalpy, cal per mol. */
  activation: number;
  /** Enthalpy of inactivation by cold (negative) and the temperature, K, of half inactivation. */
  lowEnthalpy: number;
  lowHalfK: number;
  /** The same by heat. */
  highEnthalpy: number;
  highHalfK: number;
}

/** Gas constant, cal per mol and K. */
const gas = 1.987;
const referenceK = 298.15;

/**
 * Development per day at `temperatureC`:
 * r = rate25 (K / 298.15) exp(HA/R (1/298.15 - 1/K)) / (1 + exp(HL/R (1/TL - 1/K)) + exp(HH/R (1/TH - 1/K))).
 * Source key schoolfield1981.
 */
export function schoolfield6(p: Schoolfield6, temperatureC: number): number {
  const kelvin = temperatureC + 273.15;
  const between = (enthalpy: number, half: number) => Math.exp((enthalpy / gas) * (1 / half - 1 / kelvin));
  const active = 1 + between(p.lowEnthalpy, p.lowHalfK) + between(p.highEnthalpy, p.highHalfK);
  return (p.rate25 * (kelvin / referenceK) * between(p.activation, referenceK)) / active;
}

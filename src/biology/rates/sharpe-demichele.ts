/** Rate of development from reaction kinetics in the first form of Sharpe and DeMichele 1977. */
export interface SharpeDeMichele {
  aa: number;
  bb: number;
  cc: number;
  dd: number;
  ff: number;
  gg: number;
}

const gas = 1.987;

/**
 * Development per unit of time at `temperatureC`: K exp((aa - bb/K)/R) over
 * 1 + exp((cc - dd/K)/R) + exp((ff - gg/K)/R), K = T + 273.16, R = 1.987. Source key sharpe1977.
 */
export function sharpeDeMichele(p: SharpeDeMichele, temperatureC: number): number {
  const kelvin = temperatureC + 273.16;
  const term = (entropy: number, enthalpy: number) => Math.exp((entropy - enthalpy / kelvin) / gas);
  return (kelvin * term(p.aa, p.bb)) / (1 + term(p.cc, p.dd) + term(p.ff, p.gg));
}

/**
 * Metabolic rate of an animal by published equations, watts from grams and degrees Celsius. Coefficients
 * come as arguments; the published ones are in data/energy-equations.csv.
 */
export interface EnergyEquation {
  equation: string;
  /** `resting`: activity and growth come on top; `field`: activity is in it. */
  kind: 'resting' | 'field';
  /**
   * `arrhenius`: exp(a - b / T) M^x / 60, T in kelvin (gillooly-2001). `power`: a M^x at 25 C times
   * Q10^((t - 25) / 10). `oxygen`: a M^x 10^(b t) ml of oxygen an hour, 20.1 J a ml (andrews-pough-1985).
   */
  form: 'arrhenius' | 'power' | 'oxygen';
  a: number;
  b: number | null;
  exponent: number;
  q10: number | null;
  temperatureLowC: number;
  temperatureHighC: number;
  massLowG: number;
  massHighG: number;
}

const zeroC = 273.15;
const joulePerMlOxygen = 20.1;
const secondsPerHour = 3600;

/**
 * Watts of an animal of `massG` at `temperatureC`. Throws RangeError when the mass is not above 0 or the
 * equation lacks a coefficient of its form; `covers` says whether it was made for such an animal.
 * @example a reptile of 100 g at 30 C by gillooly-reptile: 0.0637 W
 */
export function metabolicRateW(equation: EnergyEquation, massG: number, temperatureC: number): number {
  if (!(massG > 0 && Number.isFinite(massG))) throw new RangeError(`metabolicRateW: massG ${massG} is not above 0`);
  if (!Number.isFinite(temperatureC))
    throw new RangeError(`metabolicRateW: temperatureC ${temperatureC} is not a number`);
  const { form, a, exponent } = equation;
  const size = massG ** exponent;
  if (form === 'arrhenius') return (Math.exp(a - coefficient(equation, 'b') / (temperatureC + zeroC)) * size) / 60;
  if (form === 'power') return a * size * q10Factor(coefficient(equation, 'q10'), temperatureC - 25);
  const mlOxygenPerHour = a * size * 10 ** (coefficient(equation, 'b') * temperatureC);
  return (mlOxygenPerHour * joulePerMlOxygen) / secondsPerHour;
}

/** How much faster things run `degrees` warmer: Q10^(degrees / 10). @example q10Factor(2, 10) // => 2 */
export function q10Factor(q10: number, degrees: number): number {
  return q10 ** (degrees / 10);
}

/** True when mass and temperature are in the range that the equation was made for. */
export function covers(equation: EnergyEquation, massG: number, temperatureC: number): boolean {
  const { massLowG, massHighG, temperatureLowC, temperatureHighC } = equation;
  return massG >= massLowG && massG <= massHighG && temperatureC >= temperatureLowC && temperatureC <= temperatureHighC;
}

function coefficient(equation: EnergyEquation, name: 'b' | 'q10'): number {
  const value = equation[name];
  if (value === null) throw new RangeError(`metabolicRateW: ${equation.equation} has no ${name}`);
  return value;
}

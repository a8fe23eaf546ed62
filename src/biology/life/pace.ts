/**
 * A temperature series turned into the clocks of a strain, once for many cultures: hourly rate
 * summation. Every array is a running sum at the hours' ends, so that the progress between any two
 * hours is a subtraction.
 */
import { type Curve, valueAt } from '../curve.ts';
import type { StrainLife } from '../culture.ts';

export interface PaceTable {
  /** Whole days of the series; day 0 is its first. */
  days: number;
  /** Development from egg to adult, 1 = complete; length 24 x days + 1, as all below. */
  development: Float64Array;
  /** Adult age in days at 25 C. */
  adultAge: Float64Array;
  /** Laying in days at 25 C: temperature's effect on eggs and on males' fertility. */
  laying: Float64Array;
  /** Cumulated hazard of immature stages from heat or cold. */
  heatDeath: Float64Array;
  /** Ageing of medium: 1 = it feeds 1/e of what it did. */
  mediumAge: Float64Array;
  /** Share of the way to the age at which a cup is thrown out. */
  throwOut: Float64Array;
  /** Growth of mites, natural logarithm. */
  mites: Float64Array;
  /** Degree hours, for means. */
  temperature: Float64Array;
}

const coldestC = -20;
const hottestC = 60;
const stepsPerC = 20;

/**
 * The clocks of `strain` under `hourlyC` (C, 24 values a day, whole days). Temperatures are looked up
 * to 0.05 C by straight lines between tabulated values. Throws RangeError when the series is empty,
 * is no whole number of days, or has a value outside -20 to 60 C.
 */
export function paceTable(strain: StrainLife, hourlyC: Float64Array): PaceTable {
  const hours = hourlyC.length;
  if (hours === 0 || hours % 24 !== 0) {
    throw new RangeError(`paceTable: hourlyC has ${hours} values, not 24 for each of one or more days`);
  }
  const perDay = quantitiesPerDay(strain);
  const sums = perDay.map((table) => runningSum(table, hourlyC)) as [Sum, Sum, Sum, Sum, Sum, Sum, Sum, Sum];
  const [development, adultAge, laying, heatDeath, mediumAge, throwOut, mites, temperature] = sums;
  return { days: hours / 24, development, adultAge, laying, heatDeath, mediumAge, throwOut, mites, temperature };
}

type Sum = Float64Array;

/** Progress between two hours of a running sum. */
export function between(sum: Float64Array, fromHour: number, toHour: number): number {
  return (sum[toHour] as number) - (sum[fromHour] as number);
}

/** Mean temperature from day `from` over `days` days, C. */
export function meanTemperatureC(pace: PaceTable, from: number, days: number): number {
  return between(pace.temperature, from * 24, (from + days) * 24) / days;
}

/**
 * Days after `startDay` (fractional) at which `sum` has grown by `amount` since then; Infinity when it
 * does not within the series.
 */
export function daysUntil(sum: Float64Array, startDay: number, amount: number): number {
  const from = startDay * 24;
  const goal = (sum[from] as number) + amount;
  const last = sum.length - 1;
  if ((sum[last] as number) < goal) return Number.POSITIVE_INFINITY;
  let low = from;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((sum[middle] as number) < goal) low = middle;
    else high = middle;
  }
  const below = sum[low] as number;
  const rise = (sum[high] as number) - below;
  return (low + (rise > 0 ? (goal - below) / rise : 0) - from) / 24;
}

const tables = new WeakMap<StrainLife, Float64Array[]>();

/** Each clock's speed per day, tabulated by temperature. */
function quantitiesPerDay(strain: StrainLife): Float64Array[] {
  const known = tables.get(strain);
  if (known) return known;
  const made = [
    (t: number) => strain.developmentRate(t),
    (t: number) => adultClock(strain, t),
    (t: number) => valueAt(strain.laying.byTemperature, t) * valueAt(strain.laying.maleFertility, t),
    (t: number) => immatureDeath(strain, t),
    (t: number) => 1 / valueAt(strain.medium.lifeDays, t),
    (t: number) => 1 / valueAt(strain.founders.throwOutDays, t),
    (t: number) => valueAt(strain.mites.growthPerDay, t),
    (t: number) => t,
  ].map(tabulate);
  tables.set(strain, made);
  return made;
}

const logLives = new WeakMap<StrainLife, Curve>();

/** Days at 25 C that a day at `temperatureC` ages an adult: by the mean lives, on a log scale. */
export function adultClock(strain: StrainLife, temperatureC: number): number {
  const logLife = logLives.get(strain) ?? logLifeOf(strain);
  return Math.exp(valueAt(logLife, 25) - extended(logLife, temperatureC));
}

function logLifeOf(strain: StrainLife): Curve {
  const { temperatureC: at, a, b } = strain.adult.gompertz;
  const curve = { at, value: at.map((_, i) => Math.log(gompertzMeanLife(a[i] as number, b[i] as number))) };
  logLives.set(strain, curve);
  return curve;
}

/** Above the highest and below the lowest temperature the last slope goes on, for at most 6 C. */
function extended(curve: Curve, x: number): number {
  const n = curve.at.length;
  if (n < 2) return curve.value[0] as number;
  const first = curve.at[0] as number;
  const last = curve.at[n - 1] as number;
  if (x < first) return slopeOn(curve, 0, 1, Math.max(x, first - 6));
  if (x > last) return slopeOn(curve, n - 2, n - 1, Math.min(x, last + 6));
  return valueAt(curve, x);
}

function slopeOn(curve: Curve, i: number, j: number, x: number): number {
  const x0 = curve.at[i] as number;
  const y0 = curve.value[i] as number;
  return y0 + ((x - x0) * ((curve.value[j] as number) - y0)) / ((curve.at[j] as number) - x0);
}

/** Mean life of a Gompertz hazard a exp(b x), days, by Simpson's rule. */
export function gompertzMeanLife(a: number, b: number): number {
  const end = Math.log(1 + (40 * b) / a) / b;
  const n = 200;
  const survivor = (x: number) => Math.exp((-a / b) * Math.expm1(b * x));
  let sum = survivor(0) + survivor(end);
  for (let i = 1; i < n; i += 1) sum += (i % 2 === 1 ? 4 : 2) * survivor((end * i) / n);
  return (sum * end) / n / 3;
}

/** Deaths per day so that development at a constant temperature loses 1 - viability, and lethal heat. */
function immatureDeath(strain: StrainLife, temperatureC: number): number {
  const viability = Math.max(1e-6, valueAt(strain.viability, temperatureC));
  return -Math.log(viability) * strain.developmentRate(temperatureC) + valueAt(strain.heatDeathPerDay, temperatureC);
}

function tabulate(perDay: (temperatureC: number) => number): Float64Array {
  const size = (hottestC - coldestC) * stepsPerC + 2;
  return Float64Array.from({ length: size }, (_, i) => perDay(coldestC + i / stepsPerC));
}

function runningSum(table: Float64Array, hourlyC: Float64Array): Float64Array {
  const sum = new Float64Array(hourlyC.length + 1);
  let total = 0;
  for (let hour = 0; hour < hourlyC.length; hour += 1) {
    const temperatureC = hourlyC[hour] as number;
    if (!(temperatureC >= coldestC && temperatureC <= hottestC)) {
      throw new RangeError(`paceTable: hourlyC[${hour}] is ${temperatureC}, not between ${coldestC} and ${hottestC}`);
    }
    const place = (temperatureC - coldestC) * stepsPerC;
    const i = Math.floor(place);
    const low = table[i] as number;
    total += (low + (place - i) * ((table[i + 1] as number) - low)) / 24;
    sum[hour + 1] = total;
  }
  return sum;
}

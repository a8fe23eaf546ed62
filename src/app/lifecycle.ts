/** One culture from the books, at any temperature: for the curious, and for comparing conditions. */
import {
  bestFounders,
  type CultureConditions,
  type CultureCourse,
  cultureCourse,
  cultureDates,
  daysUntil,
  expectedCourse,
  failureCourse,
  type HarvestRule,
  meanTemperatureC,
  miteTroubleAge,
  type MoistureSpell,
  ordinaryFounderAge,
  type PaceTable,
  paceTable,
  type StrainLife,
  throwOutAge,
  totalBand,
} from '../biology/index.ts';
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import { strainKeys, strainLife } from '../reference/index.ts';
import type { LifecycleAnswer } from './answers.ts';
import { emergenceDetail } from './emergence-detail.ts';
import { cupLifeDays } from './nominal-cup.ts';
import { ordinaryPrior } from '../learning/index.ts';

export interface LifecycleQuestion {
  strain: string;
  /** A constant temperature, or hourly values from the day of starting (whole days). */
  temperatureC: number | Float64Array;
  founders?: number;
  founderAgeDays?: number;
  mediumMassG?: number;
  surfaceCm2?: number;
  /** Days between harvests. */
  harvestEveryDays?: number;
  /** Share of the flies in the cup that a harvest takes. */
  harvestShare?: number;
  /** Relative humidity of the room, where it is measured. */
  humidityPercent?: number;
  liveYeast?: 'none' | 'good' | 'excess';
  /** Days of age on which the medium was too wet or too dry. */
  moistureSpells?: MoistureSpell[];
  /** Hour of the day (0 to 23) at which it gets light: then the answer tells the hours of emergence. */
  lightsOnHour?: number;
}

/** The ordinary cup that stands for what the question leaves out; what an ordinary tapping leaves, half, rests. */
const ordinary = { founders: 50, mediumMassG: 150, surfaceCm2: 85, harvestEveryDays: 1, harvestShare: 0.5 };
const limits = {
  founders: [1, 5000],
  founderAgeDays: [0, 200],
  mediumMassG: [1, 10_000],
  surfaceCm2: [1, 10_000],
  harvestEveryDays: [1, 60],
  harvestShare: [0, 1],
} as const;

export function lifecycle(question: LifecycleQuestion): Result<LifecycleAnswer> {
  const life = strainLife(question.strain);
  const founderAgeDays = life ? ordinaryFounderAge(life) : 0;
  const given = { ...ordinary, founderAgeDays, ...withoutUndefined(question) };
  const problems = [...rangeProblems(given), ...careProblems(question), ...temperatureProblems(question.temperatureC)];
  if (!life) {
    problems.unshift({ where: 'strain', found: question.strain, expected: `one of ${strainKeys().join(', ')}` });
  }
  if (!life || problems.length > 0) return failed(...problems);
  const pace = paceTable(life, hourly(question.temperatureC));
  if (!Number.isFinite(daysUntil(pace.development, 0, 1))) return failed(stalled(life, pace));
  return ok(describe(life, pace, given));
}

/** No fly within the days looked at: too cold or too hot for the whole of it. */
function stalled(life: StrainLife, pace: PaceTable): Problem {
  const { lower, upper } = life.developmentLimitsC;
  return {
    where: 'temperatureC',
    found: `${meanTemperatureC(pace, 0, pace.days).toFixed(1)} C in the mean, at which no ${life.species} egg becomes a fly within ${pace.days} days`,
    expected: `temperatures well between ${lower} and ${upper} C; 18 to 26 C is usual`,
  };
}

type Given = typeof ordinary &
  Pick<CultureConditions, 'founderAgeDays' | 'humidityPercent' | 'liveYeast' | 'moistureSpells'> &
  Pick<LifecycleQuestion, 'lightsOnHour'>;

function describe(life: StrainLife, pace: PaceTable, given: Given): LifecycleAnswer {
  const harvest: HarvestRule = { everyDays: given.harvestEveryDays, share: given.harvestShare, fromAgeDays: null };
  const days = Math.min(cupLifeDays, pace.days);
  const course = expectedCourse(life, pace, 0, given, harvest, days);
  const dates = cultureDates(life, pace, 0, course);
  const spent = Math.min(days, Math.floor(dates.spent));
  const emergedOf = (founders: number) =>
    sumOf(cultureCourse(life, pace, 0, { ...given, founders }, harvest, days).emerged.subarray(0, spent));
  const { founders: best, tried } = bestFounders(life, pace, 0, given, harvest);
  return {
    strain: life.key,
    temperatureC: Number(meanTemperatureC(pace, 0, Math.min(30, pace.days)).toFixed(2)),
    eggToAdultDays: daysUntil(pace.development, 0, 1),
    stages: stageDays(life, pace),
    firstEmergenceDay: dates.firstAdults,
    peakDay: dates.peak,
    spentDay: dates.spent,
    founderFromDay: dates.founderFrom,
    founderUntilDay: dates.founderUntil,
    throwOutDay: throwOutAge(life, pace, 0),
    mitesTroubleDay: finiteOrNull(miteTroubleAge(life, pace, 0)),
    bestFounders: best,
    fliesByFounders: tried.map(({ founders, netFlies }) => ({ founders, netFlies: Math.round(netFlies) })),
    adultsEmerged: emergedBand(emergedOf, given.founders, cupSpread),
    chanceAlone: emergedBand(emergedOf, given.founders, 0),
    flyMassMg: meanMassMg(course),
    ...seriesOf(course),
    ...emergenceDetail(life, pace, course, given.lightsOnHour),
    failureByDay: failureByDay(life, pace, given, days),
  };
}

/** The course as plain lists, rounded to what can be meant. */
function seriesOf(course: CultureCourse) {
  const list = (series: Float64Array, decimals = 1) => Array.from(series, (x) => Number(x.toFixed(decimals)));
  return {
    emergedByDay: list(course.emerged),
    onHandByDay: list(course.adults),
    harvestedByDay: list(course.harvested),
    larvaeByDay: list(course.larvae),
    pupaeByDay: list(course.pupae),
    eggsByDay: list(course.eggs),
    mediumLeftByDay: list(course.mediumLeft, 3),
  };
}

function failureByDay(life: StrainLife, pace: PaceTable, given: Given, days: number): LifecycleAnswer['failureByDay'] {
  const { mould, mites, other, standing } = failureCourse(life, pace, 0, given, days);
  const list = (series: Float64Array) => Array.from(series, (x) => Number(x.toFixed(5)));
  return { mould: list(mould), mites: list(mites), other: list(other), standing: list(standing) };
}

function meanMassMg({ emerged, emergedMassMg }: CultureCourse): number | null {
  const all = sumOf(emerged);
  const mass = emerged.reduce((sum, flies, day) => sum + (flies > 0 ? flies * (emergedMassMg[day] as number) : 0), 0);
  return all > 0 ? Number((mass / all).toFixed(3)) : null;
}

function finiteOrNull(days: number): number | null {
  return Number.isFinite(days) ? days : null;
}

function stageDays(life: StrainLife, pace: PaceTable): { stage: string; days: number }[] {
  const { egg, larva } = life.stageShares;
  const hatched = daysUntil(pace.development, 0, egg);
  const pupated = daysUntil(pace.development, 0, egg + larva);
  return [
    { stage: 'egg', days: hatched },
    { stage: 'larva', days: pupated - hatched },
    { stage: 'pupa', days: daysUntil(pace.development, 0, 1) - pupated },
  ];
}

/** How households and cups differ from the books, as prior spreads of the log of their yield. */
const cupSpread = Math.hypot(ordinaryPrior.householdYieldSd, ordinaryPrior.cupYieldSd);

/** What emerges, with the spread given; few founders widen it by chance. */
function emergedBand(emergedOf: (founders: number) => number, founders: number, spread: number) {
  const band = totalBand(emergedOf, founders, spread);
  return { p05: Math.round(band.p05), p50: Math.round(band.p50), p95: Math.round(band.p95) };
}

function sumOf(values: Float64Array): number {
  return values.reduce((sum, x) => sum + x, 0);
}

function hourly(temperatureC: number | Float64Array): Float64Array {
  const hours = 24 * (cupLifeDays + 60);
  if (typeof temperatureC === 'number') return new Float64Array(hours).fill(temperatureC);
  if (temperatureC.length >= hours) return temperatureC;
  // A short file goes on with the mean of its last week.
  const longer = new Float64Array(hours).fill(meanOf(temperatureC.subarray(-24 * 7)));
  longer.set(temperatureC);
  return longer;
}

function meanOf(values: Float64Array): number {
  return sumOf(values) / values.length;
}

function rangeProblems(given: Given): Problem[] {
  return Object.entries(limits).flatMap(([field, [low, high]]) => {
    const value = given[field as keyof typeof limits];
    const right = Number.isFinite(value) && value >= low && value <= high;
    return right ? [] : [{ where: field, found: String(value), expected: `a number from ${low} to ${high}` }];
  });
}

function careProblems({ humidityPercent, lightsOnHour, moistureSpells = [] }: LifecycleQuestion): Problem[] {
  const problems: Problem[] = [];
  if (lightsOnHour !== undefined && !(lightsOnHour >= 0 && lightsOnHour < 24)) {
    problems.push({ where: 'lightsOnHour', found: String(lightsOnHour), expected: 'an hour from 0 to 23' });
  }
  if (humidityPercent !== undefined && !(humidityPercent >= 0 && humidityPercent <= 100)) {
    problems.push({ where: 'humidityPercent', found: String(humidityPercent), expected: 'a number from 0 to 100' });
  }
  for (const { fromAgeDays, untilAgeDays } of moistureSpells) {
    if (fromAgeDays >= 0 && untilAgeDays >= fromAgeDays) continue;
    const expected = 'first and last day of age, the last not before the first';
    problems.push({ where: 'moistureSpells', found: `${fromAgeDays} to ${untilAgeDays}`, expected });
  }
  return problems;
}

function temperatureProblems(temperatureC: number | Float64Array): Problem[] {
  const values = typeof temperatureC === 'number' ? [temperatureC] : temperatureC;
  if (values.length === 0) {
    return [{ where: 'temperatureC', found: 'no reading', expected: 'at least one day of readings' }];
  }
  for (const value of values) {
    if (!(value >= 0 && value <= 45)) {
      return [
        {
          where: 'temperatureC',
          found: `${value} C`,
          expected: 'a room temperature from 0 to 45 C; 18 to 26 C is usual',
        },
      ];
    }
  }
  return [];
}

function withoutUndefined<T extends object>(value: T): T {
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T;
}

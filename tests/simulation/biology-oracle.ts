/** Runs of the fly-by-fly simulation beside the engine on the same cup, summed up for comparison. */
import {
  cultureCourse,
  expectedCourse,
  paceTable,
  type CultureConditions,
  type CultureCourse,
  type HarvestRule,
  type StrainLife,
} from '../../src/biology/index.ts';
import { flyByFly, type FlyByFlyDay } from './fly-by-fly.ts';

export interface OracleCase {
  name: string;
  strain: StrainLife;
  hourlyC: Float64Array;
  conditions: CultureConditions;
  harvest: HarvestRule;
  days: number;
}

export interface OracleSummary {
  total: { mean: number; sd: number; standardError: number };
  meanDay: { mean: number; standardError: number };
  meanMassMg: number;
  harvested: number;
  emergedByDay: number[];
}

/** `runs` independent cultures fly by fly, seeds counted from `seed`. */
export function runOracle(one: OracleCase, runs: number, seed: number, founderSexes: 'chance' | 'even'): OracleSummary {
  const totals: number[] = [];
  const meanDays: number[] = [];
  const emergedByDay = new Array<number>(one.days).fill(0);
  let mass = 0;
  let harvested = 0;
  for (let run = 0; run < runs; run += 1) {
    const log = flyByFly(one.strain, one.hourlyC, one.conditions, one.harvest, one.days, seed + run, { founderSexes });
    const total = sumOf(log, (day) => day.emerged);
    totals.push(total);
    if (total > 0) meanDays.push(sumOf(log, (day, i) => i * day.emerged) / total);
    mass += sumOf(log, (day) => day.massSumMg);
    harvested += sumOf(log, (day) => day.harvested);
    for (const [i, day] of log.entries()) emergedByDay[i] = (emergedByDay[i] as number) + day.emerged / runs;
  }
  const all = totals.reduce((a, b) => a + b, 0);
  return {
    total: moments(totals),
    meanDay: moments(meanDays),
    meanMassMg: mass / all,
    harvested: harvested / runs,
    emergedByDay,
  };
}

/** The engine's course of the same cup, summed up alike. */
export function runEngine(one: OracleCase, stepsPerDay: number) {
  const pace = paceTable(one.strain, one.hourlyC);
  return summedUp(cultureCourse(one.strain, pace, 0, one.conditions, one.harvest, one.days, stepsPerDay));
}

/** The same with chance among the founders, daily steps: what forecasts use. */
export function runExpected(one: OracleCase) {
  const pace = paceTable(one.strain, one.hourlyC);
  return summedUp(expectedCourse(one.strain, pace, 0, one.conditions, one.harvest, one.days));
}

function summedUp(course: CultureCourse) {
  const emergedByDay = Array.from(course.emerged);
  const total = emergedByDay.reduce((a, b) => a + b, 0);
  const mass = emergedByDay.reduce((sum, n, day) => sum + (n > 0 ? n * (course.emergedMassMg[day] as number) : 0), 0);
  return {
    total,
    meanDay: emergedByDay.reduce((sum, n, day) => sum + n * day, 0) / total,
    meanMassMg: mass / total,
    harvested: course.harvested.reduce((a, b) => a + b, 0),
    emergedByDay,
  };
}

/** Largest difference of the two cumulated emergence curves, each scaled to 1. */
export function curveDistance(a: number[], b: number[]): number {
  const [allA, allB] = [a, b].map((series) => series.reduce((x, y) => x + y, 0)) as [number, number];
  let [sumA, sumB, most] = [0, 0, 0];
  for (let i = 0; i < a.length; i += 1) {
    sumA += (a[i] as number) / allA;
    sumB += (b[i] as number) / allB;
    most = Math.max(most, Math.abs(sumA - sumB));
  }
  return most;
}

function moments(values: number[]) {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const variance = values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (values.length - 1);
  return { mean, sd: Math.sqrt(variance), standardError: Math.sqrt(variance / values.length) };
}

function sumOf(log: FlyByFlyDay[], of: (day: FlyByFlyDay, i: number) => number): number {
  return log.reduce((sum, day, i) => sum + of(day, i), 0);
}

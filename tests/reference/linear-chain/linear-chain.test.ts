/**
 * The engine against the same linear chain integrated by R's deSolve (lsoda, R right-hand side, not
 * compiled; linear-chain.R beside this file). Where R with deSolve is installed the script runs now and
 * its fresh output is compared; elsewhere the kept emergence.csv, made by that script, is.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { cultureCourse, paceTable } from '../../../src/biology/index.ts';
import { chainConditions, chainStrain, parameter } from './chain-strain.ts';

const here = new URL('.', import.meta.url).pathname;
const days = 35;

const kept = readEmergence(join(here, 'emergence.csv'));
const fresh = runR();
const reference = fresh ?? kept;

describe(`linear chain against deSolve (${fresh ? 'run now' : 'kept output'})`, () => {
  if (fresh) {
    test('what R gives today is what is kept', () => {
      for (const [name, emerged] of fresh) {
        emerged.forEach((flies, day) => {
          expect(Math.abs(flies - (kept.get(name)?.[day] as number)), `${name} day ${day}`).toBeLessThan(0.01);
        });
      }
    });
  }

  // Without crowding the stage tables are the chain's closed form; what is left is the step.
  // Measured: .014 and .015 % with hourly steps, .085 and .019 % with daily ones.
  test.each([
    ['constant', 24, 0.0005, 0.002],
    ['daily-swing', 24, 0.0005, 0.002],
    ['constant', 1, 0.0012, 0.004],
    ['daily-swing', 1, 0.001, 0.03],
    // With crowding a cohort's larvae are slowed and killed alike: a closure. Measured .15 and .09 % in total with
    // hourly steps, 2.6 and 3.6 % over the days; with daily ones .2 and .6 %, when 13 % of 6,000 eggs survive.
    ['crowded', 24, 0.004, 0.035],
    ['crowded-swing', 24, 0.004, 0.045],
    ['crowded', 1, 0.01, 0.06],
    ['crowded-swing', 1, 0.01, 0.07],
  ])('%s, %i steps a day: total within %f, summed daily differences within %f', (name, steps, inTotal, inDays) => {
    const expected = reference.get(name) as number[];
    const emerged = engine(name, steps);
    const total = sum(expected);
    console.log(
      `${name} x${steps}: total ${sum(emerged).toFixed(1)} against ${total.toFixed(1)} (${(100 * (sum(emerged) / total - 1)).toFixed(3)} %), ` +
        `days ${((100 * sum(emerged.map((flies, day) => Math.abs(flies - (expected[day] as number))))) / total).toFixed(2)} %, mean day ${(meanDay(emerged) - meanDay(expected)).toFixed(4)}`,
    );
    expect(Math.abs(sum(emerged) / total - 1)).toBeLessThan(inTotal);
    const differences = emerged.map((flies, day) => Math.abs(flies - (expected[day] as number)));
    expect(sum(differences) / total).toBeLessThan(inDays);
    expect(Math.abs(meanDay(emerged) - meanDay(expected))).toBeLessThan(steps === 1 ? 0.08 : 0.025);
  });

  test('one batch of eggs: mean and variance of the time to emergence are the closed ones', () => {
    // Erlang with k sub-stages at rate k r: mean 1/r, variance 1/(k r^2), and 1/12 of a step for the day bins.
    const strain = chainStrain(false);
    const pace = paceTable(strain, new Float64Array(24 * 40).fill(24));
    const rule = { everyDays: 1, share: 1, fromAgeDays: 0 };
    const steps = 24;
    const emerged = Array.from(cultureCourse(strain, pace, 0, chainConditions, rule, 30, steps).emerged);
    const mean = meanDay(emerged) + 0.5;
    const variance = sum(emerged.map((flies, day) => flies * (day + 0.5 - mean) ** 2)) / sum(emerged);
    const rate = strain.developmentRate(24);
    const k = parameter('eggSubstages') + parameter('larvaSubstages') + parameter('pupaSubstages');
    // Eggs are laid over the first day, half a day of it after the start on average.
    const laidAt = 0.5 - parameter('founderDeathPerDay') / 12;
    expect(Math.abs(mean - (laidAt + 1 / rate))).toBeLessThan(0.01);
    expect(Math.abs(variance / (1 / (k * rate * rate) + 1 / 12 + 1 / 12) - 1)).toBeLessThan(0.03);
  });
});

function engine(name: string, stepsPerDay: number): number[] {
  const swing = name.endsWith('swing');
  // Means over the hour of 22 + 4 sin(2 pi t).
  const hourly = Float64Array.from({ length: 24 * days }, (_, hour) =>
    swing ? 22 + 4 * Math.sin((2 * Math.PI * (hour + 0.5)) / 24) : 24,
  );
  const strain = chainStrain(name.startsWith('crowded'));
  const rule = { everyDays: 1, share: 1, fromAgeDays: parameter('layingUntilDay') - 1 };
  const course = cultureCourse(strain, paceTable(strain, hourly), 0, chainConditions, rule, days, stepsPerDay);
  return Array.from(course.emerged);
}

function runR(): Map<string, number[]> | null {
  try {
    execFileSync('Rscript', ['-e', 'library(deSolve)'], { stdio: 'ignore' });
  } catch {
    return null;
  }
  const out = join(mkdtempSync(join(tmpdir(), 'chain-')), 'emergence.csv');
  execFileSync('Rscript', [join(here, 'linear-chain.R'), join(here, 'parameters.csv'), out], { stdio: 'ignore' });
  return readEmergence(out);
}

function readEmergence(path: string): Map<string, number[]> {
  const byCase = new Map<string, number[]>();
  for (const row of parse(readFileSync(path, 'utf8'), { columns: true }) as Record<string, string>[]) {
    const list = byCase.get(row.case as string) ?? [];
    list.push(Number(row.emerged));
    byCase.set(row.case as string, list);
  }
  return byCase;
}

function sum(values: number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function meanDay(emerged: number[]): number {
  return sum(emerged.map((flies, day) => flies * day)) / sum(emerged);
}

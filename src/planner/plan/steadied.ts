/**
 * A problem as the policy is tuned on it: what is believed of the household in round figures, its living
 * cups as cups of their age are in such a household. A note that confirms what was believed leaves it the
 * same, so the policy's few numbers stay and firm jobs with them; the decisions themselves are made from
 * what is really believed of each cup.
 */
import { counterNormal, counterUniform, risingAt, risingReaches } from '../../foundation/index.ts';
import { cupsOf } from '../forecast/cup-groups.ts';
import type { CupUncertainty, ExistingCup, PlanningProblem, StrainProblem } from '../problem.ts';

/** Draws of each quantity: tuning looks at some hundred worlds. */
const size = 1024;
/** Steps to which logs are rounded: the household's means and sds, and its stock. */
const steps = { yield: 0.1, yieldSd: 0.1, pace: 0.05, paceSd: 0.05, stock: 0.4, cupSd: 0.1, chance: 0.02 };
/** Log sd of what is thought to be in a cup. */
const stockSd = 0.4;

export function steadied(problem: PlanningProblem): PlanningProblem {
  return { ...problem, strains: problem.strains.map((strain, k) => steadiedStrain(strain, k)) };
}

function steadiedStrain(strain: StrainProblem, k: number): StrainProblem {
  const uncertainty = roundedUncertainty(strain.uncertainty, k);
  const stock = roundStock(strain.existing);
  const usual = strain.existing.map((cup) => usualStock(cup, strain.adultDailySurvival));
  const all = usual.reduce((sum, flies) => sum + flies, 0);
  return {
    ...strain,
    uncertainty,
    existing: strain.existing.map((cup, c) =>
      usualCup(cup, uncertainty, all > 0 ? (stock * (usual[c] as number)) / all : 0, k * 100_003 + c * 17 + 5),
    ),
  };
}

function roundedUncertainty(u: CupUncertainty, k: number): CupUncertainty {
  const { perCup, perSession, failedBefore } = u.failure;
  const { logYield, logPace } = u.householdDraws;
  return {
    yieldLogSd: {
      household: rounded(u.yieldLogSd.household, steps.yieldSd),
      session: u.yieldLogSd.session,
      cup: middleOfStep(u.yieldLogSd.cup, steps.cupSd),
    },
    paceLogSd: { ...u.paceLogSd, household: rounded(u.paceLogSd.household, steps.paceSd) },
    failure: { perCup: rounded(perCup, steps.chance), perSession: rounded(perSession, steps.chance / 2), failedBefore },
    countLogSd: middleOfStep(u.countLogSd, steps.cupSd),
    failureNoticedDays: u.failureNoticedDays,
    householdDraws: {
      logYield: roundedNormals(logYield, u.yieldLogSd.household, steps.yield, steps.yieldSd, k * 7 + 1),
      logPace: roundedNormals(logPace, u.paceLogSd.household, steps.pace, steps.paceSd, k * 7 + 2),
    },
  };
}

/** Normals with the rounded mean and sd of a sample, or about 0 with `sd` where there is none. */
function roundedNormals(sample: Float64Array, sd: number, step: number, sdStep: number, key: number): Float64Array {
  const own = sample.length > 0 ? moments(sample) : { mean: 0, sd };
  const middle = rounded(own.mean, step);
  // Never less than half a step: nobody is certain.
  const spread = Math.max(sdStep / 2, rounded(own.sd, sdStep));
  return Float64Array.from({ length: size }, (_, s) => middle + spread * counterNormal(key, 1, s));
}

/** A cup of its age in this household, with `flies` of its stock. */
function usualCup(cup: ExistingCup, u: CupUncertainty, flies: number, key: number): ExistingCup {
  const { yieldLogSd, paceLogSd, failure, householdDraws } = u;
  const cups = cupsOf(cup);
  const like = (household: Float64Array, sds: { session: number; cup: number }, use: number) =>
    household.map((log, s) => log + Math.hypot(sds.session, sds.cup / Math.sqrt(cups)) * counterNormal(key, use, s));
  const behind = risingAt(failure.failedBefore, cup.ageDays);
  const chance = failure.perCup + failure.perSession;
  const failing = (chance * (1 - behind)) / (1 - chance * behind);
  return {
    ...cup,
    draws: {
      logYield: timesCups(like(householdDraws.logYield, yieldLogSd, 1), cups, yieldLogSd.cup),
      logPace: like(householdDraws.logPace, paceLogSd, 2),
      fliesNow: Float64Array.from({ length: size }, (_, s) => flies * Math.exp(stockSd * counterNormal(key, 3, s))),
      ...failingOf(cup, failure.failedBefore, failing, key),
    },
  };
}

/** Yield of several cups together: a mean that strays less than one cup's has the same expectation. */
function timesCups(logs: Float64Array, cups: number, cupSd: number): Float64Array {
  return cups === 1 ? logs : logs.map((log) => log + Math.log(cups) + 0.5 * cupSd ** 2 * (1 - 1 / cups));
}

/** When it fails, with the chance `failing` for each of its cups, and the share of them that does. */
function failingOf(cup: ExistingCup, failedBefore: Float64Array, failing: number, key: number) {
  const behind = risingAt(failedBefore, cup.ageDays);
  const cups = cupsOf(cup);
  const ageAt = (share: number) => Math.max(cup.ageDays, risingReaches(failedBefore, behind + (1 - behind) * share));
  const luck = Float64Array.from({ length: size }, (_, s) => counterUniform(key, 4, s));
  if (cups === 1)
    return { endAge: luck.map((u01) => (u01 >= failing ? Number.POSITIVE_INFINITY : ageAt(u01 / failing))) };
  const sd = Math.sqrt((failing * (1 - failing)) / cups);
  const failShare = luck.map((_, s) => {
    const lost = Math.round(cups * (failing + sd * counterNormal(key, 5, s)));
    return Math.min(1, Math.max(0, lost / cups));
  });
  return {
    failShare,
    endAge: luck.map((u01, s) => ((failShare[s] as number) > 0 ? ageAt(u01) : Number.POSITIVE_INFINITY)),
  };
}

/** Flies believed in all cups together, rounded on the log scale. */
function roundStock(existing: ExistingCup[]): number {
  const flies = existing.reduce((sum, { draws }) => sum + moments(draws.fliesNow).mean, 0);
  return flies < 1 ? 0 : Math.exp(rounded(Math.log(flies), steps.stock));
}

/** Flies of a cup that nobody fed from, as a weight: younger emergence counts more. */
function usualStock(cup: ExistingCup, survival: number): number {
  const { ageDays, curve } = cup;
  let held = 0;
  for (let a = 0; a < ageDays; a++) held = held * survival * 0.7 + (curve.emergedByAge[a] ?? 0);
  return held * cupsOf(cup);
}

function moments(sample: Float64Array): { mean: number; sd: number } {
  const mean = sample.reduce((sum, x) => sum + x, 0) / Math.max(1, sample.length);
  const squares = sample.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  return { mean, sd: Math.sqrt(squares / Math.max(1, sample.length)) };
}

/** Rounded to the middle of its step, so that a value of a few whole steps and a half does not jump. */
function middleOfStep(value: number, step: number): number {
  return (Math.floor(value / step) + 0.5) * step;
}

function rounded(value: number, step: number): number {
  return Math.round(value / step) * step;
}

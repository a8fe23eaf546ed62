/**
 * The planner against habit and bound: cups over 26 weeks on households by seed, judged in fresh worlds
 * of another seed, beside the best two-weekday and one-weekday habits of the smallest size that holds; its
 * speed; a year of three strains and 200 groups; a facility. FLYLARDER_PART and FLYLARDER_HOUSEHOLDS run pieces,
 * FLYLARDER_WORLDS sets how many worlds judge a plan.
 */
import { createRequire } from 'node:module';
import { situation, solverOf } from '../src/app/index.ts';
import {
  cupsUnderCertainty,
  foresightBound,
  forecastSupply,
  habitPlan,
  type NeedGroup,
  type PlanningProblem,
  planSupply,
  type Solve,
  tunePolicy,
  type Verification,
  verifyPolicy,
} from '../src/planner/index.ts';
import { askedSeeds } from './asked-seeds.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';
import { syntheticProblem } from './households.ts';
import { afterRecords, benchDay, seededFacts } from './seeded-households.ts';

// Left out of the bundle, so that the solver finds its WebAssembly file beside itself.
const highsLoader = createRequire(import.meta.url)('highs') as typeof import('highs')['default'];

const households = 20;
const verifyWorlds = Number(process.env.FLYLARDER_WORLDS ?? 10_000);

/** Parts, by FLYLARDER_PART (all when left out): each takes less than four minutes. */
const parts = ['households', 'strict', 'speed', 'long', 'facility'] as const;
type Part = (typeof parts)[number];

export async function run(): Promise<BenchResult> {
  const asked = (process.env.FLYLARDER_PART ?? parts.join()).split(',') as Part[];
  const highs = asked.includes('households') ? await highsLoader() : null;
  const rows: BenchRow[] = [];
  if (highs) rows.push(...householdRows(solverOf(highs)));
  if (asked.includes('strict')) rows.push(...askedSeeds(households).map(strictly));
  if (asked.includes('speed')) rows.push(...speed());
  if (asked.includes('long')) rows.push(longPlan());
  if (asked.includes('facility')) rows.push(facility());
  return { title: 'Planner: service 99 % a day', rows };
}

function seededProblem(seed: number): PlanningProblem {
  return afterRecords(situation(seededFacts(seed), { on: benchDay, seed }, 26).problem);
}

/** Nothing bought once flies started at home could have emerged, for plan and habit alike. */
function strictly(seed: number): BenchRow {
  const problem = seededProblem(seed);
  const { parameters } = tunePolicy(problem, { purchases: 'bridge' });
  const plan = verifyPolicy(problem, { kind: 'feedback', parameters }, { seed: 4242, scenarios: verifyWorlds });
  const habit = habitPlan(problem, { seed: 777, scenarios: verifyWorlds });
  const costRatio = costOf(problem, plan) / costOf(problem, habit.verification);
  return {
    what: `household ${seed}, nothing bought after the start-up: cups (bought; sessions; worst day)`,
    figure: told(plan),
    baseline: `two weekdays ${told(habit.verification)}`,
    ratio: `${(plan.cups / habit.verification.cups).toFixed(2)}; cost ${costRatio.toFixed(2)}`,
    target: `<= 0.8${plan.holds ? '' : ', does not hold'}${habit.holds ? '' : ', habit does not hold'}`,
  };
}

/** Households by seed: plan, two habits, bound, and the gap between. */
function householdRows(solve: Solve): BenchRow[] {
  const judged = askedSeeds(households).map((seed) => household(seed, solve));
  const both = judged.filter(({ holds, habitHolds }) => holds && habitHolds);
  const geometric = (values: number[]) => Math.exp(values.reduce((sum, x) => sum + Math.log(x), 0) / values.length);
  const mean = (what: string, ratio: number, target: string): BenchRow => ({
    what: `${what} where both hold (geometric mean of ${both.length})`,
    figure: ratio,
    baseline: 'best two-weekday habit = 1',
    ratio,
    target,
  });
  const held = judged.filter(({ holds }) => holds).length;
  return [
    ...judged.map(({ row }) => row),
    mean('cups', geometric(both.map(({ ratio }) => ratio)), '<= 0.8'),
    mean("cost in the household's weights", geometric(both.map(({ costRatio }) => costRatio)), '<= 0.8'),
    {
      what: `households held in ${verifyWorlds} fresh worlds`,
      figure: held,
      baseline: `households: ${judged.length}`,
      ratio: held / judged.length,
      target: 1,
    },
  ];
}

function household(seed: number, solve: Solve) {
  const problem = seededProblem(seed);
  const { parameters } = tunePolicy(problem);
  const judge = { seed: 4242, scenarios: verifyWorlds, purchases: 'any' } as const;
  const plan = verifyPolicy(problem, { kind: 'feedback', parameters }, judge);
  const habit = habitPlan(problem, { seed: 777, scenarios: verifyWorlds, purchases: 'any' });
  const weekly = habitPlan(problem, { seed: 777, scenarios: 2000, purchases: 'any', weekdays: singleDays(problem) });
  const bound = foresightBound(problem, solve, { worlds: 8, seed: 4242, prices: [0.3] });
  const certain = cupsUnderCertainty(problem, parameters, 'any');
  const ratio = plan.cups / habit.verification.cups;
  const costRatio = costOf(problem, plan) / costOf(problem, habit.verification);
  const need = problem.strains.map((s) => Math.round(s.wantedFlies[0] ?? 0)).join('+');
  const row = {
    what: `household ${seed}, need ${need}: cups (bought; sessions; worst day) | certain | bound`,
    figure: `${told(plan)} | ${certain ?? '-'} | ${bound.cups.toFixed(1)}`,
    baseline: `two weekdays ${told(habit.verification)}; one ${told(weekly.verification)}${weekly.holds ? '' : ' fails'}`,
    ratio: `${ratio.toFixed(2)}; cost ${costRatio.toFixed(2)}`,
    target: `<= 0.8${plan.holds ? '' : ', does not hold'}${habit.holds ? '' : ', habit does not hold'}`,
  };
  return { row, ratio, costRatio, holds: plan.holds, habitHolds: habit.holds };
}

function told({ cups, cupsBought, sessions, worstDay }: Verification): string {
  return `${cups.toFixed(1)} (${cupsBought.toFixed(1)}; ${sessions.toFixed(0)}; ${worstDay?.service.toFixed(4)})`;
}

function costOf({ weights }: PlanningProblem, { cupsStarted, cupsBought, sessions }: Verification): number {
  return weights.perCup * cupsStarted + weights.perBoughtCup * cupsBought + weights.perSession * sessions;
}

/** Every weekday with time, alone. */
function singleDays({ workDays }: PlanningProblem): number[][] {
  return [0, 1, 2, 3, 4, 5, 6].filter((day) => workDays[day] === 1).map((day) => [day]);
}

function against(what: string, seconds: number, target: number): BenchRow {
  return {
    what,
    figure: `${seconds.toFixed(2)} s`,
    baseline: `target ${target} s`,
    ratio: seconds / target,
    target: '<= 1',
  };
}

function speed(): BenchRow[] {
  const usual = syntheticProblem({ seed: 1, needs: [118, 60], workWeekdays: [0, 3, 4] });
  const plan = cpuSeconds(() => planSupply(usual, { scenarios: 1000 }));
  const { parameters } = plan.value;
  const verify = cpuSeconds(() => verifyPolicy(usual, { kind: 'feedback', parameters }, { seed: 9 }));
  const forecast = cpuSeconds(() => forecastSupply(usual, { scenarios: 1000, weeks: 13, parameters }));
  return [
    against('plan of 26 weeks, two strains, 1,000 worlds, CPU', plan.seconds, 2),
    against('10,000 worlds of 26 weeks with the policy deciding, two strains, CPU', verify.seconds, 2.5),
    against('forecast of 13 weeks, 1,000 worlds, CPU', forecast.seconds, 0.3),
  ];
}

/** A year of three strains, two hundred groups among them. */
function longPlan(): BenchRow {
  const year = syntheticProblem({ seed: 1, needs: [118, 60, 40], workWeekdays: [0, 3, 4], days: 364 });
  const strains = year.strains.map((strain) => ({ ...strain, groups: manyGroups(strain.wantedFlies, 200 / 3) }));
  const plan = cpuSeconds(() => planSupply({ ...year, strains }, { scenarios: 1000 }));
  const megabytes = Math.round(process.memoryUsage().rss / 2 ** 20);
  const { culturesPlanned, worstDay } = plan.value;
  return against(
    `plan of 52 weeks, three strains, 200 groups, 1,000 worlds (${culturesPlanned.toFixed(0)} cups, worst day ${worstDay?.service.toFixed(3)}, ${megabytes} MB), CPU`,
    plan.seconds,
    10,
  );
}

function manyGroups(wanted: Float64Array, count: number): NeedGroup[] {
  const groups = Math.round(count);
  return Array.from({ length: groups }, (_, i) => ({
    group: `group ${i}`,
    waitDays: i % 3,
    flies: wanted.map((flies) => flies / groups),
  }));
}

function facility(): BenchRow {
  const large = syntheticProblem({ seed: 1, needs: [180_000], workWeekdays: [0, 1, 2, 3, 4] });
  large.maxCupsPerSession = 4000;
  large.shelfCups = 40_000;
  const tune = { worlds: 40, finalWorlds: 100, finalRounds: 1 };
  const plan = cpuSeconds(() => planSupply(large, { scenarios: 200, tune }));
  const living = large.strains[0]?.existing.length ?? 0;
  return against(`plan of a facility with ${living} living cups, CPU`, plan.seconds, 10);
}

function cpuSeconds<T>(work: () => T): { value: T; seconds: number } {
  const before = process.cpuUsage();
  const value = work();
  const used = process.cpuUsage(before);
  return { value, seconds: (used.user + used.system) / 1e6 };
}

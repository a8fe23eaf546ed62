/**
 * The smallest habit that holds: the same number of cups on two fixed weekdays, for the best pair of
 * days, judged in the same worlds as the planner's policy. Also a split: a cups on one day, b on the other.
 */
import { grouped } from '../forecast/cup-groups.ts';
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PurchaseMode } from './buying.ts';
import type { PolicyParameters } from './feedback-policy.ts';
import type { Habit } from './habit-policy.ts';
import { usualRescue } from './first-parcel.ts';
import { workDaysOfWeek } from './rhythm.ts';
import { runWorlds } from './run-worlds.ts';
import { type StartUp, startUpOf } from './start-up.ts';
import { worstRisk } from './risk-by-day.ts';
import { judgedDays, policyOf, type Verification, verifyPrepared } from './verify-policy.ts';

export interface HabitOptions {
  /** Pairs of days modulo 7 (0 = today's weekday); every pair of work weekdays unless given. */
  weekdays?: number[][];
  /** Worlds of the search, and of the verification. */
  searchScenarios?: number;
  scenarios?: number;
  seed?: number;
  /** Number of cups on each day, to judge one given habit instead of searching. */
  cupsEach?: number;
  /** Search the split with different numbers on the two days. */
  split?: boolean;
  /** As in verification: `bridge` unless given. */
  purchases?: PurchaseMode;
  /** Safety factors of the bridging purchases. */
  bridge?: PolicyParameters;
}

export interface HabitPlan {
  habit: Habit;
  verification: Verification;
  /** False when even the largest habit tried does not hold. */
  holds: boolean;
}

export function habitPlan(problem: PlanningProblem, options: HabitOptions = {}): HabitPlan {
  const household = prepareHousehold(grouped(problem));
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const pairs = options.weekdays ?? workPairs(household);
  const bridge = options.bridge ?? {
    safety: household.strains.map(() => [2]),
    coverDays: 0,
    founderCups: 2,
    rescueSafety: usualRescue,
  };
  const search = {
    household,
    startUps,
    bridge,
    seed: options.seed ?? problem.seed,
    worlds: options.searchScenarios ?? 300,
    purchases: options.purchases ?? 'bridge',
  };
  const ranked = pairs
    .map((weekdays) => smallestHabit(search, weekdays, options))
    .sort((a, b) => weeklyCups(a) - weeklyCups(b));
  return verifiedHabit(search, ranked, options);
}

interface Search {
  household: PreparedHousehold;
  startUps: StartUp[];
  bridge: PolicyParameters;
  seed: number;
  worlds: number;
  purchases: PurchaseMode;
}

function weeklyCups(habit: Habit): number {
  return habit.cups.flat().reduce((a, b) => a + b, 0);
}

/** Pairs of the weekdays on which work is possible in at least half of the weeks. */
function workPairs(household: PreparedHousehold): number[][] {
  const free = workDaysOfWeek(household);
  const pairs = free.flatMap((a, i) => free.slice(i + 1).map((b) => [a, b]));
  return pairs.length > 0 ? pairs : [free];
}

/** Grows each strain's number until its risk in the search worlds is at most what is asked. */
function smallestHabit(search: Search, weekdays: number[], options: HabitOptions): Habit {
  const { household } = search;
  const cups = household.strains.map(() => weekdays.map(() => options.cupsEach ?? 1));
  if (options.cupsEach !== undefined) return { weekdays, cups };
  const done = household.strains.map((strain) => strain.meanNeed <= 0);
  household.strains.forEach((strain, k) => {
    if (strain.meanNeed <= 0) cups[k] = weekdays.map(() => 0);
  });
  const before = household.strains.map(() => Number.POSITIVE_INFINITY);
  while (done.includes(false)) {
    const risks = habitRisks(search, { weekdays, cups });
    risks.forEach((risk, k) => {
      if (done[k]) return;
      const row = cups[k] as number[];
      // Days that no home-grown cup can change keep their risk however large the habit is.
      const stuck = risk > 0.97 * (before[k] as number) && Math.max(...row) >= enoughCups(search, k);
      before[k] = risk;
      if (risk <= 1 - household.problem.serviceLevel || stuck) done[k] = true;
      else cups[k] = largerRow(row, options.split ?? false);
    });
  }
  return { weekdays, cups };
}

/** Cups a session that would give three times the need: a larger habit can't help any more. */
function enoughCups(search: Search, k: number): number {
  const strain = search.household.strains[k];
  if (strain === undefined) return 1;
  return Math.ceil((3 * 3.5 * strain.meanNeed) / Math.max(1, strain.curves.totalExpected[0] as number));
}

/** One more cup on every day, or in a split on the day that has fewer. */
function largerRow(row: number[], split: boolean): number[] {
  const step = Math.max(1, Math.floor((row[0] as number) * 0.04));
  if (!split) return row.map((n) => n + step);
  const least = row.indexOf(Math.min(...row));
  return row.map((n, i) => (i === least ? n + step : n));
}

function habitRisks(search: Search, habit: Habit): number[] {
  const { household, startUps, bridge, seed, worlds } = search;
  const judgedFrom = judgedDays(household, startUps);
  const policy = policyOf({ kind: 'habit', habit, bridge }, search.purchases, startUps);
  const tally = runWorlds(household, policy, { seed, worlds, judgedFrom });
  return household.strains.map((_, k) => worstRisk(household, tally, k, judgedFrom[k] as number));
}

/** The first of the ranked habits that holds when verified; grown where it is short when none does. */
function verifiedHabit(search: Search, ranked: Habit[], options: HabitOptions): HabitPlan {
  const verify = (habit: Habit) =>
    verifyPrepared(
      search.household,
      { kind: 'habit', habit, bridge: search.bridge },
      {
        seed: search.seed ^ 0x9e3779b9,
        scenarios: options.scenarios ?? 10_000,
        purchases: search.purchases,
      },
    );
  let last: HabitPlan | null = null;
  for (const habit of ranked) {
    const verification = verify(habit);
    last = { habit, verification, holds: verification.holds };
    if (verification.holds || options.cupsEach !== undefined) return last;
  }
  let habit = ranked[0] as Habit;
  for (let round = 0; round < growthRounds && last !== null && !last.holds; round++) {
    const worst = last.verification.worstDay?.strain ?? 0;
    habit = { ...habit, cups: habit.cups.map((row, k) => (k === worst ? row.map((n) => n + 1) : row)) };
    const verification = verify(habit);
    last = { habit, verification, holds: verification.holds };
  }
  return last as HabitPlan;
}

/** Rounds in which the strain of the worst day gets one more cup on each day. */
const growthRounds = 3;

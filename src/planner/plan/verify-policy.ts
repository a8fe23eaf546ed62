/** Judges a policy in fresh worlds: service by day with its standard error, cups, sessions, shortfalls. */
import { quantileSorted } from '../../foundation/index.ts';
import { grouped } from '../forecast/cup-groups.ts';
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PurchaseMode } from './buying.ts';
import { feedbackPolicy, type PolicyParameters } from './feedback-policy.ts';
import { type Habit, habitPolicy } from './habit-policy.ts';
import type { Policy } from './household-world.ts';
import { runWorlds, serviceByDay, worstDay } from './run-worlds.ts';
import { type StartUp, startUpOf } from './start-up.ts';
import { type GroupService, groupServices } from './group-service.ts';
import type { Tally, WorldCounts } from './tally.ts';

/** Something that can be verified: the planner's policy or a habit. */
export type PolicyChoice =
  | { kind: 'feedback'; parameters: PolicyParameters }
  | { kind: 'habit'; habit: Habit; bridge: PolicyParameters };

export interface VerifyOptions {
  /** Worlds; 10,000 unless given. */
  scenarios?: number;
  seed: number;
  /** `bridge` (default) judges strictly: nothing is bought once home-grown flies could have emerged. */
  purchases?: PurchaseMode;
}

export interface Verification {
  scenarios: number;
  seed: number;
  purchases: PurchaseMode;
  /** Service by day, one array per strain. */
  serviceByDay: Float64Array[];
  /** Chance that every ration of the day is given on it, by strain and day. */
  fullRationByDay: Float64Array[];
  /** Flies missing in the mean over all worlds, by strain and day. */
  meanMissingFlies: Float64Array[];
  homeGrownFromDay: (number | null)[];
  /** Worst judged day, or null when no day is judged. */
  worstDay: { strain: number; day: number; service: number; standardError: number } | null;
  /** Whether the worst day's service plus two standard errors is at least what was asked. */
  holds: boolean;
  cupsStarted: number;
  cupsBought: number;
  /** Started and bought. */
  cups: number;
  sessions: number;
  cupsMissed: number;
  /** Days in the mean world-horizon on which some strain fell short. */
  shortDays: number;
  chanceOfNoShortfall: number;
  /** The same up to 13 weeks, 52 weeks and the horizon, as far as it goes. */
  noShortfall: { days: number; chance: number }[];
  /** Of a day that falls short: the share of its need that is missing, mean. */
  meanMissingShare: number;
  groups: GroupService[];
  byWorld: WorldCounts;
  /** Chance of a session on each day. */
  sessionByDay: Float64Array;
  /** Longest run of short days of the worlds that have any: mean and 95 % quantile. */
  shortfallRunDays: { mean: number; p95: number };
}

/** Verifies a policy on worlds of another seed; see `Verification`. */
export function verifyPolicy(problem: PlanningProblem, choice: PolicyChoice, options: VerifyOptions): Verification {
  return verifyPrepared(prepareHousehold(grouped(problem)), choice, options);
}

export function verifyPrepared(
  household: PreparedHousehold,
  choice: PolicyChoice,
  options: VerifyOptions,
): Verification {
  const { scenarios = 10_000, seed, purchases = 'bridge' } = options;
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const judgedFrom = judgedDays(household, startUps);
  const tally = runWorlds(household, policyOf(choice, purchases, startUps), { seed, worlds: scenarios, judgedFrom });
  return verificationOf(household, tally, { seed, purchases, startUps });
}

export function policyOf(choice: PolicyChoice, purchases: PurchaseMode, startUps: StartUp[]): Policy {
  if (choice.kind === 'feedback') return feedbackPolicy(choice.parameters, purchases, startUps);
  return habitPolicy(choice.habit, feedbackPolicy(choice.bridge, purchases, startUps));
}

/** First judged day by strain: home-grown flies could have emerged; the horizon's end when never. */
export function judgedDays(household: PreparedHousehold, startUps: StartUp[]): number[] {
  return startUps.map((s) => s.homeGrownFromDay ?? household.problem.days);
}

export function verificationOf(
  household: PreparedHousehold,
  tally: Tally,
  about: { seed: number; purchases: PurchaseMode; startUps: StartUp[] },
): Verification {
  const n = Math.max(1, tally.worlds);
  const judgedFrom = judgedDays(household, about.startUps);
  const worst = worstDay(household, tally, judgedFrom);
  const standardError = worst ? serviceStandardError(worst.service, n) : 0;
  const started = sum(tally.cupsStarted) / n;
  const bought = sum(tally.cupsBought) / n;
  return {
    scenarios: tally.worlds,
    seed: about.seed,
    purchases: about.purchases,
    serviceByDay: household.strains.map((_, k) => serviceByDay(tally, k)),
    fullRationByDay: tally.lateWorlds.map((late) => late.map((worlds) => 1 - worlds / n)),
    meanMissingFlies: tally.missingFlies.map((missing) => missing.map((flies) => flies / n)),
    homeGrownFromDay: about.startUps.map((s) => s.homeGrownFromDay),
    worstDay: worst && { ...worst, standardError },
    holds: worst === null || worst.service + 2 * standardError >= household.problem.serviceLevel,
    cupsStarted: started,
    cupsBought: bought,
    cups: started + bought,
    sessions: tally.sessions / n,
    cupsMissed: tally.cupsMissed / n,
    shortDays: tally.shortDays / n,
    chanceOfNoShortfall: tally.worldsWithoutShortfall / n,
    noShortfall: tally.marks.map(({ days, worlds }) => ({ days, chance: worlds / n })),
    meanMissingShare: tally.shortStrainDays > 0 ? tally.missingShare / tally.shortStrainDays : 0,
    groups: groupServices(household, tally),
    byWorld: tally.byWorld,
    sessionByDay: tally.sessionWorlds.map((worlds) => worlds / n),
    shortfallRunDays: runsOf(tally.longestRuns),
  };
}

/** Standard error of a share estimated from `n` worlds, not below that of one short world. */
export function serviceStandardError(service: number, n: number): number {
  const inside = Math.min(1 - 1 / (n + 1), Math.max(1 / (n + 1), service));
  return Math.sqrt((inside * (1 - inside)) / n);
}

function runsOf(runs: number[]): { mean: number; p95: number } {
  if (runs.length === 0) return { mean: 0, p95: 0 };
  const sorted = Float64Array.from(runs).sort();
  return { mean: sum(sorted) / sorted.length, p95: quantileSorted(sorted, 0.95) };
}

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

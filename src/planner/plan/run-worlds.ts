/** Runs a policy in many worlds of a seed and counts what happens. */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import { makeHouseholdWorld, type Policy, runWorld } from './household-world.ts';
import { makeTally, type Tally } from './tally.ts';

export interface RunOptions {
  seed: number;
  worlds: number;
  bands?: boolean;
  judgedFrom: number[];
  /** Number of the first world: the same policy on other worlds of the seed. */
  firstWorld?: number;
}

export function runWorlds(household: PreparedHousehold, policy: Policy, options: RunOptions): Tally {
  const { seed, worlds, judgedFrom, bands = false, firstWorld = 0 } = options;
  const tally = makeTally(household, { worlds, bands, judgedFrom });
  const hw = makeHouseholdWorld(household, tally);
  for (let world = 0; world < worlds; world++) {
    tally.beginWorld();
    // The tally counts judged days alone.
    runWorld(hw, policy, seed, firstWorld + world, household.problem.days);
    tally.endWorld();
  }
  return tally;
}

/** Chance of no shortfall on each day, for a strain. */
export function serviceByDay(tally: Tally, strain: number): Float64Array {
  return (tally.shortWorlds[strain] as Float64Array).map((short) => 1 - short / Math.max(1, tally.worlds));
}

export interface WorstDay {
  strain: number;
  day: number;
  service: number;
}

/** The day and strain with the lowest service, among the judged days that have a need. */
export function worstDay(household: PreparedHousehold, tally: Tally, judgedFrom: number[]): WorstDay | null {
  let worst: WorstDay | null = null;
  household.strains.forEach((strain, k) => {
    const service = serviceByDay(tally, k);
    for (let t = judgedFrom[k] ?? 0; t < service.length; t++) {
      const level = service[t] as number;
      // A ration that was put off can be missed on a day on which nothing else is wanted.
      if ((strain.need[t] as number) <= 0 && level === 1) continue;
      if (worst === null || level < worst.service) worst = { strain: k, day: t, service: level };
    }
  });
  return worst;
}

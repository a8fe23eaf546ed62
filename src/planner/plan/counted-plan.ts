/** The cups that a plan takes in many worlds, counted by their worth. */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import type { CupWorth } from './certain-plan.ts';
import { makeHouseholdWorld, type Policy, runWorld } from './household-world.ts';

export interface CountedPlan {
  cups: number;
  standardError: number;
}

export function countedPlan(
  household: PreparedHousehold,
  policy: Policy,
  worth: CupWorth,
  { seed, worlds }: { seed: number; worlds: number },
): CountedPlan {
  const { days } = household.problem;
  let cups = 0;
  const hw = makeHouseholdWorld(household, {
    day() {},
    started(k, t, started) {
      if (t < days) cups += started * worth.started(k, t);
    },
    ordered(k, t, arrival, kind, bought) {
      if (t < days && arrival < days) cups += bought * worth.bought(k, arrival, kind);
    },
  });
  let sum = 0;
  let squares = 0;
  for (let world = 0; world < worlds; world++) {
    cups = 0;
    runWorld(hw, policy, seed, world, days);
    sum += cups;
    squares += cups * cups;
  }
  const mean = sum / worlds;
  const variance = Math.max(0, squares / worlds - mean * mean);
  return { cups: mean, standardError: Math.sqrt(variance / worlds) };
}

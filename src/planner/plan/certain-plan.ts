/**
 * What the same rules would need were nothing uncertain: the fewest cups with which the policy, without any
 * cover, feeds every judged day of the mean world in full. What a plan needs beyond it is the price of not
 * knowing; what it needs beyond a bound is the price of whole cups, of founders and of the search.
 */
import { grouped } from '../forecast/cup-groups.ts';
import { prepareHousehold } from '../forecast/prepared-household.ts';
import { meanWorld } from '../forecast/strain-world.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PurchaseMode } from './buying.ts';
import { feedbackPolicy, type PolicyParameters } from './feedback-policy.ts';
import { type BoughtKind, makeHouseholdWorld, runWorld } from './household-world.ts';
import { tolerance } from './short-days.ts';
import { startUpOf } from './start-up.ts';
import { judgedDays } from './verify-policy.ts';

/** Standard deviations of cover tried, the least first: the mean world is not quite what a rule projects. */
const covers = [0, 0.15, 0.3, 0.5, 0.75, 1];
const batches = [0, 3, 7];

/** What a start or a delivery within the horizon counts, by strain and day. */
export interface CupWorth {
  started(strain: number, t: number): number;
  bought(strain: number, arrival: number, kind: BoughtKind): number;
}

const everyCup: CupWorth = { started: () => 1, bought: () => 1 };

/**
 * Cups started and bought within the horizon, each counted once or by its `worth`; null when the mean world is
 * short whatever is tried.
 */
export function cupsUnderCertainty(
  problem: PlanningProblem,
  like: PolicyParameters,
  purchases: PurchaseMode,
  worth = everyCup,
): number | null {
  // Where any risk is allowed, no cup is started against another's failure.
  const household = prepareHousehold({ ...grouped(problem), serviceLevel: 0 });
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const judgedFrom = judgedDays(household, startUps);
  let least: number | null = null;
  for (const cover of covers) {
    for (const coverDays of batches) {
      const safety = household.strains.map(() => [cover]);
      const parameters = { ...like, safety, coverDays, founderCups: 1, rescueSafety: cover };
      const { cups, short } = meanRun(household, feedbackPolicy(parameters, purchases, startUps), judgedFrom, worth);
      if (!short && (least === null || cups < least)) least = cups;
    }
  }
  return least;
}

function meanRun(
  household: ReturnType<typeof prepareHousehold>,
  policy: ReturnType<typeof feedbackPolicy>,
  judgedFrom: number[],
  worth: CupWorth,
): { cups: number; short: boolean } {
  const { days } = household.problem;
  let cups = 0;
  let short = false;
  const hw = makeHouseholdWorld(household, {
    day(k, t, _emerging, _onHand, { missed }) {
      if (t < days && t >= (judgedFrom[k] ?? 0) && missed > tolerance) short = true;
    },
    started(k, t, started) {
      if (t < days) cups += started * worth.started(k, t);
    },
    ordered(k, t, arrival, kind, bought) {
      if (t < days && arrival < days) cups += bought * worth.bought(k, arrival, kind);
    },
  });
  runWorld(hw, policy, 0, meanWorld, days);
  return { cups, short };
}

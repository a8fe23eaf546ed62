/**
 * How far ahead a parcel sees where a household has no home-grown cup: each choice is run on the same worlds until
 * its own cups have taken over, postage included.
 */
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import type { PurchaseMode } from './buying.ts';
import { feedbackPolicy, type PolicyParameters } from './feedback-policy.ts';
import { costOf, postageOf, unsafePenalty } from './policy-cost.ts';
import { runWorlds } from './run-worlds.ts';
import { startUpOf } from './start-up.ts';

/** Days that a parcel may cover beyond those that only it can help; the first is to order as late as can be. */
const choices = [0, 4, 8, 14, 21];
const worlds = 150;
/** Days after purchases no longer bridge that are still judged, and that are seen to but not judged. */
const afterBridge = 7;
const lookAheadDays = 49;

/** The cheapest choice in the household's weights; 0 where home-grown cups stand. */
export function bestParcelDays(household: PreparedHousehold, parameters: PolicyParameters, mode: PurchaseMode): number {
  if (!household.fromNothing || mode === 'none' || household.strains.length === 0) return 0;
  const starting = whileStartingUp(household);
  const costs = choices.map((parcelDays) => costWith(starting, { ...parameters, parcelDays }, mode));
  return choices[costs.indexOf(Math.min(...costs))] as number;
}

function whileStartingUp({ problem, strains, ...household }: PreparedHousehold): PreparedHousehold {
  const bridged = strains.map((strain) => startUpOf({ problem, strains, ...household }, strain).bridgeUntilDay);
  const days = Math.min(problem.days, Math.max(...bridged) + afterBridge);
  const runOutDays = Math.min(problem.days + problem.runOutDays - days, lookAheadDays);
  return prepareHousehold({ ...problem, days, runOutDays });
}

function costWith(household: PreparedHousehold, parameters: PolicyParameters, mode: PurchaseMode): number {
  const { problem, strains, deliveryByOrderDay } = household;
  const startUps = strains.map((strain) => startUpOf(household, strain));
  // Days before a delivered cup has taken effect are alike whatever is ordered.
  const judgedFrom = strains.map(
    ({ curves, strain }) =>
      (deliveryByOrderDay[0] as number) +
      Math.ceil((curves.effectAge[curves.producing] as number) - strain.bought.producingAgeDays),
  );
  const policy = feedbackPolicy(parameters, mode, startUps);
  const tally = runWorlds(household, policy, { seed: problem.seed ^ 0x3c6ef372, worlds, judgedFrom });
  return (
    (costOf(household, tally) + postageOf(household, tally) / worlds) * unsafePenalty(household, tally, judgedFrom)
  );
}

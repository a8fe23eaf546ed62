/** What a policy costs in the household's weights, and what its unsafe days weigh. */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import { worstRisk } from './risk-by-day.ts';
import type { Tally } from './tally.ts';

/** A risk one in a hundred above what is asked weighs like a fifth more cost. */
const penaltyPerRisk = 20;

/** Bought cups that a parcel weighs as much as, since postage is paid by parcel: common practice, no source. */
const cupsPerParcel = 1;

/** A factor above 1 for a policy whose worst days stay well below what is asked. */
export function unsafePenalty(household: PreparedHousehold, tally: Tally, judgedFrom: number[]): number {
  const allowed = 1 - household.problem.serviceLevel;
  const noise = 2 * Math.sqrt(allowed / tally.worlds / 2);
  let excess = 0;
  household.strains.forEach((_, k) => {
    excess = Math.max(excess, worstRisk(household, tally, k, judgedFrom[k] as number) - allowed - noise);
  });
  return 1 + Math.max(0, excess) * penaltyPerRisk;
}

/** Weighted cost of a world, mean over the tally. */
export function costOf(household: PreparedHousehold, tally: Tally): number {
  const { perCup, perSession, perBoughtCup } = household.problem.weights;
  const started = tally.cupsStarted.reduce((a, b) => a + b, 0);
  const bought = tally.cupsBought.reduce((a, b) => a + b, 0);
  return (perCup * started + perBoughtCup * bought + perSession * tally.sessions) / Math.max(1, tally.worlds);
}

/** Weighted postage of all worlds of the tally together. */
export function postageOf(household: PreparedHousehold, { parcels }: Tally): number {
  return household.problem.weights.perBoughtCup * cupsPerParcel * parcels;
}

/** States of the chain, kept whole here and there: what the checks of the model are made with. */
import type { HouseholdChain } from './household-chain.ts';

/** One joint draw of every cup's pace and yield, of what the household makes of them, and of the keeper's way. */
export interface ChainSnapshot {
  setting: number;
  cupPace: Float64Array;
  cupYield: Float64Array;
  /** Each cup's yield less what household, recipe, place and session say, over the spread of cups. */
  yieldScore: Float64Array;
}

/** Snapshots of a chain: few are enough, as each holds every cup. */
export const snapshotsWanted = 8;

export function snapshotOf(chain: HouseholdChain): ChainSnapshot {
  return {
    setting: chain.setting,
    cupPace: chain.cupPace.slice(),
    cupYield: chain.cupYield.slice(),
    yieldScore: chain.yieldScores(),
  };
}

/**
 * How this keeper writes: the error of counts, and where the words for amounts begin. Both are unknown
 * and learned on a small grid that all cups of a strain share.
 */
import type { FullPrior } from './priors.ts';

export interface KeeperSetting {
  /** Log sd of a count. */
  countSd: number;
  /** Log factor on the beginnings of the words: 0.3 = this keeper says `plenty` at 35 % more flies. */
  wordOffset: number;
  logPrior: number;
}

const countSteps = [-2, -1, 0, 1, 2];
const offsetSteps = [-2, -1, 0, 1, 2];
/** Log sd of the count error's prior. */
export const countSpread = 0.4;

/** Settings ordered by count error, then offset: index = count step x 5 + offset step. */
export function keeperSettings(prior: FullPrior): KeeperSetting[] {
  return countSteps.flatMap((c) =>
    offsetSteps.map((w) => ({
      countSd: prior.countSd * Math.exp(countSpread * c),
      wordOffset: prior.wordOffsetSd * w,
      logPrior: -0.5 * c * c - 0.5 * w * w,
    })),
  );
}

/** The setting whose table serves `setting` for a cup without words: same counts, offset zero. */
export function settingWithoutWords(setting: number): number {
  return Math.floor(setting / offsetSteps.length) * offsetSteps.length + Math.floor(offsetSteps.length / 2);
}

/** The setting with the same counts whose words begin one step further (`by` = 1) or nearer (-1), or -1. */
export function settingWithWordsMoved(setting: number, by: 1 | -1): number {
  const offset = (setting % offsetSteps.length) + by;
  return offset >= 0 && offset < offsetSteps.length ? setting + by : -1;
}

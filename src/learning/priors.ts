/**
 * What is believed before the first note. The spreads are common practice and the experience of trial
 * models (docs/models/learning.md says which); none of them is a published measurement.
 */
import type { LearningPrior } from './evidence.ts';

/** A prior with every optional part filled in. */
export type FullPrior = Required<LearningPrior>;

/** The ordinary keeper's prior; the log spreads are natural logarithms. */
export const ordinaryPrior: FullPrior = {
  householdPaceSd: 0.1,
  householdYieldSd: 0.3,
  cupPaceSd: 0.05,
  cupYieldSd: 0.3,
  sessionYieldSd: 0.1,
  countSd: 0.35,
  discrepancySd: 0.15,
  paceDiscrepancySd: 0.05,
  discrepancyLogSd: 0.6,
  failure: { a: 2, b: 22 },
  sessionFailure: { a: 1, b: 99 },
  recipeYieldSd: 0.15,
  recipePaceSd: 0.03,
  placePaceSd: 0.04,
  placeYieldSd: 0.08,
  generationYieldSd: 0.02,
  foundersYieldSd: 0.15,
  wordOffsetSd: 0.35,
  wordSd: 0.35,
  wrongEntryShare: 0.03,
  presumedDone: 0.85,
  lifeSd: 0.12,
};

/** `prior` with the ordinary values where it is silent. */
export function fullPrior(prior: LearningPrior): FullPrior {
  return { ...ordinaryPrior, ...prior };
}

/** How surely an eye dates the first sight of each stage: sd in days (common practice, no source). */
export const sightingSdDays = { larvae: 0.8, pupae: 0.7, adults: 0.6 } as const;

/**
 * The words for adults in a cup, by the flies at which each begins (common practice, no source); a
 * keeper's own scale is this one times a learned factor.
 */
export const wordBeginsAtFlies = { none: 0, few: 2, some: 15, plenty: 60, swarming: 200 } as const;

/** Flies that fall out per tap before any was counted (value from memory): median and log sd. */
export const tapPrior = { medianFlies: 12, logSd: 0.7, eachTakeLogSd: 0.35 } as const;

/**
 * A day's emergence strays from the curve by this many times the structural discrepancy. Some four days
 * carry most of a cup's flies, so that its total strays by about the discrepancy itself.
 */
export const dailyStrayFactor = 2;

/**
 * How far households, sessions and cups stray from the books before a log says more. Logs of the
 * natural logarithm; the reasons are in docs/models/learning.md.
 */
import type { LearningPrior } from '../learning/index.ts';

export const bookPrior: LearningPrior = {
  householdPaceSd: 0.1,
  householdYieldSd: 0.3,
  cupPaceSd: 0.05,
  cupYieldSd: 0.3,
  sessionYieldSd: 0.1,
  countSd: 0.35,
  discrepancySd: 0.15,
  // No published rate exists; about one cup in twelve fails before its time (value from memory).
  failure: { a: 2, b: 22 },
};

/** A whole session's cups lost together (one bad batch of medium): value from memory. */
export const sessionFailureChance = 0.01;
/** Failures come between these ages in days: mould early, mites late. */
export const failureAges = { from: 4, until: 30 };
/** A keeper who feeds every day notices a dead cup within days. */
export const failureNoticedDays = 3;

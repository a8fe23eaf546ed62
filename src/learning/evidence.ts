/**
 * Learning's input and output in plain terms: nominal curves of each cup, what was seen and taken, and
 * priors; then what is believed of the household and of each cup, as draws that the planner uses.
 */

export interface LearningInput {
  seed: number;
  /** Draws wanted for the planner; entry `s` of every array belongs together. */
  draws: number;
  prior: LearningPrior;
  strains: StrainEvidence[];
}

export interface LearningPrior {
  /** Household mean of log pace and log yield against the books: sds around 0. */
  householdPaceSd: number;
  householdYieldSd: number;
  cupPaceSd: number;
  cupYieldSd: number;
  sessionYieldSd: number;
  countSd: number;
  /** Structural misfit of model and world, log sd, added to every forecast. */
  discrepancySd: number;
  /** Beta prior of the chance that a cup fails before its time. */
  failure: { a: number; b: number };
}

export interface StrainEvidence {
  strain: string;
  adultDailySurvival: number;
  cups: CupEvidence[];
}

export interface CupEvidence {
  id: string;
  /** Age today in days; for an ended cup, its age at the end. */
  ageDays: number;
  /** Starting session (cups of one session share luck): the day number of its start. */
  session: number;
  recipe: string | null;
  place: string;
  generation: number | null;
  /** Nominal emergence by age day, length at least `ageDays` + 60. */
  emergedByAge: Float32Array;
  /** Nominal age in days at which each stage is first visible. */
  firstSeenAge: { larvae: number; pupae: number; adults: number };
  spentAge: number;
  looks: CupLook[];
  /** Flies taken, by age day; `flies` null when nobody counted. `presumed` = planned, not recorded. */
  takes: { ageDays: number; flies: number | null; taps: number | null; emptied: boolean; presumed: boolean }[];
  ended: { ageDays: number; failed: boolean } | null;
}

export interface CupLook {
  ageDays: number;
  present: ('larvae' | 'pupae' | 'adults')[];
  absent: ('larvae' | 'pupae' | 'adults')[];
  amount: 'none' | 'few' | 'some' | 'plenty' | 'swarming' | null;
  count: number | null;
}

export interface Beliefs {
  byStrain: Map<string, StrainBelief>;
  cups: Map<string, CupBelief>;
}

export interface StrainBelief {
  /** Against the books: exp(logPace) 0.92 is 8 % slower. */
  logPace: { mean: number; sd: number };
  logYield: { mean: number; sd: number };
  cupYieldSd: number;
  failureChance: { mean: number; p05: number; p95: number };
  countSd: number;
  fliesPerTap: number | null;
  draws: { logPace: Float64Array; logYield: Float64Array };
}

export interface CupBelief {
  draws: { logPace: Float64Array; logYield: Float64Array; endAge: Float64Array; fliesNow: Float64Array };
  /** Set when what was seen lies outside the cup's band. */
  offCourse: { what: string; chance: number } | null;
}

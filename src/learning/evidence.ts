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
  /** The rest has ordinary values (priors.ts) when left out. Log sds of what a recipe and a place do. */
  recipeYieldSd?: number;
  recipePaceSd?: number;
  placePaceSd?: number;
  placeYieldSd?: number;
  /** Log sd of the change of yield per generation. */
  generationYieldSd?: number;
  /** A keeper's scale of words against the ordinary one, and the scatter of single words (log sds). */
  wordOffsetSd?: number;
  wordSd?: number;
  /** Share of notes that are held to be wrong whatever they say. */
  wrongEntryShare?: number;
  /** Chance that a planned take which nobody wrote down was done. */
  presumedDone?: number;
  /** Log sd of one cup's useful life against the nominal. */
  lifeSd?: number;
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
  /** `spent`: it ran its course (useful life); otherwise it was given away or ended for another reason. */
  ended: { ageDays: number; failed: boolean; spent?: boolean } | null;
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
  /** Against the books: exp(logPace) 0.92 is 8 % slower. The mean over recipes and places. */
  logPace: { mean: number; sd: number };
  logYield: { mean: number; sd: number };
  /** Log sds from cup to cup. */
  cupYieldSd: number;
  cupPaceSd: number;
  failureChance: { mean: number; p05: number; p95: number };
  /** Log sd of this keeper's counts. */
  countSd: number;
  /** Null while nobody wrote taps and flies of one take. */
  fliesPerTap: number | null;
  /** Useful life against the nominal, log. */
  logLife: { mean: number; sd: number };
  /** Change of log yield per generation; null while all cups are of one generation. */
  generationYield: { mean: number; sd: number } | null;
  /** What each recipe and place does against the household's mean, when there are at least two. */
  recipes: LevelBelief[];
  places: LevelBelief[];
  /** Cups with anything to learn from. */
  informativeCups: number;
  /** For cups to come: recipe and place as in the newest cup. Entry `s` is scenario `s`. */
  draws: { logPace: Float64Array; logYield: Float64Array; failureChance: Float64Array; cupYieldSd: Float64Array };
}

/** What one recipe or place does; its draws belong to the same scenarios. */
export interface LevelBelief {
  key: string;
  cups: number;
  draws: { logPace: Float64Array; logYield: Float64Array };
}

export interface CupBelief {
  draws: { logPace: Float64Array; logYield: Float64Array; endAge: Float64Array; fliesNow: Float64Array };
  /** Set when what was seen lies outside the cup's band. */
  offCourse: { what: string; chance: number } | null;
}

/**
 * Learning's input and output in plain terms: nominal curves of each cup, what was seen and taken, and
 * priors; then what is believed of the household and of each cup, as draws that the planner uses.
 */

import type { Band, Said } from '../foundation/index.ts';

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
  /** Beta prior of the chance that all cups of a session are lost together. */
  sessionFailure?: { a: number; b: number };
  /** The rest has ordinary values (priors.ts) when left out. Log sds of what a recipe and a place do. */
  recipeYieldSd?: number;
  recipePaceSd?: number;
  placePaceSd?: number;
  placeYieldSd?: number;
  /** Log sd of the change of yield per generation. */
  generationYieldSd?: number;
  /** Log sd of the change of yield when the founders are doubled, beyond what the curve says. */
  foundersYieldSd?: number;
  /** Structural misfit of timing, log sd, added to every cup's pace in forecasts. */
  paceDiscrepancySd?: number;
  /** Log sd by which a household's discrepancies differ from these two; 0 = not learned. */
  discrepancyLogSd?: number;
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
  /** Adults that started it, when known; the nominal curve already allows for them. */
  founders?: number | null;
  /** What may explain a cup that is off course. */
  signs?: CupSigns;
  /** Nominal emergence by age day, length at least `ageDays` + 60. */
  emergedByAge: Float32Array;
  /** Nominal age in days at which each stage is first visible. */
  firstSeenAge: { larvae: number; pupae: number; adults: number };
  spentAge: number;
  /** Of cups like it that fail, the share that has failed before age 0, 1, 2 ...; even over the life when left out. */
  failedBefore?: Float64Array;
  looks: CupLook[];
  /** Flies taken, by age day; `flies` null when nobody counted. `presumed` = planned, not recorded. */
  takes: {
    ageDays: number;
    flies: number | null;
    taps: number | null;
    emptied: boolean;
    presumed: boolean;
    entryId?: string;
  }[];
  /** `spent`: it ran its course (useful life); otherwise it was given away or ended for another reason. */
  ended: { ageDays: number; failed: boolean; spent?: boolean } | null;
}

/** What else was noted of a cup; null = nobody looked. */
export interface CupSigns {
  moisture: 'wet' | 'good' | 'dry' | null;
  mould: boolean;
  mites: boolean;
  founderAgeDays: number | null;
  /** Founders that suit the container. */
  usualFounders: number | null;
  /** Mean of the readings over its days against what was expected of its place, C; null without readings. */
  warmerByC: number | null;
  /** Share of its days with a reading. */
  measuredShare: number;
  /** Change of log pace a degree, at the temperature that it had; null where the strain does not develop. */
  logPacePerC: number | null;
}

export interface CupLook {
  /** The entry that it was written in, to point at. */
  entryId?: string;
  ageDays: number;
  present: ('larvae' | 'pupae' | 'adults')[];
  absent: ('larvae' | 'pupae' | 'adults')[];
  amount: 'none' | 'few' | 'some' | 'plenty' | 'swarming' | null;
  count: number | null;
}

export interface Beliefs {
  byStrain: Map<string, StrainBelief>;
  cups: Map<string, CupBelief>;
  /** Doubtful notes of all cups, ended ones too. */
  doubtful: Map<string, DoubtfulNote[]>;
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
  /** The same with its band. */
  counting: Band;
  /** Null while nobody wrote taps and flies of one take. */
  fliesPerTap: number | null;
  /** Flies per tap with its band, and the takes it was learned from. */
  perTap: (Band & { takes: number }) | null;
  /** Useful life against the nominal, log. */
  logLife: { mean: number; sd: number };
  /** Change of log yield per generation; null while all cups are of one generation. */
  generationYield: { mean: number; sd: number } | null;
  /** Change of log yield when the founders are doubled, beyond the curve; null while all had as many. */
  foundersYield: { mean: number; sd: number } | null;
  /** Chance that all cups of a starting session are lost together, beyond single failures. */
  sessionFailureChance: { mean: number; p05: number; p95: number };
  /** What each recipe and place does against the household's mean, when there are at least two. */
  recipes: LevelBelief[];
  places: LevelBelief[];
  fit: LogFit;
  /** Structural misfit learned for forecasts, log sds: middle of the flies' and of the timing's. */
  strays: { yieldSd: number; paceSd: number };
  /** Cups with anything to learn from. */
  informativeCups: number;
  /** For cups to come: recipe and place as in the newest cup. Entry `s` is scenario `s`. */
  draws: {
    logPace: Float64Array;
    logYield: Float64Array;
    failureChance: Float64Array;
    cupYieldSd: Float64Array;
    /** How this keeper writes: log sd of counts, log factor on where the words begin. */
    countSd: Float64Array;
    wordOffset: Float64Array;
  };
}

/** Notes that say something of flies or stages, those held to be wrong, and whether the log fits the model. */
export interface LogFit {
  notes: number;
  doubted: number;
  fits: boolean;
  /** What speaks against the model, worst first; empty when the log fits. */
  misfits: Misfit[];
}

export interface Misfit {
  /**
   * `scatter`: notes stray further than their bands; `shape`: flies come at other ages than the curve says;
   * `runs`: misses follow on misses; `stages`: one pace does not explain all stages; `drift`: cups change
   * with time; `wrong notes`: too many notes contradict the rest.
   */
  what: 'scatter' | 'shape' | 'runs' | 'stages' | 'drift' | 'wrong notes';
  /** Chance of as much in a log that the model wrote, allowing for the number of checks. */
  chance: number;
}

/** What one recipe or place does; its draws belong to the same scenarios. */
export interface LevelBelief {
  key: string;
  cups: number;
  draws: { logPace: Float64Array; logYield: Float64Array };
}

export interface CupBelief {
  draws: {
    logPace: Float64Array;
    logYield: Float64Array;
    endAge: Float64Array;
    /** Age at which the cup fails and its flies are lost; Infinity where it runs its course. */
    failAge: Float64Array;
    fliesNow: Float64Array;
  };
  /** Set when what was seen lies outside the cup's band. */
  offCourse: OffCourse | null;
  /** Notes of this cup that do not fit the rest of its log. */
  doubtful: DoubtfulNote[];
}

export interface OffCourse {
  /** What was seen, and what was likely. */
  what: Said;
  /** Chance of a note at least as far out, were the cup an ordinary one of this household. */
  chance: number;
  direction: 'late' | 'early' | 'few' | 'many';
  /** The note that strays most, as figures. */
  note: StrayNote;
  /** Likely causes, likeliest first, each with what to check. */
  causes: { cause: Said; check: Said; noted: boolean }[];
  /** Flies more (or, below 0, fewer) than an ordinary cup gives in the next 14 days: mean. */
  suppliedFliesIn14Days: number;
  /** The same with its band. */
  suppliedFlies: Band;
  /** Days by which its flies come later (below 0: sooner) than an ordinary cup's. */
  daysLate: Band;
  /** Warmth that would explain its pace, C: -1.5 = it runs as a cup 1.5 degrees cooler; null when unknown. */
  asIfWarmerByC: number | null;
}

/** A note that strays: a stage against the day on which it was due, or flies against what was likely. */
export type StrayNote =
  | { kind: 'stage'; stage: 'larvae' | 'pupae' | 'adults'; seen: boolean; ageDays: number; dueAgeDays: number }
  | {
      kind: 'flies';
      flies: number | null;
      word: string | null;
      ageDays: number;
      leastFlies: number;
      mostFlies: number;
    };

/** A note that contradicts others or could not be: shown to the keeper, and used with caution or not at all. */
export interface DoubtfulNote {
  ageDays: number;
  /** The entry, where the log gives one. */
  entryId?: string | undefined;
  found: Said;
  expected: Said;
  /** Chance that the note is wrong; 1 = impossible, and left out. */
  chanceWrong: number;
}

/**
 * The planner's input and output in plain terms: what each cup gives by age, what the animals need by
 * day, which days allow work, and the uncertain quantities as draws. Days are counted from today
 * (0 = today); ages in whole days from starting the cup. The planner knows no logbook and no biology.
 */

/** Everything that a forecast or a plan is computed from. */
export interface PlanningProblem {
  seed: number;
  /** Day number of day 0: chance belongs to the calendar day, so tomorrow's plan meets the same worlds. */
  dayZero?: number;
  /** Days of the horizon that are judged, today included. */
  days: number;
  /** 1 where cups may be started that day, length `days` + run-out (see `runOutDays`). */
  workDays: Uint8Array;
  /** Extra days simulated beyond `days` so that the end of the horizon costs nothing. */
  runOutDays: number;
  maxCupsPerSession: number;
  /** Cups that containers and medium on hand allow, for the first days; the session's limit afterwards. */
  cupsOnHandByDay?: number[];
  shelfCups: number;
  serviceLevel: number;
  purchase: PurchaseTerms;
  weights: { perCup: number; perSession: number; perBoughtCup: number };
  strains: StrainProblem[];
}

export interface PurchaseTerms {
  leadDays: number;
  /** 1 where a delivery may arrive. */
  deliveryDays: Uint8Array;
  /** Days for which a bought cup founds no other, where a home-grown cup stands that mites could reach. */
  quarantineDays: number;
  /** Age in days of a producing cup on arrival, and of a young one, by strain in StrainProblem. */
  arrivalLossShare: number;
}

export interface StrainProblem {
  strain: string;
  /** Flies wanted by the animals on each day, length `days` + `runOutDays`. */
  wantedFlies: Float64Array;
  /** Who wants them; what is wanted by no group here can't wait. */
  groups?: NeedGroup[];
  /** sd of the log of a factor common to all future need (0 when need is certain). */
  needLogSd: number;
  /**
   * Scenarios of the animals' need by day, in place of the common factor: world w takes scenario w modulo their
   * number. Their mean is `wantedFlies`; plans are made for the mean and judged in each.
   */
  needDraws?: Float32Array[];
  /** Flies promised to others (orders), by day. */
  orderedFlies: Float64Array;
  /** One nominal home-started cup for every possible starting day: `curves[startDay]`, 0 = today. */
  curves: CupCurve[];
  foundersPerCup: number;
  /** Cups that can found others now or later, kept whatever the need. */
  backupCups?: number;
  /** Share of adults held in a cup that are alive a day later. */
  adultDailySurvival: number;
  existing: ExistingCup[];
  /** Bought cups on their way. */
  awaited?: AwaitedCups[];
  bought: { producing: CupCurve; producingAgeDays: number; young: CupCurve; youngAgeDays: number };
  uncertainty: CupUncertainty;
}

/** Animals that are fed together. */
export interface NeedGroup {
  group: string;
  /** Days by which a ration can be put off. */
  waitDays: number;
  /** Its part of `wantedFlies`, same days. */
  flies: Float64Array;
  /** Its part of each of the strain's `needDraws`; `flies` in all of them when left out. */
  draws?: Float32Array[];
}

/** What a nominal cup does, by age in whole days from starting (index 0 = the starting day). */
export interface CupCurve {
  /** Flies that emerge on each day of age, with ordinary harvesting. */
  emergedByAge: Float32Array;
  /** Ages at which its flies may be taken as founders, first and last. */
  founderFromAge: number;
  founderUntilAge: number;
  /** Age at which it is thrown out. */
  spentAge: number;
}

/** Cups that were ordered and will be delivered on a day (0 = today). */
export interface AwaitedCups {
  kind: 'producing' | 'young';
  cups: number;
  arrivalDay: number;
}

export interface CupUncertainty {
  /** Log sd of yield: common to the household, to the cups of one session, to one cup. */
  yieldLogSd: { household: number; session: number; cup: number };
  /** Log sd of pace, likewise. */
  paceLogSd: { household: number; session: number; cup: number };
  /** Chance that a cup fails, and that a whole session's cups do. */
  failure: { perCup: number; perSession: number; failedBefore: FailingAges };
  /** What the keeper sees: log sd of a count of flies; days until a failure is noticed. */
  countLogSd: number;
  failureNoticedDays: number;
  /** Draws of the household's log yield and log pace (posterior); empty = use the sds above. */
  householdDraws: { logYield: Float64Array; logPace: Float64Array };
}

/** Share of the cups that fail which have failed before whole age 0, 1, 2 ...: from 0 up to 1. */
export type FailingAges = Float64Array;

/** A living cup, described by draws: entry `s` of each array belongs to scenario `s` modulo length. */
export interface ExistingCup {
  id: string;
  /** Not home-grown (bought, or flies of an ended cup): nothing that quarantine protects. */
  bought?: boolean;
  /** Cups that it stands for; 1 unless given. Yield and flies are those of all of them together. */
  cups?: number;
  /** Days since its start, today. */
  ageDays: number;
  curve: CupCurve;
  /** First day (0 = today) on which it may give founders. */
  foundersFromDay: number;
  draws: {
    logPace: Float64Array;
    logYield: Float64Array;
    /** Age at which it fails; Infinity where it does not. */
    endAge: Float64Array;
    /** Share that fails then, where it stands for several cups; all of it unless given. */
    failShare?: Float64Array;
    /** Flies in it this morning, before those that emerge today. */
    fliesNow: Float64Array;
  };
}

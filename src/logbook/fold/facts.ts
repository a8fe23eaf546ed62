/**
 * What the logbook says, after amendments: the fold's result and the only form in which app/ and the
 * doors see a household. Plain data, days as ISO text, every list sorted, so equal logs give equal facts.
 */
import type { Day, Problem, Weekday } from '../../foundation/index.ts';

export interface Facts {
  household: HouseholdFacts;
  places: PlaceFacts[];
  strains: StrainFacts[];
  containers: ContainerFacts[];
  batches: BatchFacts[];
  recipes: RecipeFacts[];
  cultures: CultureFacts[];
  groups: GroupFacts[];
  feedings: FeedingFact[];
  weighings: WeighingFact[];
  absences: AbsenceFact[];
  /** Flies or cups promised on a date, to share or sell. */
  orders: OrderFact[];
  /** Cups ordered from others and not here yet. */
  purchases: PurchaseFact[];
  stock: StockFact[];
  /** How files of the keeper's loggers are read. */
  loggers: LoggerFacts[];
  /** The day of the newest entry, or null for an empty logbook. */
  lastEntryOn: Day | null;
  /** Entries that contradict others; they are kept in the logbook and left out of the facts. */
  problems: (Problem & { entryId: string })[];
}

export interface HouseholdFacts {
  name: string;
  /** Weekdays with time for starting cups, and any single days added or taken away by absences. */
  workWeekdays: Weekday[];
  /** Chance of no shortfall asked of every day, e.g. 0.99. */
  serviceLevel: number;
  maxCupsPerSession: number;
  /** Living cups that the shelf can hold. */
  shelfCups: number;
  /** Cups of each strain that can found others, kept whatever the need; absent until set. */
  backup?: { cupsPerStrain: number; inTwoPlaces: boolean };
  /** Fewest flies that a cup is started with, against inbreeding; absent until set. */
  leastFounders?: number;
  purchase: { leadDays: number; deliveryWeekdays: Weekday[]; quarantineDays: number; pricePerCup: number | null };
  /** What a cup and a session cost the keeper, in the same currency; the planner's weights. */
  weights: { perCup: number; perSession: number; perBoughtCup: number };
  currency: string;
  hemisphere: 'north' | 'south';
  timeZone: string;
  /** The keeper's or the vet's schedule of supplements; empty when none was written. */
  dusting: { supplement: string; timesPerWeek: number }[];
  /** True when the log presumes that planned feeding was done though nobody wrote it down. */
  presumeFeeding: boolean;
}

export interface PlaceFacts {
  place: string;
  name: string;
  /** Expected mean temperature: one number, or one per season. */
  expected: { allYearC: number } | { winterC: number; springC: number; summerC: number; autumnC: number };
  /** Cup minus room, C. */
  cupOffsetC: number;
  /** Below and above these the keeper wants to be warned, C; absent until set. */
  limitsC?: { low: number; high: number };
  /** Read inside a cup and beside it at one moment, oldest first; absent while there are none. */
  cupPairs?: { on: Day; cupC: number; shelfC: number }[];
  /** Relative humidity of the room, oldest first; absent while there is none. */
  humidity?: { on: Day; percent: number }[];
  /** Daily readings, oldest first. */
  readings: { on: Day; meanC: number; minC: number | null; maxC: number | null }[];
}

export interface LoggerFacts {
  logger: string;
  headings: string[];
  place: string | null;
  /** Headings of columns, and what else the keeper said; null where the file is believed. */
  time: string | null;
  clock: string | null;
  temperature: string | null;
  timeOrder: 'ymd' | 'dmy' | 'mdy' | 'unixSeconds' | 'unixMilliseconds' | 'spreadsheetDays' | null;
  unit: 'C' | 'F' | 'K' | null;
  timeZone: string | null;
}

export interface StrainFacts {
  strain: string;
  name: string;
  /** Key of the published parameter set that it starts from, e.g. melanogaster or hydei. */
  base: string;
  /** The keeper's own corrections, 1 when none: pace (1.1 = 10 % quicker), yield, fly mass. */
  paceFactor: number;
  yieldFactor: number;
  massFactor: number;
  /** Symbol of the mutation that keeps it from flying, `unknown`, or `wild` when it flies. */
  mutation: string;
}

export interface ContainerFacts {
  container: string;
  name: string;
  volumeMl: number;
  mediumMassG: number;
  surfaceCm2: number;
  founders: number;
}

export interface BatchFacts {
  batch: string;
  on: Day;
  recipe: string | null;
  massG: number;
  goodUntil: Day | null;
}

export interface RecipeFacts {
  recipe: string;
  name: string;
  ingredients: { ingredient: string; massG: number }[];
  waterMl: number;
}

export interface CultureFacts {
  culture: string;
  label: string;
  strain: string;
  origin: 'started' | 'bought';
  /** For a bought culture: the day it arrived. */
  on: Day;
  /** Day on which its founders went in: `on`, less the age it had when bought. */
  startedOn: Day;
  places: { from: Day; place: string }[];
  container: string | null;
  mediumMassG: number;
  surfaceCm2: number;
  batch: string | null;
  founders: number;
  founderAgeDays: number | null;
  /** Live yeast put on the medium; absent until said. */
  liveYeast?: YeastWord;
  fromCultures: string[];
  /** First day on which it may give founders; null for a home-started one, and one that came where none stood. */
  quarantinedUntil: Day | null;
  seen: SeenFact[];
  harvests: HarvestFact[];
  ended: { on: Day; reason: EndReason } | null;
  notes: { on: Day; text: string }[];
}

export const endReasons = [
  'spent',
  'mould',
  'mites',
  'dry',
  'wet',
  'crashed',
  'contaminated',
  'given',
  'other',
] as const;
export type EndReason = (typeof endReasons)[number];
export const yeastWords = ['none', 'good', 'excess'] as const;
export type YeastWord = (typeof yeastWords)[number];
export const amountWords = ['none', 'few', 'some', 'plenty', 'swarming'] as const;
export type AmountWord = (typeof amountWords)[number];
export const seenStages = ['eggs', 'larvae', 'pupae', 'adults'] as const;
export type SeenStage = (typeof seenStages)[number];

export interface SeenFact {
  entryId: string;
  on: Day;
  /** Stages that were looked for and found. */
  present: SeenStage[];
  /** Stages that were looked for and not found. */
  absent: SeenStage[];
  /** Adults in the cup by word or by count. */
  amount: AmountWord | null;
  count: number | null;
  moisture: 'wet' | 'good' | 'dry' | null;
  mould: boolean;
  mites: boolean;
  winged: number | null;
}

export interface HarvestFact {
  entryId: string;
  on: Day;
  /** Flies taken; null when only a word, taps or a weight was written. */
  flies: number | null;
  taps: number | null;
  weightMg: number | null;
  emptied: boolean;
  purpose: 'feeding' | 'founders' | 'given' | 'other';
}

export interface GroupFacts {
  group: string;
  name: string;
  /** Key of the kind of animal, or null. */
  animal: string | null;
  /** Periods in order; each holds until the next begins. A count of 0 ends the group. */
  periods: GroupPeriod[];
  /** This group's schedule of supplements; null where the household's holds. */
  dusting: { supplement: string; timesPerWeek: number }[] | null;
}

export interface GroupPeriod {
  from: Day;
  until: Day | null;
  count: number;
  fliesPerFeeding: number;
  strain: string;
  feedingWeekdays: Weekday[];
  /** Kind of animal that the group was from this day on, or null. */
  animal: string | null;
  /** Days that the group can go without a feeding. */
  canWaitDays: number;
  /** False when nobody wrote it, and the usual day is taken. */
  canWaitIsWritten: boolean;
  massG: number | null;
  /** Warmth in which the animals live, C; null when never written. */
  temperatureC: number | null;
  /** Share of the diet that is flies, above 0 to 1. */
  flyShare: number;
  /** True when the ration stands as written, whatever left-overs, growth and fly size say. */
  keepRation: boolean;
  /** When hatch or arrival is not certain: earliest and latest day, least and most animals. */
  arrival: { earliest: Day; latest: Day; countLow: number; countHigh: number } | null;
}

export interface FeedingFact {
  entryId: string;
  on: Day;
  group: string;
  flies: number;
  fromCultures: string[];
  leftOver: AmountWord | null;
  /** What the flies were dusted with; null when nobody wrote it. */
  supplements: string[] | null;
}

export interface WeighingFact {
  entryId: string;
  on: Day;
  group: string;
  /** One animal, or the mean of several; null when only measured. */
  massG: number | null;
  lengthMm: number | null;
  /** How many were weighed. */
  animals: number;
}

export interface AbsenceFact {
  from: Day;
  until: Day;
  /** True when someone else feeds from the cups meanwhile; no cups are started either way. */
  sitterFeeds: boolean;
}

export interface OrderFact {
  order: string;
  on: Day;
  due: Day;
  strain: string;
  flies: number;
  cups: number;
}

export interface PurchaseFact {
  purchase: string;
  on: Day;
  strain: string;
  /** Cups still to come. */
  cups: number;
  stage: 'producing' | 'young';
  arrives: Day;
}

export interface StockFact {
  item: string;
  amount: number;
  unit: string;
  on: Day;
  /** What one unit costs, as last written; null when never. */
  pricePerUnit: number | null;
}

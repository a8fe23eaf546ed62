/**
 * What the page asks its workers and what it gets, one line a question. Workers hold the logbook and
 * every model; the page holds what is on the screen.
 */
import type {
  AnimalsAnswer,
  CupBand,
  CupLife,
  FlyPotQuestion,
  HatchRange,
  ForecastAnswer,
  HindcastAnswer,
  Job,
  Learned,
  LifecycleAnswer,
  LoggerCorrection,
  LoggerImport,
  LoggerPlan,
  LoggerReport,
  CompareAnswer,
  PlanAnswer,
  StarterRation,
  Telling,
  PlanChangesAnswer,
  RulePricesAnswer,
  Supposition,
  TemperatureAnswer,
  TemperatureWhatIf,
  TemperatureWhatIfAnswer,
  TodayAnswer,
} from '../../app/index.ts';
import type { Problem, Result } from '../../foundation/index.ts';
import type { Entry, EntryDraft, Facts, Sheet, SheetMatching } from '../../logbook/index.ts';
import type { Asked } from './asked.ts';
import type { HouseQuestions } from './house-questions.ts';
import type { Language } from '../text/text.svelte.ts';

export type { Asked };

export interface LifecycleAsk {
  strain: string;
  temperatureC: number;
  founders?: number;
  founderAgeDays?: number;
  mediumMassG?: number;
  surfaceCm2?: number;
  harvestEveryDays?: number;
  harvestShare?: number;
}

export interface LoggerAsk {
  file: File;
  on: string;
  /** What the keeper says of it; the rest is guessed, or as the last file of this logger was. */
  given: LoggerCorrection & { place?: string };
}

/** A logger's file as it would be written; the days themselves are in the drafts. */
export interface LoggerShown extends LoggerPlan, LoggerImport {
  report: Omit<LoggerReport, 'days'>;
  /** True when nothing says which of several places was measured: it is the first. */
  placeIsOpen: boolean;
  days: number;
  firstDay: string;
  lastDay: string;
}

export interface OpenAsk {
  /** The page's own folder. */
  base: string;
  /** The device's logbook that was open last, or null. */
  remembered: string | null;
}

/** The logbook as it was opened on this device. */
export interface Kept {
  home: 'server' | 'device';
  /** The name of the device's logbook, to be opened next time. */
  logbook: string;
  /** False when the browser refused to keep anything. */
  persistent: boolean;
  entries: Entry[];
}

/** A spreadsheet with what its columns seem to mean. */
export interface ReadSheet {
  sheet: Sheet;
  matching: SheetMatching;
  /** False when a day such as 3/4 can be read both ways. */
  dateOrderIsCertain: boolean;
}

/** What a spreadsheet would be written as. */
export interface SheetShown {
  drafts: EntryDraft[];
  /** The first few in plain words. */
  sentences: string[];
  problems: Problem[];
}

interface LogbookQuestions {
  /** Opens the keeper's own logbook; only one worker does. */
  open: { ask: OpenAsk; answer: Kept };
  /** Keeps entries that were checked; a problem says that nothing was kept. */
  keep: { ask: { entries: Entry[] }; answer: Result<null> };
  /** Replaces the worker's logbook. */
  load: { ask: { entries: Entry[] }; answer: Facts };
  append: { ask: { entries: Entry[] }; answer: Facts };
  /** What speaks against writing these entries into the logbook; nothing when they are right. */
  check: { ask: { entries: Entry[] }; answer: Problem[] };
  sentences: { ask: Telling & { ids: string[] }; answer: string[] };
  /** The entries of a file of JSON Lines that are not here yet, or everything that is wrong with it. */
  readSheet: { ask: { text: string; file: string }; answer: Result<ReadSheet> };
  showSheet: { ask: { sheet: Sheet; matching: SheetMatching; telling: Telling }; answer: SheetShown };
  readFile: { ask: { file: File }; answer: Result<Entry[]> };
  /** The part of today's jobs that is there at once. */
  jobsBeforePlan: { ask: Asked; answer: Job[] };
}

interface ModelQuestions {
  today: { ask: Asked; answer: TodayAnswer };
  forecast: { ask: Asked; answer: ForecastAnswer };
  /** The forecast of a household that is a little different from now on. */
  whatIf: { ask: Asked & Supposition & { scenarios: number }; answer: ForecastAnswer };
  /** Works out a warmth ahead of the slider. */
  prepareWhatIf: { ask: Asked & { warmerC: number }; answer: null };
  plan: { ask: Asked; answer: PlanAnswer };
  animals: { ask: Asked; answer: AnimalsAnswer };
  /** Kinds of animal with what practice gives them. */
  starters: { ask: null; answer: StarterRation[] };
  /** Young that an egg case may give. */
  hatches: { ask: null; answer: HatchRange[] };
  /** Flies in a pot by its weight, or what was wrong with the weights. */
  flyPot: {
    ask: Omit<FlyPotQuestion, 'on'> & { on: string };
    answer: Result<{ band: { p05: number; p50: number; p95: number } }>;
  };
  /** `since`: the day of the plan that it is held against. */
  planChanges: { ask: Asked & { since: string }; answer: PlanChangesAnswer };
  compare: { ask: Asked; answer: CompareAnswer };
  rulePrices: { ask: Asked; answer: RulePricesAnswer };
  lives: { ask: Asked; answer: CupLife[] };
  /** The band of one cup's life; null when the log does not remember it. */
  cupBand: { ask: Asked & { culture: string }; answer: CupBand | null };
  learned: { ask: Asked; answer: Learned[] };
  hindcast: { ask: Asked; answer: HindcastAnswer };
  lifecycle: { ask: LifecycleAsk; answer: LifecycleAnswer };
  temperature: { ask: Asked; answer: TemperatureAnswer };
  temperatureWhatIf: { ask: Asked & { change: TemperatureWhatIf }; answer: Result<TemperatureWhatIfAnswer> };
  /** A logger's file read as a stream: a million lines take seconds and no more memory than their readings. */
  readLogger: { ask: LoggerAsk; answer: Result<LoggerShown> };
  demo: { ask: { on: string; language: Language }; answer: EntryDraft[] };
}

type Questions = LogbookQuestions & ModelQuestions & HouseQuestions;
export type LogbookQuestion = keyof LogbookQuestions;
export type ModelQuestion = keyof ModelQuestions;
export type HouseQuestion = keyof HouseQuestions;
export type QuestionName = keyof Questions;
export type Ask<Q extends QuestionName> = Questions[Q]['ask'];
export type Answer<Q extends QuestionName> = Questions[Q]['answer'];

export interface QuestionMessage {
  number: number;
  question: QuestionName;
  ask: unknown;
}

export type AnswerMessage =
  | { number: number; ok: true; answer: unknown }
  | { number: number; ok: false; message: string };

/** What a worker says unasked. */
export type News =
  | { news: 'arrived'; entries: Entry[] }
  | { news: 'waiting'; unsent: number }
  | { news: 'shutOut'; isOut: boolean };

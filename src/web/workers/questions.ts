/**
 * What the page asks the worker and what it gets: one line per question. The worker holds the logbook
 * and every model; the page holds what is on the screen.
 */
import type { CupLife, ForecastAnswer, Learned, LifecycleAnswer, PlanAnswer, TodayAnswer } from '../../app/index.ts';
import type { Problem, Result } from '../../foundation/index.ts';
import type { Entry, EntryDraft, Facts } from '../../logbook/index.ts';

/** What every reckoning is asked with. */
export interface Asked {
  on: string;
  seed: number;
  scenarios?: number;
  weeks?: number;
}

export interface Questions {
  /** Replaces the worker's logbook. */
  load: { ask: { entries: Entry[] }; answer: Facts };
  append: { ask: { entries: Entry[] }; answer: Facts };
  /** What speaks against writing these entries into the logbook; nothing when they are right. */
  check: { ask: { entries: Entry[] }; answer: Problem[] };
  today: { ask: Asked; answer: TodayAnswer };
  forecast: { ask: Asked; answer: ForecastAnswer };
  /** The forecast had the drafts been written too; nothing is kept. */
  whatIf: { ask: Asked & { supposing: EntryDraft[] }; answer: ForecastAnswer };
  plan: { ask: Asked; answer: PlanAnswer };
  lives: { ask: Asked; answer: CupLife[] };
  lifecycle: { ask: LifecycleAsk; answer: LifecycleAnswer };
  sentences: { ask: { ids: string[] }; answer: string[] };
  learned: { ask: Asked; answer: Learned[] };
  /** The entries of a file of JSON Lines, or everything that is wrong with it. */
  readFile: { ask: { file: File }; answer: Result<Entry[]> };
  demo: { ask: { on: string }; answer: EntryDraft[] };
}

export interface LifecycleAsk {
  strain: string;
  temperatureC: number;
  founders?: number;
}

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

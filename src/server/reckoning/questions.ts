/**
 * The questions whose answers take the models, each from a household's logbook: in whatever thread they
 * are reckoned, the answers are the same.
 */
import {
  animals,
  type AnimalsQuestion,
  compare,
  type CompareQuestion,
  forecast,
  type ForecastQuestion,
  hindcast,
  type HindcastQuestion,
  labels,
  type LabelsQuestion,
  learned,
  ledger,
  lines,
  type LinesQuestion,
  plan,
  planChanges,
  planGap,
  type Question,
  rulePrices,
  shelf,
  type ShelfQuestion,
  solverOf,
  strainBook,
  temperature,
  type TemperatureWhatIf,
  temperatureWhatIf,
  today,
} from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { KnownLogbook } from './known-logbook.ts';

const answers = {
  today: (question: Question, facts: Facts) => today(facts, question),
  forecast: (question: ForecastQuestion, facts: Facts) => forecast(facts, question),
  plan: (question: Question, facts: Facts) => plan(facts, question),
  learned: (question: Question, facts: Facts) => learned(facts, question),
  /** Looking back needs the entries themselves: when each was written. */
  hindcast: (question: HindcastQuestion, _: Facts, { entries }: KnownLogbook) => hindcast(entries, question),
  'plan-changes': ({ since, ...question }: Question & { since: Day }, facts: Facts, logbook: KnownLogbook) =>
    planChanges(logbook.facts(since), facts, since, question),
  compare: (question: CompareQuestion, facts: Facts) => compare(facts, question),
  'rule-prices': (question: Question, facts: Facts) => rulePrices(facts, question),
  /** The solver is large, and nothing else needs it. */
  'plan-bounds': async (question: Question, facts: Facts) =>
    planGap(facts, question, solverOf(await (await import('highs')).default())),
  temperature: (question: Question, facts: Facts) => temperature(facts, question),
  'temperature-what-if': ({ change, ...question }: Question & { change: TemperatureWhatIf }, facts: Facts) =>
    temperatureWhatIf(facts, question, change),
  animals: (question: AnimalsQuestion, facts: Facts) => animals(facts, question),
  lines: (question: LinesQuestion, facts: Facts) => lines(facts, question),
  strains: (question: Question, facts: Facts) => strainBook(facts, question),
  ledger: (question: Question, facts: Facts) => ledger(facts, question),
  labels: (question: LabelsQuestion, facts: Facts) => labels(facts, question),
  shelf: (question: ShelfQuestion, facts: Facts) => shelf(facts, question),
};

export type QuestionName = keyof typeof answers;
export type QuestionOf<Name extends QuestionName> = Parameters<(typeof answers)[Name]>[0];
export type AnswerOf<Name extends QuestionName> = Awaited<ReturnType<(typeof answers)[Name]>>;

/** Plain data, so that it can be sent to another thread. */
export interface AskedOf<Name extends QuestionName> {
  name: Name;
  question: QuestionOf<Name>;
  /** The day after whose end nothing is known; all is when it is left out. */
  until?: Day;
}
export type Asked = { [Name in QuestionName]: AskedOf<Name> }[QuestionName];

/** Some answers come by and by, but all are of the logbook as it is when they are asked for. */
export async function answerTo({ name, question, until }: Asked, logbook: KnownLogbook): Promise<unknown> {
  const ask = answers[name] as (question: Asked['question'], facts: Facts, logbook: KnownLogbook) => unknown;
  return ask(question, logbook.facts(until), logbook);
}

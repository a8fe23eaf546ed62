/** The commands that answer a question about the household: they differ in what they ask and how it reads. */
import type { Question } from '../app/index.ts';
import { ok, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { Command } from './command.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { readHousehold } from './household.ts';
import type { OptionName, Options } from './options.ts';
import { labelBook } from './text/label-book.ts';
import type { LabelBook } from './text/job-text.ts';
import { printJson, printLines } from './text/print.ts';

export interface AnswerCommand<Answer> {
  usage: string;
  about: string;
  /** Beside data, logbook, on, seed and json. */
  options?: readonly OptionName[];
  answer(facts: Facts, question: Question, options: Options): Answer;
  text(answer: Answer, labels: LabelBook, options: Options): string[];
  /** True when the answer is a warning that needs the keeper. */
  warns(answer: Answer): boolean;
}

export function answerCommand<Answer>(kind: AnswerCommand<Answer>): Command {
  return {
    usage: kind.usage,
    about: kind.about,
    options: ['data', 'logbook', 'on', 'seed', ...(kind.options ?? []), 'json'],
    mostWords: 0,
    run: ({ options }) => answerNow(kind, options),
  };
}

async function answerNow<Answer>(kind: AnswerCommand<Answer>, options: Options): Promise<Result<ExitStatus>> {
  const household = await readHousehold(options);
  if (!household.ok) return household;
  const { facts, on } = household.value;
  const answer = kind.answer(facts, questionOf(options, on), options);
  if (options.json) printJson(answer);
  else printLines(kind.text(answer, labelBook(facts), options));
  return ok(kind.warns(answer) ? exitStatus.warning : exitStatus.done);
}

function questionOf({ seed = 1, scenarios, weeks }: Options, on: Question['on']): Question {
  return { on, seed, ...(scenarios === undefined ? {} : { scenarios }), ...(weeks === undefined ? {} : { weeks }) };
}

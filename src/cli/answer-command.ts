/** The commands that answer a question about the household: they differ in what they ask and how it reads. */
import type { Question } from '../app/index.ts';
import { ok } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { Command } from './command.ts';
import { exitStatus } from './exit-status.ts';
import { householdCommand } from './household-command.ts';
import type { OptionName, Options } from './options.ts';
import type { LabelBook } from './text/job-text.ts';
import { labelBook } from './text/label-book.ts';
import { printJson, printLines } from './text/print.ts';

export interface AnswerCommand<Answer> {
  usage: string;
  about: string;
  /** Beside data, logbook, on, seed and json. */
  options?: readonly OptionName[];
  worksWithout?: boolean;
  answer(facts: Facts, question: Question, options: Options): Answer;
  text(answer: Answer, labels: LabelBook, options: Options): string[];
  /** True when the answer is a warning that needs the keeper. */
  warns(answer: Answer): boolean;
}

export function answerCommand<Answer>(kind: AnswerCommand<Answer>): Command {
  return householdCommand({
    usage: kind.usage,
    about: kind.about,
    options: [...(kind.options ?? []), 'json'],
    worksWithout: kind.worksWithout ?? false,
    run: async (facts, question, { options }) => {
      const answer = kind.answer(facts, question, options);
      if (options.json) printJson(answer);
      else printLines(kind.text(answer, labelBook(facts), options));
      return ok(kind.warns(answer) ? exitStatus.warning : exitStatus.done);
    },
  });
}

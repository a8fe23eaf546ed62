import { plan, planChanges, planGap, type Question, solverOf } from '../../app/index.ts';
import { type Day, failed, ok, type Result } from '../../foundation/index.ts';
import { type Facts, fold } from '../../logbook/index.ts';
import type { Command } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { readEntries } from '../household.ts';
import { householdCommand } from '../household-command.ts';
import type { Options } from '../options.ts';
import { labelBook } from '../text/label-book.ts';
import { planChangesText } from '../text/plan-changes-text.ts';
import { planGapText } from '../text/plan-gap-text.ts';
import { planText } from '../text/plan-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = householdCommand({
  usage: 'flylarder plan [OPTIONS]',
  about: `The dated jobs that keep the supply unbroken: what to start, from which cup, what
to buy, and how sure each day is then. Exit status 1: something has to be bought.
With --since: which firm jobs changed since the plan of that day, and why.
With --bounds: how near the best a quarter's plan is, and where its cups go; takes
up to half a minute.`,
  options: ['weeks', 'scenarios', 'since', 'bounds', 'language', 'degrees', 'json'],
  run: async (facts, question, { options }) => {
    if (options.since !== undefined) return tellChanges(facts, question, options.since, options);
    if (options.bounds) return tellGap(facts, question, options);
    const answer = plan(facts, question);
    if (options.json) printJson(answer);
    else printLines(planText(answer, labelBook(facts)));
    return ok(answer.jobs.some((job) => job.kind === 'buy') ? exitStatus.warning : exitStatus.done);
  },
});

async function tellGap(facts: Facts, question: Question, { json }: Options): Promise<Result<ExitStatus>> {
  // The solver is large, and nothing else needs it.
  const { default: loadHighs } = await import('highs');
  const answer = planGap(facts, question, solverOf(await loadHighs()));
  if (json) printJson(answer);
  else printLines(planGapText(answer));
  return ok(exitStatus.done);
}

async function tellChanges(
  facts: Facts,
  question: Question,
  since: Day,
  options: Options,
): Promise<Result<ExitStatus>> {
  if (since > question.on) {
    return failed({ where: '--since', found: since, expected: `a day up to ${question.on}` });
  }
  const entries = await readEntries(options);
  if (!entries.ok) return entries;
  const answer = planChanges(fold(entries.value, { until: since }), facts, since, question);
  if (options.json) printJson(answer);
  else printLines(planChangesText(answer));
  return ok(exitStatus.done);
}

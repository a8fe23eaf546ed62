/** The plan as it is beside plans with one change each; or the price of each rule and the second-best plan. */
import { type Change, changeForms, compare, parseChanges, rulePrices } from '../../app/index.ts';
import { ok, type Result } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { compareText, rulePricesText } from '../text/compare-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder compare [--what-if LIST | --rules] [OPTIONS]',
  about: `The plan as it is beside plans with one change each: cups, sessions, cost, work,
worst day. Every one is planned anew and judged in the same simulated worlds.
A list such as ${changeForms.slice(0, 3).join(',')} says what to look at:
${changeForms.slice(3, 6).join(', ')},
${changeForms.slice(6).join(', ')}.
With --rules: what each rule you set costs in a quarter, and the best plan with
another rhythm. Takes half a minute. Exit status 1: a plan does not hold.`,
  options: ['what-if', 'rules', 'weeks', 'scenarios', 'language', 'degrees', 'json'],
  run: async (facts, question, { options }) => {
    if (options.rules) {
      const answer = rulePrices(facts, question);
      if (options.json) printJson(answer);
      else printLines(rulePricesText(answer));
      return ok(exitStatus.done);
    }
    const changes = changesOf(options['what-if']);
    if (!changes.ok) return changes;
    const answer = compare(facts, { ...question, ...given({ changes: changes.value }) });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(compareText(answer.value));
    return ok(answer.value.columns.every(({ holds }) => holds) ? exitStatus.done : exitStatus.warning);
  },
});

function changesOf(list: string | undefined): Result<Change[] | undefined> {
  return list === undefined ? ok(undefined) : parseChanges(list);
}

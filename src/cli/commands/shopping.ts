/** What the kitchen needs for the planned starts. */
import { plan, shopping, type ShoppingAnswer } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { printJson, printLines } from '../text/print.ts';
import { shoppingText } from '../text/shopping-text.ts';

export const command = householdCommand({
  usage: 'flylarder shopping [OPTIONS]',
  about: `When to mix, wash and shop for the planned starts, and the list that lasts until
--until (four weeks when left out), from the stock last counted. Exit status 1:
a trip to the shop is due today.`,
  options: ['until', 'recipe', 'json'],
  run: async (facts, question, { options }) => {
    // The jobs are the plan's whatever it promises: one scenario is enough.
    const { jobs } = plan(facts, { ...question, scenarios: 1 });
    const { until, recipe } = options;
    const answer = shopping(facts, jobs, { on: question.on, ...given({ until, recipe }) });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(shoppingText(answer.value));
    return ok(isUrgent(answer.value) ? exitStatus.warning : exitStatus.done);
  },
});

/** A trip is due today: what is missing will not wait for the usual one. */
function isUrgent({ on, shop }: ShoppingAnswer): boolean {
  return shop.some((trip) => trip.on === on);
}

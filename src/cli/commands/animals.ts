/** What the animals want, the week's feedings, and warnings about weight and food. */
import { animals } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { householdCommand } from '../household-command.ts';
import { animalsText } from '../text/animals-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder animals [OPTIONS]',
  about: `What the animals want in the coming weeks by strain, who can wait, the week's
feedings, and what the log says of appetite and weight. Exit status 1: an animal
loses weight, waits too long, or the food is short of calcium.`,
  options: ['weeks', 'json'],
  run: async (facts, question, { options }) => {
    const answer = animals(facts, question);
    if (options.json) printJson(answer);
    else printLines(animalsText(answer));
    return ok(answer.cautions.length > 0 ? exitStatus.warning : exitStatus.done);
  },
});

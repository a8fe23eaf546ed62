/** What is on hand in the kitchen and how many cups it lasts for. */
import { larder } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { larderText } from '../text/larder-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder larder [OPTIONS]',
  about: `Ingredients, cups, lids and nesting material as last counted, less what was used
since; how many cups each lasts for, what runs out first; medium that is left.`,
  options: ['recipe', 'medium', 'json'],
  run: async (facts, { on }, { options }) => {
    const { recipe, medium: mediumMassG } = options;
    const answer = larder(facts, { on, ...given({ recipe, mediumMassG }) });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(larderText(answer.value));
    return ok(exitStatus.done);
  },
});

/** Flies in a pot by its weight before and after. */
import { flyPot } from '../../app/index.ts';
import { failed, ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { bandText, wrapped } from '../text/layout.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder pot --full MG --empty MG [OPTIONS]',
  about: `Flies in a pot by its weight with and without them, with the spread of the
scale, of the flies, and of what one fly weighs.`,
  options: ['full', 'empty', 'step', 'strain', 'reared', 'json'],
  run: async (facts, { on }, { options }) => {
    const { full: fullMg, empty: emptyMg, step: scaleStepMg = 10, strain = 'melanogaster', reared: rearedC } = options;
    if (fullMg === undefined || emptyMg === undefined)
      return failed({ where: 'pot', found: 'one weight', expected: 'two: --full and --empty, in milligrams' });
    const answer = flyPot(facts, { on, strain, fullMg, emptyMg, scaleStepMg, ...given({ rearedC }) });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else
      printLines(wrapped(`About ${bandText(answer.value.band)} flies. Most of the doubt: ${answer.value.mainDoubt}.`));
    return ok(exitStatus.done);
  },
});

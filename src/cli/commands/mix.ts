/** Medium for a number of cups, step by step. */
import { mix } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { mixText } from '../text/mix-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder mix [OPTIONS]',
  about: `Medium for a number of cups: weights, spoons, preservative, and the work in the
right order with its cautions. Exit status 1: a dose is higher than usual.`,
  options: ['recipe', 'cups', 'medium', 'measures', 'strain', 'language', 'json'],
  run: async (facts, { on }, { options }) => {
    const { recipe, cups, medium: mediumMassG, measures, strain, language } = options;
    const answer = mix(facts, { on, ...given({ recipe, cups, mediumMassG, measures, strain, language }) });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(mixText(answer.value));
    return ok(answer.value.warnings.length > 0 ? exitStatus.warning : exitStatus.done);
  },
});

/** The strains' lines: generations, variation lost, what threatens them. */
import { lines } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { householdCommand } from '../household-command.ts';
import { linesText } from '../text/lines-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder lines [OPTIONS]',
  about: `The lines of cups: generations, founders, variation lost; mixed strains, winged
flies, mites and mould with what to do and the cups one contact away; cups in
quarantine. Exit status 1: something threatens a line.`,
  options: ['language', 'degrees', 'json'],
  run: async (facts, question, { options }) => {
    const answer = lines(facts, question);
    if (options.json) printJson(answer);
    else printLines(linesText(answer));
    return ok(answer.warnings.length > 0 ? exitStatus.warning : exitStatus.done);
  },
});

/** A winged fly was seen in a cup: what it means and what to do. */
import { winged } from '../../app/index.ts';
import { failed, ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { householdCommand } from '../household-command.ts';
import { warningText } from '../text/lines-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder winged CUP [OPTIONS]',
  about: `A winged fly was seen in this cup: is it the warmth, or a stranger; what the next
generations would be, and what to do by date. Nothing is written. Exit status 1.`,
  options: ['language', 'degrees', 'json'],
  mostWords: 1,
  run: async (facts, question, { words: [culture], options }) => {
    if (culture === undefined) return failed({ where: 'winged', found: 'no cup', expected: 'flylarder winged CUP' });
    const answer = winged(facts, { ...question, culture });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(warningText(answer.value));
    return ok(exitStatus.warning);
  },
});

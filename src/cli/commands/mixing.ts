/** Whether two of the household's strains may be put together. */
import { mixing } from '../../app/index.ts';
import { failed, ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { mixingText } from '../text/lines-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder mixing STRAIN STRAIN [OPTIONS]',
  about: `May these two strains go into one cup? What their offspring would be, for each
thing that may be true. Exit status 1: not, or nobody knows.`,
  options: ['language', 'json'],
  mostWords: 2,
  run: async (facts, _, { words, options }) => {
    const [first, second] = words;
    if (first === undefined || second === undefined)
      return failed({
        where: 'mixing',
        found: `${words.length} of two strains`,
        expected: 'flylarder mixing STRAIN STRAIN',
      });
    const answer = mixing(facts, { first, second, ...given({ language: options.language }) });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(mixingText(answer.value));
    return ok(answer.value.verdict === 'breeds true' ? exitStatus.done : exitStatus.warning);
  },
});

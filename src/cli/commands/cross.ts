/** What comes of crossing two flies, generation by generation. */
import { cross } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { crossText } from '../text/cross-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder cross FEMALE MALE [OPTIONS]',
  about: `What comes of crossing two flies and letting their offspring mate. Genotypes are
alleles with a slash, loci separated by ; and + for wild:

  flylarder cross "vg/vg" "ap/ap" --generations 3
  flylarder cross "vg/vg" "+/+" --cull winged

With --founders N each generation starts from N flies drawn by chance, half of
either sex, and the shares are means over 1000 such lines.`,
  options: ['generations', 'distances', 'cull', 'mated', 'founders', 'seed', 'json'],
  mostWords: 2,
  run: async (input) => answer(input),
};

function answer({ words, options }: CommandInput): Result<ExitStatus> {
  const [female, male] = words;
  if (female === undefined || male === undefined) {
    return failed({ where: 'cross', found: `${words.length} of two genotypes`, expected: command.usage });
  }
  const { generations = 4, distances, cull, mated, founders, seed = 1 } = options;
  const result = cross({
    female,
    male,
    generations,
    seed,
    ...(distances === undefined ? {} : { distances }),
    ...(cull === undefined ? {} : { cull }),
    ...(mated === undefined ? {} : { mated }),
    ...(founders === undefined ? {} : { founders }),
  });
  if (!result.ok) return result;
  if (options.json) printJson(result.value);
  else printLines(crossText(result.value));
  return ok(exitStatus.done);
}

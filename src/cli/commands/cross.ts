/** What comes of crossing two flies, generation by generation. */
import { cross } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Command, CommandInput } from '../command.ts';
import { type ExitStatus, exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { crossText } from '../text/cross-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command: Command = {
  usage: 'flylarder cross --female GENOTYPE --male GENOTYPE [OPTIONS]',
  about: `What comes of crossing two flies and letting their offspring mate. Genotypes are
alleles with a slash, loci separated by ; and + for wild:

  flylarder cross --female "vg/vg" --male "ap/ap" --generations 3
  flylarder cross "vg/vg" "+/+" --cull winged

With --founders N each generation starts from N flies drawn by chance, half of
either sex, and the shares are means over 1000 such lines.`,
  options: ['female', 'male', 'generations', 'distances', 'cull', 'mated', 'founders', 'seed', 'json'],
  mostWords: 2,
  run: async (input) => answer(input),
};

function answer({ words, options }: CommandInput): Result<ExitStatus> {
  // Genotypes without an option's name fill the places that the options leave, the mother's first.
  const rest = [...words];
  const female = options.female ?? rest.shift();
  const male = options.male ?? rest.shift();
  if (female === undefined || male === undefined || rest.length > 0) {
    const found = `${words.length + Number(options.female !== undefined) + Number(options.male !== undefined)} genotypes`;
    return failed({ where: 'cross', found, expected: `two: ${command.usage}` });
  }
  const { generations = 4, distances, cull, mated, founders, seed = 1 } = options;
  const result = cross({
    female,
    male,
    generations,
    seed,
    ...given({ distances, cull, mated, founders }),
  });
  if (!result.ok) return result;
  if (options.json) printJson(result.value);
  else printLines(crossText(result.value));
  return ok(exitStatus.done);
}

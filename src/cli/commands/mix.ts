/** Medium for a number of cups, step by step. */
import { mix, type MixQuestion } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import type { Options } from '../options.ts';
import { mixText } from '../text/mix-text.ts';
import { printJson, printLines } from '../text/print.ts';

export const command = householdCommand({
  usage: 'flylarder mix [OPTIONS]',
  about: `Medium for a number of cups: weights, spoons, preservative, and the work in the
right order with its cautions. Exit status 1: a dose is higher than usual.`,
  options: [
    'recipe',
    'cups',
    'batch',
    'medium',
    'measures',
    'preservative',
    'percent',
    'stock-percent',
    'strain',
    'language',
    'json',
  ],
  worksWithout: true,
  run: async (facts, { on }, { options }) => {
    const { recipe, cups, batch: batchMassG, medium: mediumMassG, measures, strain, language } = options;
    const added = addedPreservative(options);
    if (!added.ok) return added;
    const preservative = added.value;
    const answer = mix(facts, {
      on,
      ...given({ recipe, cups, batchMassG, mediumMassG, measures, strain, language, preservative }),
    });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(mixText(answer.value));
    return ok(answer.value.warnings.length > 0 ? exitStatus.warning : exitStatus.done);
  },
});

function addedPreservative(options: Options): Result<MixQuestion['preservative']> {
  const { preservative, percent, 'stock-percent': stockPercent } = options;
  if (preservative === undefined && percent === undefined && stockPercent === undefined) return ok(undefined);
  if (preservative === undefined) return failed({ where: '--preservative', found: 'nothing', expected: 'its name' });
  if (percent === undefined) return failed({ where: '--percent', found: 'nothing', expected: 'its dose, such as 0.1' });
  return ok({ preservative, percent, ...given({ stockPercent }) });
}

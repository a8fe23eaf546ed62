/** A ration for one kind of animal, or the list of kinds. */
import { hatchRanges, ration, starterRations } from '../../app/index.ts';
import { ok } from '../../foundation/index.ts';
import { exitStatus } from '../exit-status.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';
import { printJson, printLines } from '../text/print.ts';
import { rationText, starterText } from '../text/ration-text.ts';

export const command = householdCommand({
  usage: 'flylarder ration [ANIMAL] [OPTIONS]',
  about: `Flies for one kind of animal: keepers' practice beside a reckoning from energy,
in flies of the size that your cups now give. Without ANIMAL: the kinds.`,
  options: ['mass', 'temperature', 'count', 'growth', 'share', 'strain', 'json'],
  mostWords: 1,
  worksWithout: true,
  run: async (facts, { on }, { words, options }) => {
    const [animal] = words;
    if (animal === undefined) {
      if (options.json) printJson(starterRations());
      else printLines(starterText(starterRations(), hatchRanges()));
      return ok(exitStatus.done);
    }
    const { mass: massG, temperature: temperatureC, growth: growthGPerDay, share: flyShare, count, strain } = options;
    const more = given({ massG, temperatureC, count, growthGPerDay, flyShare, strain });
    const answer = ration(facts, { animal, on, ...more });
    if (!answer.ok) return answer;
    if (options.json) printJson(answer.value);
    else printLines(rationText(answer.value));
    return ok(exitStatus.done);
  },
});

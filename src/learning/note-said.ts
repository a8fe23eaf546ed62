/** Stages and words for amounts, to stand in a sentence. */
import { type Said, said } from '../foundation/index.ts';
import type { Stage } from './sightings.ts';

export const stageSaid: Record<Stage, Said> = { larvae: said`larvae`, pupae: said`pupae`, adults: said`flies` };

const words: Record<string, Said> = {
  none: said`"none"`,
  few: said`"few"`,
  some: said`"some"`,
  plenty: said`"plenty"`,
  swarming: said`"swarming"`,
};

/** A keeper's word for the flies in a cup. */
export function wordSaid(word: string): Said {
  return words[word] ?? { said: '{0}', values: [word] };
}

/**
 * From a household's notes to what is believed of it: see docs/models/learning.md. Pure: the same input
 * gives the same beliefs to the digit, whether tables were kept from an earlier call or not.
 */
import { randomStream } from '../foundation/index.ts';
import type { Beliefs, LearningInput } from './evidence.ts';
import { fullPrior } from './priors.ts';
import { learnStrain } from './strain-posterior.ts';
import { TableMemory } from './table-memory.ts';

/**
 * Beliefs of every strain and of every living cup, as `input.draws` joint draws: entry `s` of all
 * arrays is one scenario. `memory` keeps the tables of cups whose notes have not changed between calls.
 * Throws RangeError when fewer than one draw is wanted.
 */
export function learn(input: LearningInput, memory = new TableMemory()): Beliefs {
  if (!(input.draws >= 1)) throw new RangeError(`learn: draws ${input.draws} is not 1 or more`);
  const prior = fullPrior(input.prior);
  const beliefs: Beliefs = { byStrain: new Map(), cups: new Map(), doubtful: new Map() };
  for (const strain of input.strains) {
    const random = randomStream(input.seed, 'learning', strain.strain);
    const learned = learnStrain(strain, prior, input.draws, random, memory);
    beliefs.byStrain.set(strain.strain, learned.belief);
    for (const [id, cup] of learned.cups) beliefs.cups.set(id, cup);
    for (const [id, notes] of learned.doubtful) beliefs.doubtful.set(id, notes);
  }
  return beliefs;
}

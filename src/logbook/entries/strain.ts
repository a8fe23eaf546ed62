/** A strain that the household keeps, and how it differs from the published one it is based on. */
import { said } from '../../foundation/index.ts';
import { entryKind } from './entry-kind.ts';
import { between, key, name } from './field-checks.ts';

const factor = between(0.1, 10).optional();

export const strain = entryKind(
  'strain',
  {
    strain: key,
    name: name.optional(),
    base: key.describe('Key of the published strain, such as melanogaster or hydei'),
    paceFactor: factor.describe('1.1 is 10 % quicker'),
    yieldFactor: factor,
    massFactor: factor,
    mutation: key
      .optional()
      .describe('Symbol of the mutation that keeps it from flying, such as vg; unknown; or wild when it flies'),
  },
  (e) => said`Strain ${e.name ?? e.strain}, based on ${e.base}.`,
);

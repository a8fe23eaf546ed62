/** A size of cup and what usually goes into it. */
import { said } from '../../foundation/index.ts';
import { entryKind } from './entry-kind.ts';
import { detailed, foundersSaid } from './entry-words.ts';
import { between, founderCount, key, mediumMassG, name, surfaceCm2 } from './field-checks.ts';

export const container = entryKind(
  'container',
  {
    container: key,
    name: name.optional(),
    volumeMl: between(1, 100_000).optional(),
    mediumMassG: mediumMassG.optional(),
    surfaceCm2: surfaceCm2.optional(),
    founders: founderCount.optional(),
  },
  (e) =>
    detailed(
      said`Container ${e.name ?? e.container}`,
      e.volumeMl !== undefined && said`${e.volumeMl} ml`,
      e.mediumMassG !== undefined && said`${e.mediumMassG} g of medium`,
      e.founders !== undefined && foundersSaid(e.founders),
    ),
);

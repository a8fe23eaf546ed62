/** A size of cup and what usually goes into it. */
import { details, entryKind } from './entry-kind.ts';
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
    `Container ${e.name ?? e.container}${details(
      e.volumeMl !== undefined && `${e.volumeMl} ml`,
      e.mediumMassG !== undefined && `${e.mediumMassG} g of medium`,
      e.founders !== undefined && `${e.founders} founders`,
    )}.`,
);

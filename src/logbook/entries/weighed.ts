/** Animals on the scale, or measured: the check on every ration. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { animalsSaid, detailed } from './entry-words.ts';
import { between, key, whole } from './field-checks.ts';

/** Heavier animals cannot live on flies, and lighter ones take none. */
export const animalMassG = between(0.0001, 200);

export const weighed = entryKind(
  'weighed',
  {
    group: key,
    massG: animalMassG.optional().describe('One animal; the mean where several were weighed'),
    lengthMm: between(0.5, 500).optional().describe('Body length of one animal'),
    animals: whole(1, 100_000).optional().describe('How many were weighed; 1 when left out'),
  },
  (e, names) =>
    detailed(
      said`${nameOf(names, 'group', e.group)} weighed`,
      e.massG !== undefined && said`${e.massG} g each`,
      e.lengthMm !== undefined && said`${e.lengthMm} mm long`,
      e.animals !== undefined && animalsSaid(e.animals),
    ),
  (e) =>
    e.massG === undefined && e.lengthMm === undefined
      ? [{ field: 'massG', found: 'neither massG nor lengthMm', expected: 'at least one of the two' }]
      : [],
);

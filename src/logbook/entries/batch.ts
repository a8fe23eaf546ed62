/** A batch of medium that was mixed. */
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { detailed } from './entry-words.ts';
import { between, isoDay, key } from './field-checks.ts';

export const batch = entryKind(
  'batch',
  {
    batch: key,
    recipe: key.optional(),
    massG: between(0, 1_000_000).optional(),
    goodUntil: isoDay.optional(),
  },
  (e, names) =>
    detailed(
      said`Batch ${e.batch} of medium mixed`,
      e.recipe !== undefined && nameOf(names, 'recipe', e.recipe),
      e.massG !== undefined && said`${e.massG} g`,
      e.goodUntil !== undefined && said`good until ${{ day: e.goodUntil }}`,
    ),
  (e) =>
    e.on !== undefined && e.goodUntil !== undefined && e.goodUntil < e.on
      ? [{ field: 'goodUntil', found: e.goodUntil, expected: `a day not before ${e.on}, when it was mixed` }]
      : [],
);

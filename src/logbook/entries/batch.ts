/** A batch of medium that was mixed. */
import { details, entryKind, nameOf } from './entry-kind.ts';
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
    `Batch ${e.batch} of medium mixed${details(
      e.recipe !== undefined && nameOf(names, 'recipe', e.recipe),
      e.massG !== undefined && `${e.massG} g`,
      e.goodUntil !== undefined && `good until ${e.goodUntil}`,
    )}.`,
  (e) =>
    e.on !== undefined && e.goodUntil !== undefined && e.goodUntil < e.on
      ? [{ field: 'goodUntil', found: e.goodUntil, expected: `a day not before ${e.on}, when it was mixed` }]
      : [],
);

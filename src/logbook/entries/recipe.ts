/** A recipe of the medium, by mass. */
import { z } from 'zod';
import { counted, entryKind } from './entry-kind.ts';
import { between, key, listOf, name } from './field-checks.ts';

export const recipe = entryKind(
  'recipe',
  {
    recipe: key,
    name: name.optional(),
    ingredients: listOf(z.strictObject({ ingredient: name, massG: between(0, 1_000_000) }), 60).optional(),
    waterMl: between(0, 1_000_000).optional(),
  },
  (e) =>
    `Recipe ${e.name ?? e.recipe}${e.ingredients ? `, ${counted(e.ingredients.length, 'ingredient')}` : ''}${
      e.waterMl === undefined ? '' : `, ${e.waterMl} ml of water`
    }.`,
);

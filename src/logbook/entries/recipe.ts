/** A recipe of the medium, by mass. */
import { z } from 'zod';
import { said } from '../../foundation/index.ts';
import { entryKind } from './entry-kind.ts';
import { withCommas } from './entry-words.ts';
import { between, key, listOf, name } from './field-checks.ts';

export const recipe = entryKind(
  'recipe',
  {
    recipe: key,
    name: name.optional(),
    ingredients: listOf(z.strictObject({ ingredient: name, massG: between(0, 1_000_000) }), 60).optional(),
    waterMl: between(0, 1_000_000).optional(),
  },
  (e) => {
    const many = e.ingredients?.length;
    return withCommas(
      said`Recipe ${e.name ?? e.recipe}`,
      many !== undefined && (many === 1 ? said`1 ingredient` : said`${many} ingredients`),
      e.waterMl !== undefined && said`${e.waterMl} ml of water`,
    );
  },
);

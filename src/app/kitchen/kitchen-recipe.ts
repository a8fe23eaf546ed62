/** Recipes by key: the household's own first, then the starter recipes. */
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { checkRecipe, type Recipe, starterRecipe, starterRecipes } from '../../media/index.ts';
import { kitchenTables } from './kitchen-tables.ts';

export interface KitchenRecipe {
  recipe: Recipe;
  method: 'cooked' | 'soaked';
}

/** The recipe of that key; without a key the one last mixed, or the household's first, or the first starter. */
export function kitchenRecipe(facts: Facts, key: string | undefined): Result<KitchenRecipe> {
  const wanted = key ?? facts.batches.at(-1)?.recipe ?? facts.recipes[0]?.recipe ?? starterRecipes[0]?.recipe ?? '';
  const own = facts.recipes.find((r) => r.recipe === wanted);
  if (own) {
    const checked = checkRecipe(own);
    return checked.ok ? ok({ recipe: checked.value, method: methodOf(checked.value) }) : checked;
  }
  const starter = starterRecipe(wanted, kitchenTables);
  if (starter?.ok) return ok({ recipe: starter.value, method: methodOf(starter.value) });
  const keys = [...facts.recipes, ...starterRecipes].map((r) => r.recipe);
  return starter ?? failed({ where: 'recipe', found: `"${wanted}"`, expected: `one of ${keys.join(', ')}` });
}

/** Agar and raw meal want boiling; the rest swells in hot water. */
function methodOf(recipe: Recipe): 'cooked' | 'soaked' {
  const isCooked = recipe.ingredients.some((i) => /agar|cornmeal|starch|groats/.test(i.ingredient));
  return isCooked ? 'cooked' : 'soaked';
}

/** The recipes to choose from, and an ingredient's weight by whatever it was measured with. */
import type { Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import {
  type Conversion,
  type Recipe,
  type RecipeLine,
  recipeFromLines,
  recipeMassG,
  starterRecipes,
  toGrams,
  waterRatio,
} from '../media/index.ts';
import { kitchenRecipe } from './kitchen/kitchen-recipe.ts';
import { kitchenTables } from './kitchen/kitchen-tables.ts';
import type { RecipeBookAnswer } from './kitchen/larder-answer.ts';

/** The household's recipes first, then the starter recipes; one that makes no sense is left out. */
export function recipeBook(facts: Facts): RecipeBookAnswer {
  const own = new Set(facts.recipes.map((r) => r.recipe));
  const keys = [...own, ...starterRecipes.map((r) => r.recipe).filter((key) => !own.has(key))];
  return keys.flatMap((key) => {
    const found = kitchenRecipe(facts, key);
    if (!found.ok) return [];
    const { recipe, method } = found.value;
    const ratio = waterRatio(recipe, kitchenTables);
    return {
      recipe: key,
      name: recipe.name,
      isOwn: own.has(key),
      method,
      ingredients: recipe.ingredients.map((line) => ({ ...line })),
      waterMl: recipe.waterMl,
      massG: recipeMassG(recipe),
      liquidToDryByMass: ratio.ok ? ratio.value.byMass : null,
    };
  });
}

export interface WeightQuestion {
  ingredient: string;
  amount: number;
  /** `g`, `us-cup`, `metric-tbsp`, ... */
  measure: string;
}

/** Grams, with the sum; refused for negative amounts, unknown measures, and a volume of what has no known density. */
export function weighed(question: WeightQuestion): Result<Conversion> {
  return toGrams(question, kitchenTables);
}

/** A recipe by weight from lines as they were measured; refused with every line that makes no sense. */
export function writtenRecipe(recipe: string, name: string, lines: readonly RecipeLine[]): Result<Recipe> {
  return recipeFromLines(recipe, name, lines, kitchenTables);
}

/** Ingredients and things that the kitchen knows by name, with their kind. */
export function kitchenWords(): { ingredient: string; kind: string }[] {
  return kitchenTables.densities.map(({ ingredient, kind }) => ({ ingredient, kind }));
}

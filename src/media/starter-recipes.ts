/**
 * A few recipes to begin with, of our own making from groceries, each for about one litre of medium. The
 * published recipes in data/reference-recipes.csv bound them: dry share, sugar, yeast and preservative lie
 * within what those use. They are a start, not a claim of best yield.
 */
import type { Result } from '../foundation/index.ts';
import type { KitchenTables } from './kitchen-tables.ts';
import { type Recipe, type RecipeLine, recipeFromLines } from './recipe.ts';

export interface StarterRecipe {
  recipe: string;
  name: string;
  /** `cooked` is boiled; `soaked` takes hot water and time. */
  method: 'cooked' | 'soaked';
  lines: readonly RecipeLine[];
}

export const starterRecipes: readonly StarterRecipe[] = [
  {
    recipe: 'flake-and-vinegar',
    name: 'Potato flakes with vinegar, soaked',
    method: 'soaked',
    lines: [
      { ingredient: 'potato-flakes', amount: 150, measure: 'g' },
      { ingredient: 'powdered-sugar', amount: 60, measure: 'g' },
      { ingredient: 'brewers-yeast', amount: 30, measure: 'g' },
      { ingredient: 'vinegar', amount: 160, measure: 'g' },
      { ingredient: 'water', amount: 640, measure: 'ml' },
    ],
  },
  {
    recipe: 'oat-and-banana',
    name: 'Oat flour with banana, soaked',
    method: 'soaked',
    lines: [
      { ingredient: 'oat-flour', amount: 200, measure: 'g' },
      { ingredient: 'banana', amount: 150, measure: 'g' },
      { ingredient: 'brewers-yeast', amount: 30, measure: 'g' },
      { ingredient: 'vinegar', amount: 120, measure: 'g' },
      { ingredient: 'water', amount: 530, measure: 'ml' },
    ],
  },
  {
    recipe: 'maize-and-molasses',
    name: 'Maize with molasses and agar, cooked',
    method: 'cooked',
    lines: [
      { ingredient: 'cornmeal', amount: 75, measure: 'g' },
      { ingredient: 'brewers-yeast', amount: 25, measure: 'g' },
      { ingredient: 'molasses', amount: 70, measure: 'g' },
      { ingredient: 'agar', amount: 7, measure: 'g' },
      { ingredient: 'methylparaben', amount: 1.2, measure: 'g' },
      { ingredient: 'water', amount: 900, measure: 'ml' },
    ],
  },
];

/** A starter recipe by mass. */
export function starterRecipe(key: string, tables: KitchenTables): Result<Recipe> | null {
  const starter = starterRecipes.find((s) => s.recipe === key);
  return starter ? recipeFromLines(starter.recipe, starter.name, starter.lines, tables) : null;
}

/**
 * A recipe is a list of ingredients by mass, and water. Spoons and cups are turned into grams once,
 * when the recipe is written down; after that all arithmetic is by weight.
 */
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import { amountOf } from './amount.ts';
import type { IngredientKind, KitchenTables } from './kitchen-tables.ts';
import { convert, toGrams } from './measures.ts';

export interface Recipe {
  recipe: string;
  name: string;
  ingredients: readonly { ingredient: string; massG: number }[];
  waterMl: number;
}

export interface RecipeLine {
  ingredient: string;
  amount: number;
  measure: string;
}

/** Grams in a millilitre of water, near enough at any kitchen temperature. */
const waterGPerMl = 1;
/** Starch, sugar, protein and ash take about two thirds of a millilitre a gram (value from memory). */
const solidsGPerMl = 1.5;

/** The recipe by mass of lines in any measure; the ingredient `water` becomes its water. */
export function recipeFromLines(
  recipe: string,
  name: string,
  lines: readonly RecipeLine[],
  tables: KitchenTables,
): Result<Recipe> {
  const problems: Problem[] = [];
  const ingredients: { ingredient: string; massG: number }[] = [];
  let waterMl = 0;
  lines.forEach((line, i) => {
    const isWater = line.ingredient === 'water';
    const massOrMl = isWater ? convert({ ...line, from: line.measure, to: 'ml' }, tables) : toGrams(line, tables);
    if (!massOrMl.ok) problems.push(...massOrMl.problems.map((p) => ({ ...p, where: `line ${i + 1}, ${p.where}` })));
    else if (isWater) waterMl += massOrMl.value.amount;
    else ingredients.push({ ingredient: line.ingredient, massG: massOrMl.value.amount });
  });
  return problems.length > 0 ? failed(...problems) : checkRecipe({ recipe, name, ingredients, waterMl });
}

/** The recipe, if every amount is a number of 0 or more, no ingredient comes twice, and it is not empty. */
export function checkRecipe(recipe: Recipe): Result<Recipe> {
  const problems: Problem[] = [];
  const seen = new Set<string>();
  for (const { ingredient, massG } of recipe.ingredients) {
    const mass = amountOf(massG, `recipe ${recipe.recipe}, ${ingredient}, massG`);
    if (!mass.ok) problems.push(...mass.problems);
    if (seen.has(ingredient)) {
      const where = `recipe ${recipe.recipe}, ${ingredient}`;
      problems.push({ where, found: 'the ingredient twice', expected: 'one line for each ingredient' });
    }
    seen.add(ingredient);
  }
  const water = amountOf(recipe.waterMl, `recipe ${recipe.recipe}, waterMl`);
  if (!water.ok) problems.push(...water.problems);
  if (problems.length === 0 && recipeMassG(recipe) === 0) {
    problems.push({ where: `recipe ${recipe.recipe}`, found: 'nothing in it', expected: 'at least one ingredient' });
  }
  return problems.length > 0 ? failed(...problems) : ok(recipe);
}

/** Mass of everything in it, water included, in g. */
export function recipeMassG(recipe: Recipe): number {
  return recipe.ingredients.reduce((sum, i) => sum + i.massG, recipe.waterMl * waterGPerMl);
}

/** Grams of the ingredients of the given kinds; an ingredient that the table lacks counts as dry. */
export function massOfKindsG(recipe: Recipe, kinds: readonly IngredientKind[], tables: KitchenTables): number {
  return recipe.ingredients
    .filter((i) => kinds.includes(kindOf(i.ingredient, tables)))
    .reduce((sum, i) => sum + i.massG, 0);
}

export function kindOf(ingredient: string, tables: KitchenTables): IngredientKind {
  return tables.densities.find((d) => d.ingredient === ingredient)?.kind ?? 'dry';
}

/**
 * Volume of the finished medium in ml: water and liquids by their volume, solids at 1.5 g/ml, less the
 * share lost by boiling. An estimate: within about 6 % of the volumes that published recipes state.
 */
export function finishedVolumeMl(recipe: Recipe, boiledOffShare: number, tables: KitchenTables): number {
  const volumeMl = recipe.ingredients.reduce((sum, { ingredient, massG }) => {
    const density = tables.densities.find((d) => d.ingredient === ingredient);
    const isPoured = density?.kind === 'liquid' || density?.kind === 'preservative';
    return sum + massG / (density && isPoured ? density.gPerMl : solidsGPerMl);
  }, recipe.waterMl);
  return volumeMl * (1 - boiledOffShare);
}

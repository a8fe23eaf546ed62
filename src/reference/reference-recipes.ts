/** Published media recipes as printed, with the water or the finished volume they are for (data/reference-recipes.csv). */
import text from '../../data/reference-recipes.csv?raw';
import { type CsvRow, csvRows } from './csv-rows.ts';

export interface ReferenceRecipe {
  recipe: string;
  name: string;
  /** Whether `basisMl` is the finished medium or the water put in. */
  basis: 'finished' | 'water';
  basisMl: number;
  ingredients: { ingredient: string; amount: number; unit: 'g' | 'ml' | 'item' }[];
  source: string;
  status: string;
}

export const referenceRecipes: readonly ReferenceRecipe[] = recipesOf(csvRows('reference-recipes', text));

function recipesOf(rows: CsvRow[]): ReferenceRecipe[] {
  const keys = [...new Set(rows.map((row) => row.text('recipe')))];
  return keys.map((key) => recipeOf(rows.filter((row) => row.text('recipe') === key)));
}

function recipeOf(rows: CsvRow[]): ReferenceRecipe {
  const first = rows[0] as CsvRow;
  return {
    recipe: first.text('recipe'),
    name: first.text('name'),
    basis: first.oneOf('basis', ['finished', 'water']),
    basisMl: first.number('basis_ml'),
    ingredients: rows.map((row) => ({
      ingredient: row.text('ingredient'),
      amount: row.number('amount'),
      unit: row.oneOf('unit', ['g', 'ml', 'item']),
    })),
    source: first.text('source'),
    status: first.text('status'),
  };
}

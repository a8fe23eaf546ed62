/**
 * The kitchen's figures against figures that others published: the units of NIST Handbook 44, gram
 * weights of the USDA database, the concentrations that recipes state of themselves.
 */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import {
  amountForDose,
  convert,
  doseOfAmount,
  finishedVolumeMl,
  type KitchenTables,
  type Recipe,
  recipeFromLines,
  scaleRecipe,
  starterRecipe,
  starterRecipes,
  toGrams,
  undissociatedShare,
  waterForDryMl,
} from '../../src/media/index.ts';
import { publishedDensities } from '../../src/reference/ingredient-densities.ts';
import { publishedMeasures } from '../../src/reference/measures.ts';
import { publishedPreservatives } from '../../src/reference/preservatives.ts';
import { type ReferenceRecipe, referenceRecipes } from '../../src/reference/reference-recipes.ts';

const tables: KitchenTables = {
  measures: publishedMeasures,
  densities: publishedDensities,
  preservatives: publishedPreservatives,
};
const table = (name: string) =>
  parse(readFileSync(new URL(name, import.meta.url), 'utf8'), { columns: true, comment: '#' }) as Record<
    string,
    string
  >[];
const amountIn = (amount: number, from: string, to: string, ingredient?: string): number => {
  const result = convert({ amount, from, to, ingredient }, tables);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value.amount;
};
const published = (key: string): ReferenceRecipe => {
  const recipe = referenceRecipes.find((r) => r.recipe === key);
  if (!recipe) throw new Error(key);
  return recipe;
};

describe('measures against NIST Handbook 44, Appendix C', () => {
  // Section 4 of that appendix: a gallon is 231 cubic inches and an inch 2.54 cm, both exactly.
  const gallonMl = 231 * 2.54 ** 3;
  it.each([
    ['us-cup', 16],
    ['us-pint', 8],
    ['us-quart', 4],
    ['us-floz', 128],
    ['us-tbsp', 256],
    ['us-tsp', 768],
  ])('%s is a %sth of a gallon', (measure, parts) =>
    expect(amountIn(1, measure, 'ml')).toBeCloseTo(gallonMl / parts, 9),
  );
  it('and to the whole millilitres that the appendix prints', () => {
    expect(Math.round(amountIn(1, 'us-cup', 'ml'))).toBe(237);
    expect(amountIn(1, 'us-floz', 'ml')).toBeCloseTo(29.574, 3);
  });
  it('an Australian tablespoon is 1.353 US ones', () =>
    expect(amountIn(1, 'au-tbsp', 'us-tbsp')).toBeCloseTo(1.353, 3));
  it('16 ounces are a pound', () => expect(amountIn(16, 'oz', 'lb')).toBeCloseTo(1, 12));
});

describe('gram weights against the USDA database, release 28', () => {
  it.each(table('usda-gram-weights.csv'))('$measure of $ingredient', ({ ingredient, measure, grams, digit }) => {
    const result = toGrams({ ingredient: String(ingredient), amount: 1, measure: String(measure) }, tables);
    // The database's own weights of a spoon and of a cup differ by up to 7 %, besides the printed rounding.
    const slack = 0.07 * Number(grams) + Number(digit) / 2;
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    expect(Math.abs(result.value.amount - Number(grams))).toBeLessThanOrEqual(slack);
    expect(result.value.low).toBeLessThanOrEqual(result.value.amount);
    expect(result.value.high).toBeGreaterThanOrEqual(result.value.amount);
  });
  it('flakes are not granules: one cup is 60 g against 200 g', () => {
    expect(amountIn(1, 'us-cup', 'g', 'potato-flakes')).toBeCloseTo(60, 9);
    expect(amountIn(1, 'us-cup', 'g', 'potato-granules')).toBeCloseTo(200, 9);
  });
  it.each([
    ['oat-flour', 2.27],
    ['potato-flakes', 3.94],
  ])('one to one by volume for %s is %s to one by weight (236.588 ml of water on a USDA cup)', (ingredient, ratio) => {
    const water = waterForDryMl([{ ingredient, massG: 100 }], 1, tables);
    expect(water.ok && water.value / 100).toBeCloseTo(ratio, 2);
  });
});

describe('published recipes, scaled to one litre', () => {
  const perLitre = table('medium-per-litre.csv');
  it('every line of every recipe', () => {
    expect(perLitre.length).toBeGreaterThan(60);
    for (const { recipe, ingredient, per_litre } of perLitre) {
      const from = published(String(recipe));
      const index = from.ingredients.findIndex((i) => i.ingredient === ingredient);
      // Scaling is by weight of whatever the unit: the factor is what is checked here.
      const asMass: Recipe = {
        recipe: from.recipe,
        name: from.name,
        waterMl: 0,
        ingredients: from.ingredients.map((i) => ({ ingredient: i.ingredient, massG: i.amount })),
      };
      const scaled = scaleRecipe(asMass, 1000 / from.basisMl).ingredients[index];
      expect(scaled?.massG, `${recipe} ${ingredient}`).toBeCloseTo(Number(per_litre), 2);
    }
  });
  it('soy and cornmeal food: 188 ml of 13.4 M propionic acid in 42.5 l is the stated 0.059 M', () => {
    const dose = doseOfAmount({ preservative: 'propionic-acid', amount: 188, finishedVolumeMl: 42_500 }, tables);
    expect(dose.ok && (dose.value.percent / 100) * 13.4).toBeCloseTo(0.059, 3);
    expect(dose.ok && dose.value.verdict).toBe('usual');
  });
  it('semi-defined food: 10 ml of a 10 % stock a litre is the stated 0.1 %', () => {
    const dose = amountForDose(
      { preservative: 'methylparaben', percent: 0.1, finishedVolumeMl: 1000, stockPercent: 10 },
      tables,
    );
    expect(dose.ok && dose.value.stockMl).toBeCloseTo(10, 12);
  });
  it('the estimate of the finished volume is within 6 % of the stated 42.5 l, before boiling', () => {
    const soy = published('soy-cornmeal');
    const lines = soy.ingredients
      .filter((i) => i.ingredient !== 'malt-extract') // optional in the recipe
      .map((i) => ({ ingredient: i.ingredient, amount: i.amount, measure: i.unit }));
    const recipe = recipeFromLines('soy', 'soy', lines, tables);
    expect(recipe.ok).toBe(true);
    if (!recipe.ok) return;
    const volumeMl = finishedVolumeMl(recipe.value, 0, tables);
    expect(volumeMl / 42_500).toBeGreaterThan(1);
    expect(volumeMl / 42_500).toBeLessThan(1.06);
  });
  it('the home maize mix has more methylparaben than is usual, and is warned of', () => {
    const dose = doseOfAmount({ preservative: 'methylparaben', amount: 1, finishedVolumeMl: 200 }, tables);
    expect(dose.ok && dose.value.percent).toBeCloseTo(0.5, 12);
    expect(dose.ok && dose.value.verdict).toBe('high');
  });
  it.each([
    ['two-acid', 83.6, 17_000],
    ['semi-defined', 6, 1000],
    ['treacle', 18, 2400],
  ])('the propionic acid of %s is within the usual range', (_key, ml, volumeMl) => {
    const dose = doseOfAmount({ preservative: 'propionic-acid', amount: ml, finishedVolumeMl: volumeMl }, tables);
    expect(dose.ok && dose.value.verdict).toBe('usual');
  });
});

describe('weak acids (Henderson-Hasselbalch, pKa of propionic acid 4.86)', () => {
  it.each([
    [3.5, 0.96],
    [4.0, 0.88],
    [4.5, 0.7],
    [5.0, 0.42],
    [5.5, 0.19],
    [6.0, 0.07],
  ])('at pH %s a share of %s acts', (pH, share) => expect(undissociatedShare(pH, 4.86)).toBeCloseTo(share, 2));
});

describe('our own starter recipes lie within the published ones', () => {
  const perLitreOf = (key: string, recipe: ReferenceRecipe) =>
    recipe.ingredients
      .filter((i) => i.ingredient === key)
      .reduce((sum, i) => sum + (i.amount / recipe.basisMl) * 1000, 0);
  const yeasts = referenceRecipes.map((r) => perLitreOf('brewers-yeast', r)).filter((g) => g > 0);
  it.each(starterRecipes.map((s) => s.recipe))('%s', (key) => {
    const recipe = starterRecipe(key, tables);
    expect(recipe?.ok).toBe(true);
    if (!recipe?.ok) return;
    const litres = finishedVolumeMl(recipe.value, 0, tables) / 1000;
    const yeastG = recipe.value.ingredients.find((i) => i.ingredient === 'brewers-yeast')?.massG ?? 0;
    expect(yeastG / litres).toBeGreaterThanOrEqual(Math.min(...yeasts));
    expect(yeastG / litres).toBeLessThanOrEqual(Math.max(...yeasts));
    const methylparabenG = recipe.value.ingredients.find((i) => i.ingredient === 'methylparaben')?.massG;
    if (methylparabenG === undefined) return;
    const dose = doseOfAmount(
      { preservative: 'methylparaben', amount: methylparabenG, finishedVolumeMl: litres * 1000 },
      tables,
    );
    expect(dose.ok && dose.value.verdict).toBe('usual');
  });
});

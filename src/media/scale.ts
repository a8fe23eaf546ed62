/** Scaling a recipe: by a factor, to a batch's mass, to a number of cups, to what is on hand. */
import { failed, ok, type Result } from '../foundation/index.ts';
import { positiveAmount, problemsOf, shareBelowOne } from './amount.ts';
import { checkRecipe, type Recipe, recipeMassG } from './recipe.ts';

export interface CupSize {
  /** Medium in one cup. */
  mediumMassG: number;
  /** What stays in the pot or steams off, of the mass put in. */
  lossShare: number;
}

export interface CupsOfMedium {
  recipe: Recipe;
  cups: number;
  /** Mass to put together, loss included, and what reaches the cups. */
  mixedMassG: number;
  filledMassG: number;
}

export interface CupsOnHand {
  cups: number;
  /** What runs out first; null when the recipe needs nothing that could run out. */
  limitedBy: string | null;
  byIngredient: { ingredient: string; perCupG: number; onHandG: number; cups: number; leftG: number }[];
}

/** All amounts times `factor` (above 0, else RangeError). */
export function scaleRecipe(recipe: Recipe, factor: number): Recipe {
  if (!(factor > 0) || !Number.isFinite(factor)) throw new RangeError(`scaleRecipe: factor ${factor} is not above 0`);
  return {
    ...recipe,
    ingredients: recipe.ingredients.map((i) => ({ ...i, massG: i.massG * factor })),
    waterMl: recipe.waterMl * factor,
  };
}

/** The recipe for a batch of `massG` in all. */
export function scaleToBatch(recipe: Recipe, massG: number): Result<Recipe> {
  const checked = checkRecipe(recipe);
  const mass = positiveAmount(massG, 'massG');
  if (!checked.ok || !mass.ok) return failed(...problemsOf(checked, mass));
  return ok(scaleRecipe(recipe, massG / recipeMassG(recipe)));
}

/** The recipe for a number of cups, with what is lost on the way added. */
export function scaleToCups(recipe: Recipe, cups: number, size: CupSize): Result<CupsOfMedium> {
  const checks = [positiveAmount(cups, 'cups'), ...sizeChecks(size)];
  if (checks.some((c) => !c.ok)) return failed(...problemsOf(...checks));
  const filledMassG = cups * size.mediumMassG;
  const mixedMassG = filledMassG / (1 - size.lossShare);
  const scaled = scaleToBatch(recipe, mixedMassG);
  return scaled.ok ? ok({ recipe: scaled.value, cups, mixedMassG, filledMassG }) : scaled;
}

/**
 * How many whole cups the stock makes, which ingredient runs out first, and what is left of each.
 * An ingredient that the stock does not name counts as none; water never runs out.
 */
export function cupsFromStock(
  recipe: Recipe,
  stock: readonly { ingredient: string; massG: number }[],
  size: CupSize,
): Result<CupsOnHand> {
  const perCup = scaleToCups(recipe, 1, size);
  const bad = stock.find((s) => !(s.massG >= 0));
  if (!perCup.ok) return perCup;
  if (bad) return failed({ where: `stock ${bad.ingredient}`, found: String(bad.massG), expected: '0 g or more' });
  const lines = perCup.value.recipe.ingredients.filter((i) => i.massG > 0).map((i) => lineOf(i, stock));
  if (lines.length === 0) return ok({ cups: 0, limitedBy: null, byIngredient: [] });
  const first = lines.reduce((a, b) => (b.cups < a.cups ? b : a));
  const cups = Math.floor(first.cups + 1e-9);
  const byIngredient = lines.map((l) => ({ ...l, leftG: l.onHandG - cups * l.perCupG }));
  return ok({ cups, limitedBy: first.ingredient, byIngredient });
}

function lineOf(
  need: { ingredient: string; massG: number },
  stock: readonly { ingredient: string; massG: number }[],
): { ingredient: string; perCupG: number; onHandG: number; cups: number } {
  const onHandG = stock.filter((s) => s.ingredient === need.ingredient).reduce((sum, s) => sum + s.massG, 0);
  return { ingredient: need.ingredient, perCupG: need.massG, onHandG, cups: onHandG / need.massG };
}

function sizeChecks(size: CupSize): Result<number>[] {
  return [positiveAmount(size.mediumMassG, 'mediumMassG'), shareBelowOne(size.lossShare, 'lossShare')];
}

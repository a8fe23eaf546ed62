/**
 * Liquid to dry: the ratio by weight, and the one that a keeper sees in the measuring cup. They differ
 * by the bulk of the powder: one to one by volume is 2.3 to 1 by weight for oat flour, 3.9 for flakes.
 */
import { failed, ok, type Result } from '../foundation/index.ts';
import { positiveAmount, problemsOf } from './amount.ts';
import type { KitchenTables } from './kitchen-tables.ts';
import { densityNamed } from './measures.ts';
import { kindOf, massOfKindsG, type Recipe } from './recipe.ts';

export interface WaterRatio {
  /** Grams of water and poured liquid to one gram of dry ingredients. */
  byMass: number;
  /** Measured volumes alike; null when a dry ingredient has no known density. */
  byVolume: number | null;
}

/** The ratios of a recipe; refused when it has no dry ingredient. */
export function waterRatio(recipe: Recipe, tables: KitchenTables): Result<WaterRatio> {
  const dryG = massOfKindsG(recipe, ['dry', 'live-yeast'], tables);
  const dry = positiveAmount(dryG, `recipe ${recipe.recipe}, dry ingredients, g`);
  if (!dry.ok) return dry;
  const liquidG = recipe.waterMl + massOfKindsG(recipe, ['liquid'], tables);
  return ok({ byMass: liquidG / dryG, byVolume: volumeRatio(recipe, tables) });
}

/** Water in ml for a dry mix at a ratio by measured volume. */
export function waterForDryMl(
  dry: readonly { ingredient: string; massG: number }[],
  ratioByVolume: number,
  tables: KitchenTables,
): Result<number> {
  const ratio = positiveAmount(ratioByVolume, 'ratioByVolume');
  const volumes = dry.map((d) => {
    const density = densityNamed(d.ingredient, tables);
    return density.ok ? ok(d.massG / density.value.gPerMl) : density;
  });
  const problems = problemsOf(ratio, ...volumes);
  if (problems.length > 0) return failed(...problems);
  return ok(volumes.reduce((sum, v) => sum + (v.ok ? v.value : 0), 0) * ratioByVolume);
}

function volumeRatio(recipe: Recipe, tables: KitchenTables): number | null {
  let dryMl = 0;
  let liquidMl = recipe.waterMl;
  for (const { ingredient, massG } of recipe.ingredients) {
    const kind = kindOf(ingredient, tables);
    if (kind === 'preservative') continue;
    const density = densityNamed(ingredient, tables);
    if (!density.ok) return null;
    if (kind === 'liquid') liquidMl += massG / density.value.gPerMl;
    else dryMl += massG / density.value.gPerMl;
  }
  return dryMl > 0 ? liquidMl / dryMl : null;
}

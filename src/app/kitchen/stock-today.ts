/**
 * What is in the kitchen today: each item as last counted, less what the logbook says was used since then.
 * Items are ingredients (by weight) and things (in pieces): `cup`, `cup-dirty`, `lid`, `climbing-material`.
 */
import type { Day } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { convert, recipeMassG, scaleRecipe } from '../../media/index.ts';
import { kitchenTables } from './kitchen-tables.ts';

export interface StockToday {
  item: string;
  amount: number;
  unit: 'g' | 'piece';
}

const thingsPerCup = ['cup', 'lid', 'climbing-material'];

/** The stock on `on`, never below nothing. */
export function stockToday(facts: Facts, on: Day): StockToday[] {
  return facts.stock
    .filter((s) => s.on <= on)
    .map(({ item, amount, unit, on: countedOn }) => {
      const grams = inGrams(item, amount, unit);
      const used = grams === null ? cupsStarted(facts, countedOn, on, item) : massUsedG(facts, countedOn, on, item);
      return { item, amount: Math.max(0, (grams ?? amount) - used), unit: grams === null ? 'piece' : 'g' };
    });
}

/** Null for what is counted in pieces. */
function inGrams(item: string, amount: number, unit: string): number | null {
  const converted = convert({ amount, from: unit, to: 'g', ingredient: item }, kitchenTables);
  return converted.ok ? converted.value.amount : null;
}

function cupsStarted(facts: Facts, after: Day, on: Day, item: string): number {
  if (!thingsPerCup.includes(item)) return 0;
  return facts.cultures.filter((c) => c.origin === 'started' && c.on > after && c.on <= on).length;
}

/** Grams of an ingredient that went into batches mixed since it was counted. */
function massUsedG(facts: Facts, after: Day, on: Day, ingredient: string): number {
  return facts.batches
    .filter((b) => b.on > after && b.on <= on)
    .reduce((sum, batch) => {
      const recipe = facts.recipes.find((r) => r.recipe === batch.recipe);
      if (!recipe || recipeMassG(recipe) === 0 || !(batch.massG > 0)) return sum;
      const scaled = scaleRecipe(recipe, batch.massG / recipeMassG(recipe));
      return sum + (scaled.ingredients.find((i) => i.ingredient === ingredient)?.massG ?? 0);
    }, 0);
}

/**
 * What is in the kitchen today: each item as last counted, less what the logbook says was used since then,
 * and more of what has come out of ended cups. Items are ingredients (by weight) and things (in pieces):
 * `cup`, `lid`, `climbing-material`, and the same with `-dirty` for what waits to be washed.
 */
import type { Day } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { convert, cupEnd, recipeMassG, scaleRecipe } from '../../media/index.ts';
import { kitchenRecipe } from './kitchen-recipe.ts';
import { kitchenTables } from './kitchen-tables.ts';

export interface StockToday {
  item: string;
  amount: number;
  unit: 'g' | 'piece';
}

export const thingsPerCup = ['cup', 'lid', 'climbing-material'] as const;
const dirtyEnding = '-dirty';
/** Things that come out of a cup to be washed and used again. */
const washed: readonly string[] = ['cup', 'lid', 'climbing-material'];

/** The stock on `on`, never below nothing. */
export function stockToday(facts: Facts, on: Day): StockToday[] {
  return facts.stock
    .filter((s) => s.on <= on)
    .map(({ item, amount, unit, on: countedOn }) => {
      const grams = inGrams(item, amount, unit);
      if (grams !== null) return { item, amount: less(grams, massUsedG(facts, countedOn, on, item)), unit: 'g' };
      const change = cupsEndedWashable(facts, countedOn, on, item) - cupsStarted(facts, countedOn, on, item);
      return { item, amount: less(amount, -change), unit: 'piece' };
    });
}

function less(amount: number, used: number): number {
  return Math.max(0, amount - used);
}

/** Null for what is counted in pieces. */
function inGrams(item: string, amount: number, unit: string): number | null {
  const converted = convert({ amount, from: unit, to: 'g', ingredient: item }, kitchenTables);
  return converted.ok ? converted.value.amount : null;
}

function cupsStarted(facts: Facts, after: Day, on: Day, item: string): number {
  if (!thingsPerCup.some((thing) => thing === item)) return 0;
  return facts.cultures.filter((c) => c.origin === 'started' && c.on > after && c.on <= on).length;
}

/** Cups that ended since the count and may be washed; nesting material goes with them where it is counted dirty. */
function cupsEndedWashable(facts: Facts, after: Day, on: Day, item: string): number {
  if (!item.endsWith(dirtyEnding) || !washed.includes(item.slice(0, -dirtyEnding.length))) return 0;
  return facts.cultures.filter(
    ({ ended }) => ended !== null && ended.on > after && ended.on <= on && cupEnd(ended.reason, true).reuse.length > 0,
  ).length;
}

/** Grams of an ingredient that went into batches mixed since it was counted. */
function massUsedG(facts: Facts, after: Day, on: Day, ingredient: string): number {
  return facts.batches
    .filter((b) => b.on > after && b.on <= on)
    .reduce((sum, batch) => {
      const found = batch.recipe === null ? null : kitchenRecipe(facts, batch.recipe);
      if (!found?.ok || !(batch.massG > 0)) return sum;
      const { recipe } = found.value;
      const scaled = scaleRecipe(recipe, batch.massG / recipeMassG(recipe));
      return sum + (scaled.ingredients.find((i) => i.ingredient === ingredient)?.massG ?? 0);
    }, 0);
}

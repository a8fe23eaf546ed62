/**
 * How many cups the containers and the medium in the house allow today and tomorrow; from then on there
 * was time to wash and to shop (common practice). What nobody counted limits nothing.
 */
import { dayFromNumber } from '../../foundation/index.ts';
import { recipeMassG } from '../../media/index.ts';
import { type HouseholdModel, usualContainer } from '../household-model.ts';
import { kitchenRecipe } from '../kitchen/kitchen-recipe.ts';
import { stockToday, type StockToday } from '../kitchen/stock-today.ts';
import { mediumLeftG } from './medium-left.ts';

/** Cups by day from today; nothing where the log states no stock. */
export function cupsOnHandByDay({ facts, today }: HouseholdModel): number[] {
  const stock = stockToday(facts, dayFromNumber(today));
  const clean = pieces(stock, 'cup');
  if (clean === null && !stock.some(({ unit }) => unit === 'g')) return [];
  const medium = cupsOfMedium(facts, today, stock);
  const overnight = (clean ?? Number.POSITIVE_INFINITY) + (pieces(stock, 'cup-dirty') ?? 0);
  return [Math.min(clean ?? Number.POSITIVE_INFINITY, medium), Math.min(overnight, medium)];
}

function pieces(stock: StockToday[], item: string): number | null {
  return stock.find((s) => s.item === item && s.unit === 'piece')?.amount ?? null;
}

/** Cups that batches in stock, and what can be mixed of counted ingredients, would fill. */
function cupsOfMedium(facts: HouseholdModel['facts'], today: number, stock: StockToday[]): number {
  const recipe = kitchenRecipe(facts, undefined);
  if (!recipe.ok) return Number.POSITIVE_INFINITY;
  const shares = recipe.value.recipe.ingredients.flatMap(({ ingredient, massG }) => {
    const counted = stock.find((s) => s.item === ingredient && s.unit === 'g');
    return counted && massG > 0 ? [counted.amount / massG] : [];
  });
  if (shares.length === 0) return Number.POSITIVE_INFINITY;
  const mixedG = Math.min(...shares) * recipeMassG(recipe.value.recipe);
  const perCupG = Math.max(1, ...facts.strains.map((s) => usualContainer(facts, s.strain).mediumMassG));
  return Math.floor((mixedG + mediumLeftG(facts, dayFromNumber(today))) / perCupG);
}

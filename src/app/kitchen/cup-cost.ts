/** What a cup and 100 flies cost the keeper, from the prices in the logbook's stock entries. */
import { ok, type Result } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { convert, costSheet, type CupSize, type Price, type Recipe } from '../../media/index.ts';
import { kitchenTables } from './kitchen-tables.ts';
import type { MixAnswer } from './mix-answer.ts';

/** Ends of a cup that count as failures; the rest had their time or left for another reason. */
const failures = ['mould', 'mites', 'dry', 'wet', 'crashed', 'contaminated'];
/** A washed cup is used about six times (common practice). */
const usesOfWashedCup = 6;
const thingsPerCup = ['cup', 'lid', 'climbing-material'];

/** Null when no price was ever written; items without a price are named and left out of the sum. */
export function cupCost(facts: Facts, recipe: Recipe, size: CupSize): Result<MixAnswer['cost']> {
  const prices = pricesOf(facts);
  if (prices.length === 0) return ok(null);
  const isPriced = (item: string) => prices.some((p) => p.item === item);
  const wanted = [...recipe.ingredients.map((i) => i.ingredient), ...thingsPerCup];
  const unpriced = recipe.ingredients.filter((i) => !isPriced(i.ingredient)).map((i) => i.ingredient);
  const history = endedCups(facts);
  const sheet = costSheet({
    recipe,
    size,
    prices: [...prices, ...unpriced.map((item) => ({ item, price: 0, packAmount: 1 }))],
    things: thingsPerCup.filter(isPriced).map((item) => ({ item, amount: 1, uses: usesOf(facts, item) })),
    fliesPerCup: history.fliesPerCup ?? 1,
    failureShare: history.failureShare,
  });
  if (!sheet.ok) return sheet;
  return ok({
    currency: facts.household.currency,
    perCup: sheet.value.perCup,
    perGoodCup: sheet.value.perGoodCup,
    per100Flies: history.fliesPerCup === null ? null : sheet.value.per100Flies,
    failureShare: history.failureShare,
    fliesPerGoodCup: history.fliesPerCup,
    lines: sheet.value.lines.filter((l) => isPriced(l.item)).map(({ item, cost }) => ({ item, cost })),
    missingPrices: wanted.filter((item) => !isPriced(item)),
  });
}

/** Prices of a gram, or of a piece for what is not weighed. */
export function pricesOf(facts: Facts): Price[] {
  return facts.stock.flatMap(({ item, unit, pricePerUnit }) => {
    if (pricePerUnit === null) return [];
    const grams = convert({ amount: 1, from: unit, to: 'g', ingredient: item }, kitchenTables);
    return [{ item, price: pricePerUnit, packAmount: grams.ok ? grams.value.amount : 1 }];
  });
}

function usesOf(facts: Facts, item: string): number {
  return item === 'cup' && facts.stock.some((s) => s.item === 'cup-dirty') ? usesOfWashedCup : 1;
}

/** Flies that good cups gave, as far as they were counted, and the share of cups that failed. */
function endedCups(facts: Facts): { fliesPerCup: number | null; failureShare: number } {
  const ended = facts.cultures.filter((c) => c.origin === 'started' && c.ended !== null);
  const good = ended.filter((c) => !failures.includes(c.ended?.reason ?? ''));
  const flies = good.map((c) => c.harvests.reduce((sum, h) => sum + (h.flies ?? 0), 0)).filter((n) => n > 0);
  const fliesPerCup = flies.length === 0 ? null : flies.reduce((a, b) => a + b, 0) / flies.length;
  return { fliesPerCup, failureShare: good.length === 0 ? 0 : 1 - good.length / ended.length };
}

/**
 * What a cup costs and what 100 flies cost, from prices that the keeper enters. No prices are shipped.
 * Cups that fail are paid by those that do not.
 */
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import { amountOf, positiveAmount, problemsOf, shareBelowOne } from './amount.ts';
import { type CupSize, scaleToCups } from './scale.ts';
import type { Recipe } from './recipe.ts';

/** `price` for a pack of `packAmount` g (ingredients) or pieces (cups, lids, climbing material). */
export interface Price {
  item: string;
  price: number;
  packAmount: number;
}

export interface CostRequest {
  recipe: Recipe;
  size: CupSize;
  prices: readonly Price[];
  /** Things used for a cup besides medium; `uses` = how often one is used again (1 = thrown away). */
  things: readonly { item: string; amount: number; uses: number }[];
  /** Flies that a good cup gives. */
  fliesPerCup: number;
  /** Share of cups that fail. */
  failureShare: number;
}

export interface CostSheet {
  lines: { item: string; amount: number; unit: 'g' | 'piece'; cost: number }[];
  /** Of one cup started. */
  perCup: number;
  /** Of one cup that succeeds. */
  perGoodCup: number;
  per100Flies: number;
}

/** The cost sheet; refused, naming the items, when a price is missing or impossible. */
export function costSheet(request: CostRequest): Result<CostSheet> {
  const medium = scaleToCups(request.recipe, 1, request.size);
  const flies = positiveAmount(request.fliesPerCup, 'fliesPerCup');
  const failure = shareBelowOne(request.failureShare, 'failureShare');
  const problems: Problem[] = problemsOf(medium, flies, failure);
  const wanted = [...(medium.ok ? mediumLines(medium.value.recipe) : []), ...thingLines(request, problems)];
  const lines = wanted.map((line) => ({ ...line, cost: line.amount * pricePerUnit(line.item, request, problems) }));
  if (problems.length > 0) return failed(...problems);
  const perCup = lines.reduce((sum, line) => sum + line.cost, 0);
  const perGoodCup = perCup / (1 - request.failureShare);
  return ok({ lines, perCup, perGoodCup, per100Flies: (perGoodCup / request.fliesPerCup) * 100 });
}

type Line = { item: string; amount: number; unit: 'g' | 'piece' };

function mediumLines(recipe: Recipe): Line[] {
  return recipe.ingredients.map((i) => ({ item: i.ingredient, amount: i.massG, unit: 'g' }));
}

function thingLines(request: CostRequest, problems: Problem[]): Line[] {
  return request.things.map(({ item, amount, uses }) => {
    problems.push(...problemsOf(amountOf(amount, `${item}, amount`), positiveAmount(uses, `${item}, uses`)));
    return { item, amount: amount / uses, unit: 'piece' };
  });
}

function pricePerUnit(item: string, request: CostRequest, problems: Problem[]): number {
  const price = request.prices.find((p) => p.item === item);
  if (!price) {
    problems.push({ where: `prices, ${item}`, found: 'no price', expected: 'a price and what it buys' });
    return 0;
  }
  const checks = [amountOf(price.price, `${item}, price`), positiveAmount(price.packAmount, `${item}, packAmount`)];
  problems.push(...problemsOf(...checks));
  return price.price / price.packAmount;
}

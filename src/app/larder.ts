/** What is on hand in the kitchen, how many cups it lasts for, and the medium that is left. */
import { type Day, daysBetween, ok, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { batchesLeft, scaleToCups } from '../media/index.ts';
import { usualContainer } from './household-model.ts';
import { pricesOf } from './kitchen/cup-cost.ts';
import { kitchenRecipe } from './kitchen/kitchen-recipe.ts';
import type { LarderAnswer } from './kitchen/larder-answer.ts';
import { stockToday, thingsPerCup } from './kitchen/stock-today.ts';

export interface LarderQuestion {
  on: Day;
  /** The one last mixed when left out. */
  recipe?: string;
  mediumMassG?: number;
}

const lossShare = 0.05;
/** Batches gone past are shown this many days longer, so that they are thrown out. */
const pastDaysShown = 7;

/** Refused for an unknown recipe, or amounts that make no sense. */
export function larder(facts: Facts, question: LarderQuestion): Result<LarderAnswer> {
  const found = kitchenRecipe(facts, question.recipe);
  if (!found.ok) return found;
  const mediumMassG = question.mediumMassG ?? usualContainer(facts, facts.strains[0]?.strain ?? '').mediumMassG;
  const perCup = scaleToCups(found.value.recipe, 1, { mediumMassG, lossShare });
  if (!perCup.ok) return perCup;
  const needs = new Map<string, number>(thingsPerCup.map((thing) => [thing, 1]));
  for (const { ingredient, massG } of perCup.value.recipe.ingredients) if (massG > 0) needs.set(ingredient, massG);
  const items = itemsOf(facts, question.on, needs);
  const lasting = items.filter((i) => i.cups !== null).sort((a, b) => (a.cups ?? 0) - (b.cups ?? 0));
  return ok({
    on: question.on,
    recipe: found.value.recipe.recipe,
    mediumMassG,
    items,
    uncounted: [...needs.keys()].filter((need) => !items.some(({ item }) => item === need)),
    lastsCups: lasting[0] ? Math.floor((lasting[0].cups ?? 0) + 1e-9) : null,
    limitedBy: lasting[0]?.item ?? null,
    things: thingsNow(facts, items),
    batches: batchesNow(facts, question.on),
    currency: facts.household.currency,
  });
}

function itemsOf(facts: Facts, on: Day, needs: ReadonlyMap<string, number>): LarderAnswer['items'] {
  const prices = pricesOf(facts);
  return stockToday(facts, on).map(({ item, amount, unit }) => {
    const price = prices.find((p) => p.item === item);
    const need = needs.get(item);
    return {
      item,
      amount,
      unit,
      countedOn: facts.stock.find((s) => s.item === item)?.on ?? on,
      price: price ? price.price / price.packAmount : null,
      cups: need === undefined ? null : amount / need,
    };
  });
}

function thingsNow(facts: Facts, items: LarderAnswer['items']): LarderAnswer['things'] {
  const inUse = facts.cultures.filter((c) => c.ended === null).length;
  const counted = (item: string) => items.find((i) => i.item === item)?.amount ?? null;
  return thingsPerCup.map((thing) => ({ thing, inUse, clean: counted(thing), dirty: counted(`${thing}-dirty`) }));
}

function batchesNow(facts: Facts, on: Day): LarderAnswer['batches'] {
  const uses = facts.cultures.map((c) => ({ batch: c.batch, massG: c.mediumMassG }));
  return batchesLeft(facts.batches, uses, on).filter((b) => b.leftG > 0 && !(b.isPast && isLongPast(b.goodUntil, on)));
}

function isLongPast(goodUntil: Day | null, on: Day): boolean {
  return goodUntil !== null && daysBetween(goodUntil, on) > pastDaysShown;
}

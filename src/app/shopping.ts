/** When to mix, wash and shop for the planned starts, and the list that lasts until a day. */
import { addDays, type Day, ok, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import {
  type Batch,
  batchesLeft,
  kitchenPlan,
  type KitchenPlan,
  type KitchenProblem,
  shelfLifeDays,
} from '../media/index.ts';
import type { Job } from './answers.ts';
import { usualContainer } from './household-model.ts';
import { pricesOf } from './kitchen/cup-cost.ts';
import { kitchenRecipe } from './kitchen/kitchen-recipe.ts';
import type { ShoppingAnswer } from './kitchen/shopping-answer.ts';
import { stockToday } from './kitchen/stock-today.ts';

export interface ShoppingQuestion {
  on: Day;
  /** Four weeks ahead when left out. */
  until?: Day;
  recipe?: string;
  /** Days between deciding to shop and having it. */
  leadDays?: number;
  lossShare?: number;
}

const usualDaysAhead = 28;
const usualLeadDays = 3;
const usualLossShare = 0.05;
/** Medium in the cold keeps about two weeks; a household pot holds about three litres. */
const potG = 3000;
const things = [
  { item: 'lid', amount: 1 },
  { item: 'climbing-material', amount: 1 },
];

/** The kitchen's side of the plan; items that were never counted are named and left out of the list. */
export function shopping(
  facts: Facts,
  jobs: readonly Omit<Job, 'why'>[],
  question: ShoppingQuestion,
): Result<ShoppingAnswer> {
  const found = kitchenRecipe(facts, question.recipe);
  if (!found.ok) return found;
  const until = question.until ?? addDays(question.on, usualDaysAhead);
  const stock = stockToday(facts, question.on);
  const planned = kitchenPlan({
    on: question.on,
    until,
    starts: starts(jobs),
    ends: ends(jobs),
    recipe: found.value.recipe,
    size: {
      mediumMassG: usualContainer(facts, facts.strains[0]?.strain ?? '').mediumMassG,
      lossShare: question.lossShare ?? usualLossShare,
    },
    batches: batchesNow(facts, question.on),
    batchKeepsDays: shelfLifeDays['wet-cold'],
    maxBatchMassG: potG,
    stock,
    perCup: things,
    cups: cupsNow(stock),
    shopping: { leadDays: question.leadDays ?? usualLeadDays },
  });
  if (!planned.ok) return planned;
  return ok({ on: question.on, until, recipe: found.value.recipe.recipe, ...answerOf(facts, stock, planned.value) });
}

function answerOf(
  facts: Facts,
  stock: ReturnType<typeof stockToday>,
  plan: KitchenPlan,
): Omit<ShoppingAnswer, 'on' | 'until' | 'recipe'> {
  const unitOf = (item: string) => stock.find((s) => s.item === item)?.unit ?? 'g';
  const isCounted = (item: string) => stock.some((s) => s.item === item);
  const prices = pricesOf(facts);
  const list = plan.shoppingList
    .filter((l) => isCounted(l.item))
    .map((line) => {
      const price = prices.find((p) => p.item === line.item);
      return { ...line, unit: unitOf(line.item), price: price ? (line.amount * price.price) / price.packAmount : null };
    });
  const shop = plan.shop.map(({ on, items }) => ({
    on,
    items: items.filter((i) => isCounted(i.item)).map((i) => ({ ...i, unit: unitOf(i.item) })),
  }));
  return {
    mix: plan.mix,
    wash: plan.wash,
    shop: shop.filter((s) => s.items.length > 0),
    shoppingList: list,
    price: list.reduce((sum, l) => sum + (l.price ?? 0), 0),
    currency: facts.household.currency,
    uncounted: plan.shoppingList.map((l) => l.item).filter((item) => !isCounted(item)),
  };
}

function starts(jobs: readonly Omit<Job, 'why'>[]): KitchenProblem['starts'] {
  return jobs
    .filter((job) => job.kind === 'start')
    .map((job) => ({ on: job.date as Day, cups: Math.round(job.cups ?? 1) }));
}

function ends(jobs: readonly Omit<Job, 'why'>[]): KitchenProblem['ends'] {
  return jobs
    .filter((job) => job.kind === 'discard')
    .map((job) => ({ on: job.date as Day, cups: job.cultures?.length ?? 1 }));
}

/** Batches with what is left of them after the cups that were filled from each. */
function batchesNow(facts: Facts, on: Day): Batch[] {
  const uses = facts.cultures.map((c) => ({ batch: c.batch, massG: c.mediumMassG }));
  return batchesLeft(facts.batches, uses, on).map(({ leftG, isPast: _, ...batch }) => ({ ...batch, massG: leftG }));
}

/** Where clean cups were never counted there is no end of them, so that none is put on the list. */
function cupsNow(stock: ReturnType<typeof stockToday>): KitchenProblem['cups'] {
  const counted = (item: string) => stock.find((s) => s.item === item)?.amount;
  const dirty = counted('cup-dirty');
  return { clean: counted('cup') ?? Number.POSITIVE_INFINITY, dirty: dirty ?? 0, areWashed: dirty !== undefined };
}

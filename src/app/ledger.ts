/** Costs and yield over time, week by week, from the logbook: the figures behind the picture. */
import { type Day, daysBetween } from '../foundation/index.ts';
import type { CultureFacts, Facts } from '../logbook/index.ts';
import { type LedgerCup, ledgerOf } from '../media/index.ts';
import { type CupLife, cupLives } from './cup-lives.ts';
import { cupCost } from './kitchen/cup-cost.ts';
import { kitchenRecipe } from './kitchen/kitchen-recipe.ts';
import type { LedgerAnswer } from './kitchen/ledger-answer.ts';
import type { Question } from './question.ts';

const usualLossShare = 0.05;

/**
 * The ledger up to `on`. Flies thrown out with a cup are those believed to be in it on its last day;
 * harvests that were not counted add nothing, and bought cups cost nothing here.
 */
export function ledger(facts: Facts, question: Question): LedgerAnswer {
  const lives = new Map(cupLives(facts, question).map((life) => [life.id, life]));
  const cups = facts.cultures
    .filter((c) => c.startedOn <= question.on)
    .map((culture) => ledgerCup(facts, culture, lives.get(culture.culture)));
  const hasPrices = facts.stock.some((s) => s.pricePerUnit !== null);
  return { on: question.on, currency: facts.household.currency, hasPrices, ...ledgerOf(cups, question.on) };
}

function ledgerCup(facts: Facts, culture: CultureFacts, life: CupLife | undefined): LedgerCup {
  const { ended, harvests, mediumMassG, startedOn } = culture;
  return {
    on: startedOn,
    mediumMassG,
    cost: culture.origin === 'started' ? costOf(facts, culture) : 0,
    harvests: harvests.flatMap((h) => (h.flies === null ? [] : [{ on: h.on, flies: h.flies }])),
    ended: ended && { on: ended.on, fliesLeft: ended.reason === 'given' ? 0 : fliesOn(life, startedOn, ended.on) },
  };
}

function fliesOn(life: CupLife | undefined, startedOn: Day, on: Day): number {
  return life?.flies[daysBetween(startedOn, on)] ?? 0;
}

function costOf(facts: Facts, culture: CultureFacts): number {
  const batch = facts.batches.find((b) => b.batch === culture.batch);
  const recipe = kitchenRecipe(facts, batch?.recipe ?? undefined);
  if (!recipe.ok || !(culture.mediumMassG > 0)) return 0;
  const cost = cupCost(facts, recipe.value.recipe, { mediumMassG: culture.mediumMassG, lossShare: usualLossShare });
  return cost.ok && cost.value ? cost.value.perCup : 0;
}

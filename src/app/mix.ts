/** Medium for a number of cups: weights, spoons, doses, what the stock makes, and the work step by step. */
import { type Day, daysBetween, failed, ok, type Problem, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import {
  asSpoons,
  type CupSize,
  type CupsOfMedium,
  cupChecklist,
  cupsFromStock,
  type Dose,
  doseOfAmount,
  amountForDose,
  finishedVolumeMl,
  handlingOrder,
  type Recipe,
  roundToScale,
  scaleToBatch,
  scaleToCups,
  waterRatio,
} from '../media/index.ts';
import { type CautionKey, type Language, spokenSteps, type StepKey } from '../paper/index.ts';
import { usualContainer } from './household-model.ts';
import { cupCost } from './kitchen/cup-cost.ts';
import { type KitchenRecipe, kitchenRecipe } from './kitchen/kitchen-recipe.ts';
import { kitchenTables } from './kitchen/kitchen-tables.ts';
import type { MixAnswer } from './kitchen/mix-answer.ts';
import { stockToday } from './kitchen/stock-today.ts';

export interface MixQuestion {
  on: Day;
  /** A key of the household's or the starter recipes; the last one mixed when left out. */
  recipe?: string;
  /** Left out: as many as the stock makes. */
  cups?: number;
  mediumMassG?: number;
  /** Instead of `cups`: the mass of the whole batch, as mixed; it makes as many whole cups as it fills. */
  batchMassG?: number;
  lossShare?: number;
  scaleStepG?: number;
  measures?: 'us' | 'metric' | 'au';
  /** Added to what the recipe holds; `stockPercent` when it is measured from a stock solution. */
  preservative?: { preservative: string; percent: number; stockPercent?: number };
  strain?: string;
  language?: Language;
}

const usual = { lossShare: 0.05, scaleStepG: 1, measures: 'metric', language: 'en' } as const;

/** The answer; refused for an unknown recipe, impossible amounts, or a stock that makes no cup. */
export function mix(facts: Facts, question: MixQuestion): Result<MixAnswer> {
  const found = kitchenRecipe(facts, question.recipe);
  if (!found.ok) return found;
  const strain = question.strain ?? facts.strains[0]?.strain ?? '';
  const size: CupSize = {
    mediumMassG: question.mediumMassG ?? usualContainer(facts, strain).mediumMassG,
    lossShare: question.lossShare ?? usual.lossShare,
  };
  const onHand = stockMakes(facts, question.on, found.value.recipe, size);
  if (!onHand.ok) return onHand;
  const medium = mediumOf(question, found.value.recipe, size, onHand.value);
  if (!medium.ok) return medium;
  const doses = dosesOf(medium.value.recipe, question);
  const cost = cupCost(facts, found.value.recipe, size);
  if (!doses.ok) return doses;
  if (!cost.ok) return cost;
  return ok({
    ...answerOf(question, found.value, medium.value, size, doses.value),
    onHand: onHand.value,
    cost: cost.value,
    steps: stepsOf(facts, question, found.value, medium.value, size, doses.value),
  });
}

/** For the cups asked for, for a batch of a mass, or for what the stock makes. */
function mediumOf(
  { cups, batchMassG }: MixQuestion,
  recipe: Recipe,
  size: CupSize,
  onHand: MixAnswer['onHand'],
): Result<CupsOfMedium> {
  if (batchMassG !== undefined) {
    if (cups !== undefined)
      return failed({ where: 'cups', found: `${cups} beside a batch`, expected: 'one of the two' });
    return batchOf(recipe, batchMassG, size);
  }
  const wanted = cups ?? onHand?.cups ?? 1;
  return wanted === 0 ? failed(nothingToMix(onHand)) : scaleToCups(recipe, wanted, size);
}

function batchOf(recipe: Recipe, massG: number, size: CupSize): Result<CupsOfMedium> {
  const scaled = scaleToBatch(recipe, massG);
  if (!scaled.ok) return scaled;
  const filled = massG * (1 - size.lossShare);
  const cups = Math.floor(filled / size.mediumMassG + 1e-9);
  return ok({ recipe: scaled.value, cups, mixedMassG: massG, filledMassG: cups * size.mediumMassG });
}

function answerOf(
  question: MixQuestion,
  { recipe, method }: KitchenRecipe,
  medium: CupsOfMedium,
  size: CupSize,
  doses: Dose[],
): Omit<MixAnswer, 'onHand' | 'cost' | 'steps'> {
  const ratio = waterRatio(medium.recipe, kitchenTables);
  return {
    on: question.on,
    recipe: recipe.recipe,
    name: recipe.name,
    method,
    cups: medium.cups,
    mediumMassG: size.mediumMassG,
    mixedMassG: medium.mixedMassG,
    finishedVolumeMl: volumeOf(medium.recipe),
    waterMl: medium.recipe.waterMl,
    ingredients: medium.recipe.ingredients.map((i) => ingredientOf(i, question)),
    liquidToDryByMass: ratio.ok ? ratio.value.byMass : null,
    liquidToDryByVolume: ratio.ok ? ratio.value.byVolume : null,
    doses: doses.map(({ warnings: _, ...dose }) => ({ ...dose, range: rangeOf(dose.preservative) })),
    warnings: doses.flatMap((d) => d.warnings),
  };
}

function ingredientOf(
  { ingredient, massG }: Recipe['ingredients'][number],
  question: MixQuestion,
): MixAnswer['ingredients'][number] {
  const weighed = roundToScale(massG, question.scaleStepG ?? usual.scaleStepG);
  const spoons = asSpoons(ingredient, massG, question.measures ?? usual.measures, kitchenTables);
  return {
    ingredient,
    massG,
    weighedG: weighed.massG,
    weighedErrorShare: weighed.errorShare,
    spoons: spoons.ok
      ? { text: spoonText(spoons.value.parts), parts: spoons.value.parts, errorShare: spoons.value.errorShare }
      : null,
  };
}

/** `1 1/4 cup + 2 tbsp`. */
function spoonText(parts: { measure: string; count: number }[]): string {
  return parts.map(({ measure, count }) => `${quarters(count)} ${measure.split('-')[1]}`).join(' + ');
}

function quarters(count: number): string {
  const part = ['', '1/4', '1/2', '3/4'][Math.round((count % 1) * 4)] ?? '';
  return [Math.floor(count) || '', part].filter((t) => t !== '').join(' ');
}

/** Preservatives that the recipe holds, and the one asked for beside them. */
function dosesOf(recipe: Recipe, { preservative }: MixQuestion): Result<Dose[]> {
  const finishedVolume = volumeOf(recipe);
  const doses = recipe.ingredients.flatMap(({ ingredient, massG }) => {
    const range = kitchenTables.preservatives.find((p) => p.preservative === ingredient);
    if (!range) return [];
    const gPerMl = kitchenTables.densities.find((d) => d.ingredient === ingredient)?.gPerMl ?? 1;
    const amount = range.basis === 'v/v' ? massG / gPerMl : massG;
    return [doseOfAmount({ preservative: ingredient, amount, finishedVolumeMl: finishedVolume }, kitchenTables)];
  });
  if (preservative) doses.push(amountForDose({ ...preservative, finishedVolumeMl: finishedVolume }, kitchenTables));
  const problems: Problem[] = doses.flatMap((d) => (d.ok ? [] : d.problems));
  return problems.length > 0 ? failed(...problems) : ok(doses.flatMap((d) => (d.ok ? [d.value] : [])));
}

function rangeOf(preservative: string): MixAnswer['doses'][number]['range'] {
  const range = kitchenTables.preservatives.find((p) => p.preservative === preservative);
  if (!range) throw new RangeError(`rangeOf: ${preservative} is not in the table`);
  const { usualLowPercent, usualHighPercent, warnAbovePercent, harmPercent } = range;
  return { usualLowPercent, usualHighPercent, warnAbovePercent, harmPercent };
}

function volumeOf(recipe: Recipe): number {
  return finishedVolumeMl(recipe, 0, kitchenTables);
}

function stockMakes(facts: Facts, on: Day, recipe: Recipe, size: CupSize): Result<MixAnswer['onHand']> {
  const stock = stockToday(facts, on).filter((s) => s.unit === 'g');
  if (stock.length === 0) return ok(null);
  return cupsFromStock(
    recipe,
    stock.map((s) => ({ ingredient: s.item, massG: s.amount })),
    size,
  );
}

function nothingToMix(onHand: MixAnswer['onHand']): Problem {
  const missing = onHand?.limitedBy ?? 'an ingredient';
  return { where: 'cups', found: `0: ${missing} is missing`, expected: 'a number of cups, or stock for at least one' };
}

function stepsOf(
  facts: Facts,
  question: MixQuestion,
  { method }: KitchenRecipe,
  medium: CupsOfMedium,
  size: CupSize,
  doses: Dose[],
): MixAnswer['steps'] {
  const strain = question.strain ?? facts.strains[0]?.strain ?? '';
  const steps = cupChecklist({
    method,
    cups: medium.cups,
    mediumMassG: size.mediumMassG,
    founders: usualContainer(facts, strain).founders,
    strainName: facts.strains.find((s) => s.strain === strain)?.name ?? strain,
    dose: doses[0] ?? null,
    sources: handlingOrder(sourceCups(facts, question.on, strain)),
  });
  const keyed = steps.map((s) => ({ ...s, step: s.step as StepKey, cautions: s.cautions as CautionKey[] }));
  return spokenSteps(keyed, question.language ?? usual.language).map((spoken, i) => ({
    step: steps[i]?.step ?? '',
    ...spoken,
  }));
}

/** Living cups of the strain that may hold adults, as sources of founders. */
function sourceCups(facts: Facts, on: Day, strain: string) {
  return facts.cultures
    .filter((c) => c.strain === strain && c.ended === null && c.seen.at(-1)?.present.includes('adults'))
    .map((c) => ({
      label: c.label,
      ageDays: Math.max(0, daysBetween(c.startedOn, on)),
      hasMites: c.seen.some((s) => s.mites),
      isQuarantined: c.quarantinedUntil !== null && c.quarantinedUntil > on,
    }));
}

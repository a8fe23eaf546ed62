/** A winged fly in a flightless line: the warmth, or a stranger; and what to do, by date. */
import { type Day, dayFromNumber, dayNumber, type Said, said, saidTogether } from '../../foundation/index.ts';
import type { CultureFacts, Facts } from '../../logbook/index.ts';
import { finishedVolumeMl } from '../../media/index.ts';
import { publishedMutations, publishedWingEffects } from '../../reference/index.ts';
import { contamination, rescueFromStranger, type WingEffect, wingCheck } from '../../strains/index.ts';
import type { HouseholdModel } from '../household-model.ts';
import { kitchenRecipe } from '../kitchen/kitchen-recipe.ts';
import { kitchenTables } from '../kitchen/kitchen-tables.ts';
import { generationOf } from './generation-time.ts';
import { oneWildMale, type SaidWarning } from './line-said.ts';
import type { LineContext } from './line-context.ts';
import { mutationOf } from './strain-genetics.ts';
import { nothingMore, usualRescue, virginHours } from './rescue-circumstances.ts';

const generationsShown = 6;

/** @param on the day on which it was seen. */
export function wingedFlies({ model }: LineContext, culture: CultureFacts, on: Day): SaidWarning {
  const strain = model.facts.strains.find(({ strain: key }) => key === culture.strain);
  const mutation = strain ? mutationOf(strain) : 'unknown';
  const { temperatureC, generationDays } = circumstances(model, culture);
  const check = wingCheck({
    symbol: mutation,
    rearedC: temperatureC,
    methylparabenPercent: methylparabenPercent(model.facts, culture),
    onDay: dayNumber(on),
    coolGenerationDays: generationDays,
    effects: publishedWingEffects,
  });
  const waits = check.verdict === 'condition explains it';
  return {
    ...nothingMore,
    kind: 'winged flies',
    culture: culture.culture,
    label: culture.label,
    on,
    why: waits
      ? whyWaits(check.effects, temperatureC)
      : said`A winged fly in a flightless line is most likely a stranger, and its wild form of the gene stays for ever unless it is taken out.`,
    todo: waits
      ? check.todo
      : [said`Throw the cup out if you have another of the line; else isolate it and follow the steps.`, ...check.todo],
    wingedLookingShare: check.expectedShare,
    lookAgainOn: check.lookAgainOn === null ? null : dayFromNumber(check.lookAgainOn),
    outlooks: [{ assumption: oneWildMale, wingedShare: strangerOutlook(culture, mutation) }],
    steps: waits ? [] : rescueSteps(model, temperatureC, generationDays),
  };
}

/** Warmth and preservative lengthen wings alike, and are told apart. */
function whyWaits(effects: readonly WingEffect[], temperatureC: number): Said {
  const [warmth, food] = [effects.some(({ unit }) => unit === 'C'), effects.some(({ unit }) => unit !== 'C')];
  return saidTogether(
    ...(warmth
      ? [
          said`It grew up at ${{ degreesC: temperatureC, whole: true }}, where this mutant's wings grow longer; such flies are still mutants.`,
        ]
      : []),
    ...(food
      ? [said`Methylparaben in its medium lengthens this mutant's wings, in males more; such flies are still mutants.`]
      : []),
  );
}

/** Of the medium that the cup was filled from; null when its batch or recipe is not known. */
function methylparabenPercent(facts: Facts, { batch }: CultureFacts): number | null {
  const key = facts.batches.find((each) => each.batch === batch)?.recipe;
  const found = key ? kitchenRecipe(facts, key) : null;
  if (!found?.ok) return null;
  const { recipe } = found.value;
  const massG = recipe.ingredients.find(({ ingredient }) => ingredient === 'methylparaben')?.massG ?? 0;
  return (100 * massG) / finishedVolumeMl(recipe, 0, kitchenTables);
}

function rescueSteps(model: HouseholdModel, temperatureC: number, generationDays: number): SaidWarning['steps'] {
  const { steps } = rescueFromStranger({
    ...usualRescue,
    onDay: model.today,
    generationDays,
    virginWindowHours: virginHours(temperatureC),
  });
  return steps.map(({ onDay, generation, act, why }) => ({
    date: dayFromNumber(onDay),
    generation,
    act,
    why,
  }));
}

function circumstances(model: HouseholdModel, culture: CultureFacts) {
  const days = generationOf(model, culture.strain, culture);
  return days ?? { temperatureC: 23, generationDays: 14, eggToAdultDays: 11 };
}

/** Winged share by generation from one wild male, the mutation unknown being taken as a recessive. */
function strangerOutlook({ founders }: CultureFacts, mutation: string): number[] {
  const known = publishedMutations.find(({ symbol }) => symbol === mutation);
  const symbol = known && known.dominance === 'recessive' ? known.symbol : 'u1';
  const half = Math.max(1, Math.round(founders / 2));
  const result = contamination({
    line: { female: `${symbol}/${symbol}`, male: known?.chromosome === 'X' ? `${symbol}/Y` : `${symbol}/${symbol}` },
    founders: { females: half, males: half },
    stranger: { kind: 'male', female: '+/+', male: '+/+' },
    generations: generationsShown,
    loci: publishedMutations,
  });
  return result.ok ? result.value.generations.map(({ wingedShare }) => wingedShare) : [];
}

/** A cup whose founders came of two strains: what it becomes, and how it is parted or brought back. */
import { dayFromNumber, dayNumber, said, saidTogether } from '../../foundation/index.ts';
import type { CultureFacts, StrainFacts } from '../../logbook/index.ts';
import { publishedMutations } from '../../reference/index.ts';
import { type Competitor, kosambi, mixingAdvice, takeover, unmix } from '../../strains/index.ts';
import type { HouseholdModel } from '../household-model.ts';
import { generationOf } from './generation-time.ts';
import { assumptionSaid, type SaidWarning } from './line-said.ts';
import type { LineContext } from './line-context.ts';
import { mutationOf, strainToMix } from './strain-genetics.ts';
import { nothingMore, usualRescue, virginHours } from './rescue-circumstances.ts';

const generationsShown = 6;
const confidence = 0.95;
/** Grown offspring of one founder in a good cup: some hundreds of flies from 50 (common practice). */
const offspringPerFounder = 10;

/** One warning for each other strain that the cup's founders came from. */
export function mixedStrains(context: LineContext, culture: CultureFacts): SaidWarning[] {
  const { facts } = context.model;
  const parents = culture.fromCultures.flatMap((key) => context.byKey.get(key) ?? []);
  const others = [...new Set(parents.map(({ strain }) => strain))].filter((strain) => strain !== culture.strain);
  return others.flatMap((other) => {
    const [own, stranger] = [culture.strain, other].map((key) => facts.strains.find(({ strain }) => strain === key));
    return own && stranger ? [mixedWith(context, culture, own, stranger)] : [];
  });
}

function mixedWith(context: LineContext, culture: CultureFacts, own: StrainFacts, other: StrainFacts): SaidWarning {
  const { model } = context;
  const place = { culture: culture.culture, label: culture.label, on: culture.on };
  const { verdict, outlooks, why, todo } = adviceFor(own, other);
  if (verdict === 'two species') {
    const race = speciesRace(model, culture, own, other);
    const whole = race
      ? saidTogether(why, said`The one that breeds faster takes over the cup. Here that is ${race.winner}.`)
      : why;
    return { ...nothingMore, ...place, kind: 'two species', why: whole, todo: race?.todo ?? todo };
  }
  return {
    ...nothingMore,
    ...place,
    kind: 'mixed strains',
    why,
    todo,
    outlooks: outlooks.map(({ assumption, wingedShare }) => ({ assumption: assumptionSaid[assumption], wingedShare })),
    steps: verdict === 'breeds true' ? [] : partingSteps(context, culture, own, other),
  };
}

function adviceFor(own: StrainFacts, other: StrainFacts) {
  const input = {
    first: strainToMix(own),
    second: strainToMix(other),
    generations: generationsShown,
    loci: publishedMutations,
  };
  const advice = mixingAdvice(input);
  if (advice.ok) return advice.value;
  // A mutation that the tables do not have is answered as an unknown one.
  const unknown = mixingAdvice({
    ...input,
    first: { ...input.first, locus: 'unknown' },
    second: { ...input.second, locus: 'unknown' },
  });
  if (!unknown.ok) throw new RangeError('adviceFor: unknown mutations were refused');
  return unknown.value;
}

/** From the second generation on, when flies of the wanted look have appeared again. */
function partingSteps({ model }: LineContext, culture: CultureFacts, own: StrainFacts, other: StrainFacts) {
  const days = generationOf(model, culture.strain, culture);
  if (!days) return [];
  const { steps } = unmix({
    ...usualRescue,
    ...linkage(mutationOf(own), mutationOf(other)),
    onDay: Math.max(model.today, dayNumber(culture.on) + Math.ceil(2 * days.generationDays)),
    generationDays: days.generationDays,
    virginWindowHours: virginHours(days.temperatureC),
    confidence,
  });
  return steps.map(({ onDay, generation, act, why }) => ({
    date: dayFromNumber(onDay),
    generation,
    act,
    why,
  }));
}

/** Two loci whose places on the map are not both known are taken to lie on different chromosomes. */
function linkage(first: string, second: string): { recombination: number; sameChromosome: boolean } {
  const [a, b] = [first, second].map((symbol) => publishedMutations.find((one) => one.symbol === symbol));
  if (!a || !b || a.chromosome === null || a.chromosome !== b.chromosome || a.position === null || b.position === null)
    return { recombination: 0.5, sameChromosome: false };
  return { recombination: kosambi(Math.abs(a.position - b.position)), sameChromosome: true };
}

function speciesRace(model: HouseholdModel, culture: CultureFacts, own: StrainFacts, other: StrainFacts) {
  const competitor = (strain: StrainFacts): Competitor | null => {
    const days = generationOf(model, strain.strain, culture);
    if (days === null) return null;
    return {
      name: strain.name || strain.strain,
      founders: Math.max(1, culture.founders / 2),
      generationDays: days.generationDays,
      offspringPerFounder,
      firstEmergenceDay: days.eggToAdultDays,
    };
  };
  const [first, second] = [competitor(own), competitor(other)];
  return first && second ? takeover(first, second, 60) : null;
}

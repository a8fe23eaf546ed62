/** A ration for one kind of animal: practice beside energy, in flies of the size that the cups now give. */
import {
  assimilatedShare,
  checkAnimal,
  compareRations,
  type EnergyNeed,
  energyNeed,
  growthCostOfPrey,
  type Range,
  rangeOf,
  usableJoulePerMg,
  usualActivity,
} from '../animals/index.ts';
import { type Day, failed, ok, type Problem, type Result, type Said, said, sentence } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { publishedEnergyEquations, publishedFlyCompositions, publishedRations } from '../reference/index.ts';
import type { RationAnswer } from './animals/animal-answers.ts';
import { kindOf, usualFlyMg } from './animals/animal-kinds.ts';
import { flySizeNow } from './animals/fly-size.ts';
import { starterRations } from './animals/starter-rations.ts';
import type { Question } from './question.ts';
import { wordsOf } from './words/words.ts';

export interface RationQuestion {
  /** Key of data/rations.csv. */
  animal: string;
  on: Day;
  /** Mass of one animal; the middle of the kind's range when left out. */
  massG?: number;
  /** Warmth that the animal lives in; 24 when left out. */
  temperatureC?: number;
  count?: number;
  /** Mass gained a day by one animal, g; a stage that ends gains its range of mass in its time when left out. */
  growthGPerDay?: number;
  /** Share of the diet that is flies. */
  flyShare?: number;
  /** The household's strain to feed; the kind's usual species when left out. */
  strain?: string;
  /** Of the cautions; English when left out. */
  language?: Question['language'];
}

/** Share of prey mass that mantis nymphs turned into body at the highest and at a middling density of prey (hurd-1991). */
const mantisGrowth = { low: 0.4, high: 0.58 };

type Row = (typeof publishedRations)[number];

/** Refused: an unknown kind, numbers out of their limits, a strain that nobody knows. */
export function ration(facts: Facts, question: RationQuestion): Result<RationAnswer> {
  const row = kindOf(question.animal);
  if (!row) return failed(unknownAnimal(question.animal));
  const given = withUsual(row, question);
  const problems = [...shareProblems(given), ...problemsOf(checkAnimal(given))];
  const flyMassMg = flySizeNow(facts, given.strain, question.on)?.nowMg;
  if (!flyMassMg)
    problems.push({ where: 'strain', found: given.strain, expected: 'a strain of the household or of the books' });
  if (!flyMassMg || problems.length > 0) return failed(...problems);
  return ok(answered(row, given, flyMassMg, question.language));
}

type Given = ReturnType<typeof withUsual>;

function withUsual(row: Row, question: RationQuestion) {
  return {
    massG: question.massG ?? rangeOf(row.massLowG, row.massHighG).middle,
    temperatureC: question.temperatureC ?? 24,
    count: question.count ?? 1,
    growthGPerDay: question.growthGPerDay ?? usualGain(row),
    flyShare: question.flyShare ?? 1,
    strain: question.strain ?? row.fly,
  };
}

function usualGain({ massLowG, massHighG, stageDaysLow, stageDaysHigh }: Row): number {
  if (stageDaysLow === null || stageDaysHigh === null) return 0;
  return (massHighG - massLowG) / rangeOf(stageDaysLow, stageDaysHigh).middle;
}

function shareProblems({ flyShare, growthGPerDay }: Given): Problem[] {
  const problems: Problem[] = [];
  if (!(flyShare > 0 && flyShare <= 1))
    problems.push({ where: 'flyShare', found: `${flyShare}`, expected: 'above 0, up to 1' });
  if (!(growthGPerDay >= 0 && growthGPerDay <= 10))
    problems.push({ where: 'growthGPerDay', found: `${growthGPerDay}`, expected: '0 to 10 g' });
  return problems;
}

function problemsOf(result: Result<unknown>): Problem[] {
  return result.ok ? [] : result.problems;
}

function unknownAnimal(animal: string): Problem {
  return { where: 'animal', found: animal, expected: `one of ${publishedRations.map((row) => row.animal).join(', ')}` };
}

function answered(row: Row, given: Given, flyMassMg: Range, language: Question['language']): RationAnswer {
  const joulePerMg = usableJoulePerMg(publishedFlyCompositions, assimilatedShare[row.taxon]);
  const need = energyNeed({
    ...given,
    ...(row.taxon === 'insect' ? { growthCost: growthCostOfPrey(mantisGrowth, joulePerMg) } : {}),
    equations: publishedEnergyEquations.filter(({ taxon }) => taxon === row.taxon),
    activity: usualActivity,
    joulePerMg,
  });
  const fly = { usualMg: usualFlyMg[row.fly], nowMg: flyMassMg };
  const { practice, energy, ratio, verdict } = compareRations(row, need.ok ? need.value.flyMgPerDay : null, fly);
  const forAll = ({ low, middle, high }: Range) => ({
    low: low * given.count,
    middle: middle * given.count,
    high: high * given.count,
  });
  return {
    starter: starterRations().find(({ animal }) => animal === row.animal) as RationAnswer['starter'],
    massG: given.massG,
    temperatureC: given.temperatureC,
    flyMassMg,
    practice,
    energy:
      energy && need.ok
        ? { ...energy, joulePerDay: need.value.joulePerDay, byEquation: withSources(need.value) }
        : null,
    ratio,
    verdict,
    groupFliesPerDay: { practice: forAll(practice.fliesPerDay), energy: energy && forAll(energy.fliesPerDay) },
    cautions: cautionsFor(row, given).map((one) => sentence(one, wordsOf({ ...(language && { language }) }))),
  };
}

function withSources({ byEquation }: EnergyNeed) {
  return byEquation.map((one) => ({
    ...one,
    source: publishedEnergyEquations.find(({ equation }) => equation === one.equation)?.source ?? '',
  }));
}

const vetCaution = said`These are starting points, not advice for your animal: watch its body, weigh it, and ask a vet who knows the species.`;

function cautionsFor(row: Row, { massG }: Given): Said[] {
  const cautions = [vetCaution];
  if (massG < row.massLowG || massG > row.massHighG)
    cautions.push(said`Practice speaks of animals of ${String(row.massLowG)} to ${String(row.massHighG)} g.`);
  if (row.taxon === 'insect' || row.taxon === 'spider')
    cautions.push(said`Feed nothing near a moult, and take left-over flies out: they can hurt a soft animal.`);
  if (row.taxon === 'fish') cautions.push(said`Flies are part of the diet only; fry take no adult flies.`);
  return cautions;
}

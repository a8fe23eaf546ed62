/** "May I put these two together?" and "is the line clean by now?", asked before anything is done. */
import { failed, ok, type Problem, type Result, told } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { Language } from '../paper/index.ts';
import { publishedMutations } from '../reference/index.ts';
import { cleanChance, mixingAdvice, noneSeenUpperShare, type StrainToMix } from '../strains/index.ts';
import type { MixingAnswer } from './lines/line-answer.ts';
import { strainToMix } from './lines/strain-genetics.ts';
import { assumptionSaid } from './lines/line-said.ts';
import { wordsOf } from './words/words.ts';

export interface MixingQuestion {
  /** Keys of two of the household's strains. */
  first: string;
  second: string;
  generations?: number;
  language?: Language;
}

const usualGenerations = 6;

/** Refused: strains that the household does not have, a mutation that the tables do not have. */
export function mixing(
  facts: Facts,
  { first, second, generations = usualGenerations, language }: MixingQuestion,
): Result<MixingAnswer> {
  const pair = [namedStrain(facts, first, 'first'), namedStrain(facts, second, 'second')] as const;
  const [one, other] = pair;
  if (!one.ok || !other.ok) return failed(...pair.flatMap((result) => (result.ok ? [] : result.problems)));
  if (!(Number.isInteger(generations) && generations >= 1 && generations <= 50))
    return failed({ where: 'generations', found: `${generations}`, expected: 'a whole number from 1 to 50' });
  const advice = mixingAdvice({ first: one.value, second: other.value, generations, loci: publishedMutations });
  if (!advice.ok) return advice;
  const { verdict, outlooks, why, todo } = advice.value;
  const said = outlooks.map(({ assumption, wingedShare }) => ({ assumption: assumptionSaid[assumption], wingedShare }));
  return ok(told({ verdict, outlooks: said, why, todo }, wordsOf({ ...(language && { language }) })));
}

function namedStrain(facts: Facts, key: string, where: string): Result<StrainToMix> {
  const strain = facts.strains.find((one) => one.strain === key);
  if (!strain)
    return failed({ where, found: key, expected: `one of ${facts.strains.map((one) => one.strain).join(', ')}` });
  return ok(strainToMix(strain));
}

export interface CleanLineQuestion {
  /** Flies looked at in each generation since, all of them flightless. */
  looks: number[];
  founders: number;
  foundersAre: 'any' | 'flightless virgins' | 'flightless mated';
  /** Belief before any look that a wild fly got in; a half when left out. */
  priorContaminated?: number;
}

export interface CleanLineAnswer {
  /** Chance of clean after each look, in order. */
  afterLook: number[];
  /** Largest share of winged flies that the last look still allows, 95 %; null when nobody was looked at. */
  wingedShareBelow: number | null;
}

const mostLooks = 50;
const mostFlies = 100_000;

export function cleanLine(question: CleanLineQuestion): Result<CleanLineAnswer> {
  const { looks, founders, foundersAre, priorContaminated = 0.5 } = question;
  const problems = cleanProblems(question, priorContaminated);
  if (problems.length > 0) return failed(...problems);
  const { afterLook } = cleanChance({ priorContaminated, founders, wildAlleles: 2, looks, foundersAre });
  const last = looks.at(-1) ?? 0;
  return ok({ afterLook, wingedShareBelow: last > 0 ? noneSeenUpperShare(last) : null });
}

function cleanProblems({ looks, founders }: CleanLineQuestion, prior: number): Problem[] {
  const problems: Problem[] = [];
  const refuse = (where: string, found: string | number, expected: string) =>
    problems.push({ where, found: `${found}`, expected });
  if (looks.length === 0 || looks.length > mostLooks) refuse('looks', `${looks.length} looks`, `1 to ${mostLooks}`);
  for (const flies of looks)
    if (!(Number.isInteger(flies) && flies >= 0 && flies <= mostFlies))
      refuse('looks', flies, `whole numbers from 0 to ${mostFlies}`);
  if (!(Number.isInteger(founders) && founders >= 2 && founders <= 500))
    refuse('founders', founders, 'a whole number from 2 to 500');
  if (!(prior >= 0 && prior <= 1)) refuse('priorContaminated', prior, '0 to 1');
  return problems;
}

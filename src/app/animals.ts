/** The household's animals: need over time by strain and group, the week's feedings, food and weights. */
import { type DustingRule, type Range, rangeOf, wantedFlies } from '../animals/index.ts';
import { dayNumber, quantileSorted, told } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { AnimalsAnswer } from './animals/animal-answers.ts';
import { calciumWarnings } from './animals/calcium-warnings.ts';
import { feedingNow, groupsOf } from './animals/feeding-now.ts';
import { groupNeed } from './animals/group-need.ts';
import { animalWarnings } from './animals/warnings.ts';
import { dustStaysHours, qualityAsFed, qualityOf, weekQuality } from './animals/food.ts';
import { weekOfFeedings } from './animals/week.ts';
import { needScenarios } from './need.ts';
import type { Question } from './question.ts';
import { wordsOf } from './words/words.ts';

export interface AnimalsQuestion extends Pick<Question, 'on' | 'weeks' | 'language'> {
  /** Draws of hatches, moults and appetites; 1 when left out. */
  seed?: number;
  /** In place of the household's schedule; a supplement named calcium counts as calcium carbonate. */
  dusting?: readonly DustingRule[];
}

const usualWeeks = 13;

export function animals(
  facts: Facts,
  { on, weeks = usualWeeks, seed = 1, dusting = facts.household.dusting, language }: AnimalsQuestion,
): AnimalsAnswer {
  const days = 7 * weeks;
  const now = feedingNow(facts, on);
  const masses = new Map<string, Range>(
    facts.strains.map(({ strain }) => [strain, now.sizes.get(strain)?.nowMg ?? rangeOf(0, 0)]),
  );
  const week = weekOfFeedings(facts, now, on, dusting, masses);
  const warnings = [...animalWarnings(facts, on), ...calciumWarnings(facts, week, dusting, masses)];
  const answer = {
    on,
    days,
    strains: needByStrain(now.facts, on, days, seed, masses),
    groups: facts.groups.map((group) => groupNeed(facts, now, group, on, days, masses)),
    week,
    dusting: dusting.map((rule) => ({ ...rule })),
    quality: weekQuality(week, masses),
    qualityByGroup: facts.groups.flatMap(({ group }) => {
      const own = qualityOf(
        week.filter((one) => one.group === group),
        masses,
      );
      return own ? [{ group, calciumToPhosphorus: own.calciumToPhosphorus, verdict: own.verdict }] : [];
    }),
    qualityAsFed: qualityAsFed(facts, on, masses),
    dustStaysHours: dustStaysHours(),
    warnings,
    cautions: warnings.map(({ text }) => text),
  };
  return told(answer, wordsOf({ ...(language && { language }) }));
}

/** @param facts of `feedingNow`. */
function needByStrain(
  facts: Facts,
  on: AnimalsQuestion['on'],
  days: number,
  seed: number,
  masses: ReadonlyMap<string, Range>,
): AnimalsAnswer['strains'] {
  const fromDay = dayNumber(on);
  const draws = needScenarios(facts, fromDay, days, seed);
  return [...wantedFlies({ groups: groupsOf(facts), fromDay, days })].map(([strain, { flies, sd }]) => {
    const own = draws.get(strain);
    const at = (p: number) => (own ? quantileByDay(own, days, p) : [...flies]);
    return {
      strain,
      wantedFliesByDay: [...flies],
      sdByDay: [...sd],
      lowByDay: at(0.05),
      highByDay: at(0.95),
      weeks: weekSums(flies, own ?? []),
      flyMassMg: masses.get(strain) ?? rangeOf(0, 0),
    };
  });
}

function quantileByDay(draws: readonly Float32Array[], days: number, p: number): number[] {
  return Array.from({ length: days }, (_, t) =>
    quantileSorted(Float64Array.from(draws, (flies) => flies[t] as number).sort(), p),
  );
}

function weekSums(mean: Float64Array, draws: readonly Float32Array[]) {
  return Array.from({ length: Math.floor(mean.length / 7) }, (_, week) => {
    const sum = (flies: ArrayLike<number>) =>
      Array.from({ length: 7 }, (_, i) => flies[7 * week + i] ?? 0).reduce((total, wanted) => total + wanted, 0);
    const sums = Float64Array.from(draws, sum).sort();
    const at = (p: number) => (sums.length > 0 ? quantileSorted(sums, p) : sum(mean));
    return { flies: sum(mean), low: at(0.05), high: at(0.95) };
  });
}

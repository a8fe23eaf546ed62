/** What the log has taught of each strain, against the books, and the cups and notes that stray. */
import { addDays, type Band, bandOf, dayFromNumber, told } from '../foundation/index.ts';
import {
  type Beliefs,
  type DoubtfulNote,
  type LevelNames,
  misfitSaid,
  type StrainBelief,
  whatTheLogTaught,
} from '../learning/index.ts';
import type { Facts } from '../logbook/index.ts';
import { beliefDraws } from './belief-draws.ts';
import { believe, cupHistories, type Histories } from './evidence.ts';
import { householdModel } from './household-model.ts';
import type { Learned } from './learned-answer.ts';
import { offCourseFigures } from './off-course-said.ts';
import type { Question } from './question.ts';
import { strainComparisons } from './strain-comparison.ts';
import type { CupHistory } from './cup-history.ts';
import { wordsOf } from './words/words.ts';

/** One answer for each strain that has or had cups. */
export function learned(facts: Facts, question: Question): Learned[] {
  const model = householdModel(facts, question.on, 1);
  const histories = cupHistories(model);
  const beliefs = believe(model, histories, question.seed, beliefDraws(histories));
  const names = namesOf(facts);
  const strains = [...histories].flatMap(([strain, cups]) => {
    const belief = beliefs.byStrain.get(strain);
    return belief && cups.length > 0 ? [ofStrain(strain, histories, belief, beliefs, names)] : [];
  });
  return told(strains, wordsOf(question));
}

interface Names extends LevelNames {
  strains: ReadonlyMap<string, string>;
}

function namesOf(facts: Facts): Names {
  return {
    strains: new Map(facts.strains.map((s) => [s.strain, s.name])),
    recipes: new Map(facts.recipes.map((r) => [r.recipe, r.name])),
    places: new Map(facts.places.map((p) => [p.place, p.name])),
  };
}

function ofStrain(strain: string, histories: Histories, belief: StrainBelief, beliefs: Beliefs, names: Names) {
  const cups = histories.get(strain) as CupHistory[];
  const { draws, failureChance, fit } = belief;
  return {
    strain,
    cups: cups.length,
    pace: factor(draws.logPace),
    yields: factor(draws.logYield),
    failure: failureChance,
    fit: { ...fit, misfits: fit.misfits.map((each) => ({ ...each, text: misfitSaid(each.what) })) },
    lessons: [...whatTheLogTaught(belief, names), ...strainComparisons(strain, histories, beliefs, names.strains)],
    strays: cups.flatMap((cup) => strayingCup(cup, beliefs)),
  };
}

function strayingCup({ culture, start }: CupHistory, beliefs: Beliefs) {
  const offCourse = beliefs.cups.get(culture.culture)?.offCourse ?? null;
  const doubtful = beliefs.doubtful.get(culture.culture) ?? [];
  if (offCourse === null && doubtful.length === 0) return [];
  return [
    {
      id: culture.culture,
      label: culture.label,
      offCourse: offCourse && offCourseFigures(offCourse),
      doubtful: doubtful.map((note) => doubtfulFigures(note, start)),
    },
  ];
}

function doubtfulFigures(note: DoubtfulNote, start: number) {
  return { ...note, entryId: note.entryId ?? null, on: addDays(dayFromNumber(start), note.ageDays) };
}

function factor(logs: Float64Array): Band {
  return bandOf(Float64Array.from(logs, Math.exp));
}

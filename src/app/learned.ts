/** What the log has taught of each strain, against the books, and the cups and notes that stray. */
import { type Band, bandOf } from '../foundation/index.ts';
import {
  type Beliefs,
  type CupBelief,
  type Lesson,
  type LevelNames,
  type StrainBelief,
  whatTheLogTaught,
} from '../learning/index.ts';
import type { Facts } from '../logbook/index.ts';
import { believe, cupHistories } from './evidence.ts';
import { householdModel } from './household-model.ts';
import type { Question } from './question.ts';
import type { CupHistory } from './takes.ts';

export interface Learned {
  strain: string;
  /** Cups that spoke. */
  cups: number;
  /** Factors against the books: 0.9 of pace is a tenth slower. */
  pace: Band;
  yields: Band;
  /** Chance that a cup fails before its time. */
  failure: { mean: number; p05: number; p95: number };
  /** One sentence with its figures each: pace, yield, recipes and places compared, counting, taps, life. */
  lessons: Lesson[];
  /** Living cups outside their band, and those with notes that contradict the rest. */
  strays: StrayingCup[];
}

export interface StrayingCup {
  id: string;
  label: string;
  offCourse: CupBelief['offCourse'];
  doubtful: CupBelief['doubtful'];
}

const beliefDraws = 1000;

/** One answer for each strain that has or had cups. */
export function learned(facts: Facts, question: Question): Learned[] {
  const model = householdModel(facts, question.on, 1);
  const histories = cupHistories(model);
  const beliefs = believe(model, histories, question.seed, beliefDraws);
  const names = levelNames(facts);
  return [...histories].flatMap(([strain, cups]) => {
    const belief = beliefs.byStrain.get(strain);
    return belief && cups.length > 0 ? [ofStrain(strain, cups, belief, beliefs, names)] : [];
  });
}

function levelNames(facts: Facts): LevelNames {
  return {
    recipes: new Map(facts.recipes.map((r) => [r.recipe, r.name])),
    places: new Map(facts.places.map((p) => [p.place, p.name])),
  };
}

function ofStrain(
  strain: string,
  cups: CupHistory[],
  belief: StrainBelief,
  beliefs: Beliefs,
  names: LevelNames,
): Learned {
  const { draws, failureChance } = belief;
  return {
    strain,
    cups: cups.length,
    pace: factor(draws.logPace),
    yields: factor(draws.logYield),
    failure: failureChance,
    lessons: whatTheLogTaught(belief, names),
    strays: cups.flatMap((cup) => strayingCup(cup, beliefs.cups.get(cup.culture.culture))),
  };
}

function strayingCup({ culture }: CupHistory, belief: CupBelief | undefined): StrayingCup[] {
  if (!belief || (belief.offCourse === null && belief.doubtful.length === 0)) return [];
  const { offCourse, doubtful } = belief;
  return [{ id: culture.culture, label: culture.label, offCourse, doubtful }];
}

function factor(logs: Float64Array): Band {
  return bandOf(Float64Array.from(logs, Math.exp));
}

/** What the log has taught of each strain: its pace, yield and failures against the books. */
import { type Band, bandOf } from '../foundation/index.ts';
import type { StrainBelief } from '../learning/index.ts';
import type { Facts } from '../logbook/index.ts';
import { believe, cupHistories } from './evidence.ts';
import { householdModel } from './household-model.ts';
import type { Question } from './question.ts';

export interface Learned {
  strain: string;
  /** Cups that spoke. */
  cups: number;
  /** Factors against the books: 0.9 of pace is a tenth slower. */
  pace: Band;
  yields: Band;
  /** Chance that a cup fails before its time. */
  failure: { mean: number; p05: number; p95: number };
}

const beliefDraws = 1000;

/** One line for each strain that has or had cups. */
export function learned(facts: Facts, question: Question): Learned[] {
  const model = householdModel(facts, question.on, 1);
  const histories = cupHistories(model);
  const { byStrain } = believe(model, histories, question.seed, beliefDraws);
  return [...histories].flatMap(([strain, cups]) => {
    const belief = byStrain.get(strain);
    return belief && cups.length > 0 ? [ofStrain(strain, cups.length, belief)] : [];
  });
}

function ofStrain(strain: string, cups: number, { draws, failureChance }: StrainBelief): Learned {
  return { strain, cups, pace: factor(draws.logPace), yields: factor(draws.logYield), failure: failureChance };
}

function factor(logs: Float64Array): Band {
  return bandOf(Float64Array.from(logs, Math.exp));
}

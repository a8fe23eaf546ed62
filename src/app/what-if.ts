/**
 * The forecast of a household that is a little different from now on: warmer or colder places, or
 * hungrier animals. Whoever keeps it goes on by the plan's own policy.
 */
import type { Facts } from '../logbook/index.ts';
import { forecastSupply, type PolicyParameters } from '../planner/index.ts';
import type { ForecastAnswer } from './answers.ts';
import { withNeed } from './compare/changed-situation.ts';
import { forecastAnswer, usualWeeks } from './forecast.ts';
import { settled } from './kept-work.ts';
import { usualPlanWeeks } from './plan.ts';
import { type Situation, situation, warmerSituation } from './planning-problem.ts';
import type { Question } from './question.ts';

export interface Supposition {
  /** Every place, from today on. */
  warmerC: number;
  /** Flies that the animals want, 1 = as they do. */
  needFactor: number;
}

export interface Supposing {
  /** Works out a warmth before it is asked for. */
  prepare(warmerC: number): void;
  /** The more scenarios the surer, and the longer it takes. */
  forecast(supposition: Supposition, scenarios: number): ForecastAnswer;
}

/** What is dear is done once, so that every supposition after it is answered while a slider moves. */
export function supposing(facts: Facts, question: Question): Supposing {
  const { at: now, parameters } = settled(situation(facts, question, usualPlanWeeks), question);
  const byWarmth = new Map<number, Situation>();
  const warmed = (byC: number): Situation => {
    const known = byWarmth.get(byC);
    if (known) return known;
    const made = warmerSituation(now, byC, question.weeks ?? usualWeeks);
    byWarmth.set(byC, made);
    return made;
  };
  return {
    prepare: (warmerC) => void warmed(warmerC),
    forecast: ({ warmerC, needFactor }, scenarios) =>
      hungrier(warmed(warmerC), { ...question, scenarios }, needFactor, parameters),
  };
}

function hungrier(
  at: Situation,
  question: Question & { scenarios: number },
  needFactor: number,
  parameters: PolicyParameters,
): ForecastAnswer {
  const { scenarios } = question;
  const result = forecastSupply(withNeed(at.problem, needFactor), { scenarios, starts: 'policy', parameters });
  return forecastAnswer(question, result, at.model.today);
}

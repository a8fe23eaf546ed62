/** Flies wanted, emerging and on hand on each day ahead, with their bands and the chance of no shortfall. */
import { type Day, dayFromNumber } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { type ForecastOptions, forecastSupply, type ForecastResult, type StrainForecast } from '../planner/index.ts';
import type { ForecastAnswer } from './answers.ts';
import { settled } from './kept-work.ts';
import { usualPlanWeeks } from './plan.ts';
import { type Situation, situation } from './planning-problem.ts';
import type { Question } from './question.ts';

/** Weeks that a forecast shows. */
export const usualWeeks = 13;
const usualScenarios = 2000;

export interface ForecastQuestion extends Question {
  /** `nothing` shows what happens when no cup is started or bought any more. */
  starts?: 'policy' | 'nothing';
}

export function forecast(facts: Facts, question: ForecastQuestion): ForecastAnswer {
  const weeks = question.weeks ?? usualWeeks;
  // The plan's own horizon and policy: what is forecast is what the plan will do.
  const at = situation(facts, question, Math.max(weeks, usualPlanWeeks));
  const starts = question.starts ?? 'policy';
  const options = { scenarios: question.scenarios ?? usualScenarios, weeks, starts };
  const result = starts === 'policy' ? goesOn(at, question, options) : forecastSupply(at.problem, options);
  return forecastAnswer(question, result, at.model.today);
}

/** The plan's policy goes on deciding, and the cups that the plan carries elsewhere today are carried. */
function goesOn(asItStands: Situation, question: Question, options: ForecastOptions): ForecastResult {
  const { at, parameters } = settled(asItStands, question);
  return forecastSupply(at.problem, { ...options, parameters });
}

export function forecastAnswer(question: Question, result: ForecastResult, today: number): ForecastAnswer {
  return {
    on: question.on,
    seed: question.seed,
    scenarios: result.scenarios,
    days: Array.from({ length: result.days }, (_, t) => t).flatMap((t) =>
      result.strains.map((strain) => forecastDay(strain, t, dayFromNumber(today + t))),
    ),
    firstRiskyDay: result.firstRiskyDay < 0 ? null : dayFromNumber(today + result.firstRiskyDay),
    chanceOfNoShortfall: result.chanceOfNoShortfall,
    shortfallRunDays: result.shortfallRunDays,
    serviceLevelAsked: result.serviceLevelAsked,
    serviceStandardError: result.serviceStandardError,
  };
}

function forecastDay(strain: StrainForecast, t: number, date: Day): ForecastAnswer['days'][number] {
  const band = ({ p05, p50, p95 }: StrainForecast['onHandFlies']) => ({
    p05: Math.round(p05[t] as number),
    p50: Math.round(p50[t] as number),
    p95: Math.round(p95[t] as number),
  });
  return {
    date,
    strain: strain.strain,
    wantedFlies: strain.wantedFlies[t] as number,
    emergingFlies: band(strain.emergingFlies),
    onHandFlies: band(strain.onHandFlies),
    serviceLevel: strain.serviceLevel[t] as number,
    meanShortfallFlies: strain.meanShortfallFlies[t] as number,
  };
}

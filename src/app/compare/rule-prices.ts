/**
 * What each of the keeper's rules costs in a quarter: the plan without it against the plan with it, both
 * tuned anew several times with other random numbers, in the same worlds. What differs from one tuning to
 * the next is noise, and a price that does not stand clear of it is not told as one.
 */
import { type Said, said, saidTogether, told } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { PlanningProblem } from '../../planner/index.ts';
import { situation } from '../planning-problem.ts';
import type { Question } from '../question.ts';
import { wordsOf } from '../words/words.ts';
import { asItIs } from './change-title.ts';
import type { Difference, RulePricesAnswer } from './compare-answers.ts';
import { differenceOf, type JudgedPlan, judgedPlan, meanOf } from './judged-plan.ts';
import { keeperRules } from './keeper-rules.ts';
import { planColumn } from './plan-column.ts';
import { secondBest } from './second-best.ts';

/** Weeks for which a rule is priced: a quarter. */
const usualWeeks = 13;
const usualScenarios = 600;
const tunings = 4;
/** Standard errors beyond which a price is clear: 5 % of t with three degrees of freedom. */
const clearErrors = 3.2;

export function rulePrices(facts: Facts, question: Question): RulePricesAnswer {
  const weeks = question.weeks ?? usualWeeks;
  const at = situation(facts, question, weeks);
  const { weights } = at.problem;
  const { currency } = facts.household;
  const words = wordsOf(question);
  const judged = (problem: PlanningProblem, round: number) =>
    judgedPlan({ problem, purchases: 'any' }, weights, {
      scenarios: question.scenarios ?? usualScenarios,
      tune: { seed: at.problem.seed + 7919 * (round + 1), worlds: 120, finalWorlds: 400 },
    });
  const bases = Array.from({ length: tunings }, (_, round) => judged(at.problem, round));
  const rules = keeperRules(at).map(({ rule, without }) => {
    const pairs = bases.map((base, round) => saved(base, judged(without, round)));
    const cupsPerQuarter = perQuarter(
      pairs.map(({ cups }) => cups),
      weeks,
    );
    const costPerQuarter = perQuarter(
      pairs.map(({ cost }) => cost),
      weeks,
    );
    const clear = isClear(costPerQuarter);
    const verdict = saidTogether(said`${rule}`, clear ? priceSaid(cupsPerQuarter, costPerQuarter, currency) : noPrice);
    return { rule: told(rule, words), verdict: told(verdict, words), cupsPerQuarter, costPerQuarter, clear };
  });
  const base = bases[0] as JudgedPlan;
  const best = planColumn(question, at.model.today, base, { change: null, title: asItIs, base: null });
  return {
    on: question.on,
    seed: question.seed,
    weeks,
    currency,
    rules,
    best,
    secondBest: secondBest(at, question, base, (problem) => judged(problem, 0)),
  };
}

/** Cups and cost that the second plan saves, mean over worlds; exactly 0 where the rule never binds. */
function saved(base: JudgedPlan, other: JudgedPlan): { cups: number; cost: number } {
  return { cups: differenceOf(base.cups, other.cups).mean, cost: differenceOf(base.cost, other.cost).mean };
}

function perQuarter(differences: number[], weeks: number): Difference {
  const { mean, standardError } = meanOf(differences);
  return { mean: (mean * 13) / weeks, standardError: (standardError * 13) / weeks };
}

function isClear({ mean, standardError }: Difference): boolean {
  return mean > clearErrors * standardError && mean > 0;
}

const noPrice = said`costs nothing that stands clear of chance.`;

function priceSaid(cups: Difference, cost: Difference, currency: string): Said {
  const money = said`about ${rounded(cost.mean)} ± ${rounded(cost.standardError)} ${currency} a quarter`;
  if (!isClear(cups) || cups.mean < 0.5) return said`costs ${money}.`;
  return said`costs ${rounded(cups.mean)} ± ${rounded(cups.standardError)} cups, ${money}.`;
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}

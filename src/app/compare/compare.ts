/**
 * The plan as it is and with one change each, side by side: every household is planned for anew and judged
 * in the same simulated worlds, so that what differs is the change and not the luck.
 */
import { addDays, ok, type Result } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { settled } from '../kept-work.ts';
import { usualPlanWeeks } from '../plan.ts';
import { type Situation, situation } from '../planning-problem.ts';
import type { Question } from '../question.ts';
import type { Change } from './change.ts';
import { asItIs, changeTitle } from './change-title.ts';
import { type Changed, changedSituation, dearestCup } from './changed-situation.ts';
import type { CompareAnswer } from './compare-answers.ts';
import { judgedPlan } from './judged-plan.ts';
import { planColumn } from './plan-column.ts';

export interface CompareQuestion extends Question {
  /** The changes to look at; the usual ones when left out. */
  changes?: Change[];
}

export const usualCompareScenarios = 1000;

export function compare(facts: Facts, question: CompareQuestion): Result<CompareAnswer> {
  const weeks = question.weeks ?? usualPlanWeeks;
  const scenarios = question.scenarios ?? usualCompareScenarios;
  const { at, parameters } = settled(situation(facts, question, weeks), question);
  const asked: { change: Change; changed: Changed }[] = [];
  for (const change of question.changes ?? usualChanges(at, question)) {
    const changed = changedSituation(at, change);
    if (!changed.ok) return changed;
    asked.push({ change, changed: changed.value });
  }
  const { weights } = at.problem;
  const base = judgedPlan({ problem: at.problem, purchases: 'any' }, weights, { scenarios, parameters });
  const { today } = at.model;
  const columns = asked.map(({ change, changed }) =>
    planColumn(question, today, judgedPlan(changed, weights, { scenarios }), {
      change,
      title: changeTitle(facts, change),
      base,
    }),
  );
  const asIs = planColumn(question, today, base, { change: null, title: asItIs, base: null });
  const { currency } = facts.household;
  return ok({ on: question.on, seed: question.seed, scenarios, weeks, currency, columns: [asIs, ...columns] });
}

/** What keepers ask most: more mouths, another season, a holiday, a lost cup, a higher claim, no parcels. */
export function usualChanges(at: Situation, { on }: Question): Change[] {
  const cup = dearestCup(at);
  const { serviceLevel } = at.problem;
  return [
    { change: 'animals', factor: 1.25 },
    { change: 'warmer', byC: 2 },
    { change: 'warmer', byC: -2 },
    { change: 'away', from: addDays(on, 1), until: addDays(on, 8) },
    ...(cup ? [{ change: 'lost' as const, culture: cup }] : []),
    { change: 'cups', factor: 1.5 },
    { change: 'service', level: serviceLevel < 0.999 ? 0.999 : 0.95 },
    { change: 'purchases', mode: 'none' },
  ];
}

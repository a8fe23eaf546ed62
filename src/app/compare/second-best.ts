/** The best plan that differs materially from the best one: another rhythm of the week. */
import { dayFromNumber, type Said, said, type Weekday, weekdayOf, weekdaySaid } from '../../foundation/index.ts';
import type { PlanningProblem } from '../../planner/index.ts';
import type { Situation } from '../planning-problem.ts';
import type { Question } from '../question.ts';
import type { PlanColumn } from './compare-answers.ts';
import { type JudgedPlan, meanOf } from './judged-plan.ts';
import { planColumn } from './plan-column.ts';

/** A weekday belongs to a plan's rhythm when it has at least this share of its sessions. */
const rhythmShare = 0.15;

interface Rhythm {
  days: Weekday[];
  title: Said;
  problem: PlanningProblem;
}

/** Null for a household with one work weekday, which has one rhythm only. */
export function secondBest(
  at: Situation,
  question: Question,
  best: JudgedPlan,
  judged: (problem: PlanningProblem) => JudgedPlan,
): PlanColumn | null {
  const own = rhythmOf(at, best);
  const others = rhythms(at).filter(({ days }) => own.some((weekday) => !days.includes(weekday)));
  const plans = others.map((rhythm) => ({ rhythm, plan: judged(rhythm.problem) }));
  plans.sort((a, b) => Number(b.plan.result.holds) - Number(a.plan.result.holds) || costOf(a.plan) - costOf(b.plan));
  const second = plans[0];
  if (!second) return null;
  return planColumn(question, at.model.today, second.plan, {
    change: { change: 'weekdays', weekdays: second.rhythm.days },
    title: second.rhythm.title,
    base: best,
  });
}

function costOf(plan: JudgedPlan): number {
  return meanOf(plan.cost).mean;
}

/** Weekdays on which the plan mostly works. */
function rhythmOf(at: Situation, { result }: JudgedPlan): Weekday[] {
  const byWeekday = new Map<Weekday, number>();
  result.sessionByDay.forEach((chance, t) => {
    const weekday = weekdayOf(dayFromNumber(at.model.today + t));
    byWeekday.set(weekday, (byWeekday.get(weekday) ?? 0) + chance);
  });
  return [...byWeekday].filter(([, n]) => n >= rhythmShare * result.sessions && n > 0).map(([weekday]) => weekday);
}

/** Every single work weekday, and every set that leaves one out. */
function rhythms(at: Situation): Rhythm[] {
  const { workWeekdays } = at.model.facts.household;
  if (workWeekdays.length < 2) return [];
  const single = workWeekdays.map((weekday) => [weekday]);
  const allButOne = workWeekdays.map((left) => workWeekdays.filter((weekday) => weekday !== left));
  const sets = workWeekdays.length === 2 ? single : [...single, ...allButOne];
  return sets.map((days) => ({
    days,
    title: said`Work only on ${{ list: days.map((weekday) => weekdaySaid[weekday]) }}`,
    problem: { ...at.problem, workDays: onlyOn(at, days) },
  }));
}

function onlyOn(at: Situation, days: Weekday[]): Uint8Array {
  return at.problem.workDays.map((works, t) =>
    works && days.includes(weekdayOf(dayFromNumber(at.model.today + t))) ? 1 : 0,
  );
}

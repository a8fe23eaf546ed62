/**
 * What changed since an earlier day's plan, and why: the firm jobs that both plans speak of, job by job,
 * and what the log has taught or told since. Nothing is remembered: the earlier plan is made again from
 * the log as it stood then, so the answer is the same wherever it is asked.
 */
import { type Day, told } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { policyJobs } from '../../planner/index.ts';
import { settled } from '../kept-work.ts';
import { usualPlanWeeks } from '../plan.ts';
import { type Situation, situation } from '../planning-problem.ts';
import type { Question } from '../question.ts';
import { wordsOf } from '../words/words.ts';
import { changedJobs, firmDecisions } from './changed-jobs.ts';
import type { PlanChangesAnswer } from './plan-changes-answer.ts';
import { reasonsOfChange } from './reasons-of-change.ts';

/**
 * @param before what the log said by the evening of `since`.
 * @param now what it says now.
 */
export function planChanges(before: Facts, now: Facts, since: Day, question: Question): PlanChangesAnswer {
  const weeks = question.weeks ?? usualPlanWeeks;
  const then = planned(before, { ...question, on: since }, weeks);
  const today = planned(now, question, weeks);
  const jobs = changedJobs(then, today);
  const words = wordsOf(question);
  return {
    on: question.on,
    since,
    jobs: told(jobs, words),
    reasons: told(reasonsOfChange(then.at, today.at, since), words),
  };
}

function planned(
  facts: Facts,
  question: Question,
  weeks: number,
): { at: Situation; jobs: ReturnType<typeof firmDecisions> } {
  const { at, parameters } = settled(situation(facts, question, weeks), question);
  return { at, jobs: firmDecisions(at, policyJobs(at.problem, parameters)) };
}

/**
 * The day's jobs that follow from the log without learning or plan: who is fed how much, what is thrown out,
 * which parcels come. A screen shows them while the whole list, of which they are a part, is worked out.
 */
import { told } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { feedingNow } from './animals/feeding-now.ts';
import type { Job } from './answers.ts';
import { cupHistories } from './evidence.ts';
import { householdModel } from './household-model.ts';
import { discardJobs } from './jobs/discard-jobs.ts';
import { feedJobs } from './jobs/feed-jobs.ts';
import { receiveJobs } from './jobs/receive-jobs.ts';
import type { Question } from './question.ts';
import { wordsOf } from './words/words.ts';

/** In the order of `today`, with the same ids; feeding without the cups that give, which the plan names. */
export function jobsBeforePlan(facts: Facts, question: Question): Job[] {
  const { facts: fed } = feedingNow(facts, question.on);
  const model = householdModel(fed, question.on, 0);
  const fedFrom = new Set(fed.groups.flatMap(({ periods }) => periods.map(({ strain }) => strain)));
  const feeding = [...model.strains.keys()]
    .filter((strain) => fedFrom.has(strain))
    .flatMap((strain) => feedJobs(fed, strain, model.today, 0, null, new Map()))
    .filter(({ kind }) => kind === 'feed');
  const living = [...cupHistories(model).values()].flat().filter(({ end }) => end === null);
  const receiving = receiveJobs(fed, model.today).filter(({ date }) => date === question.on);
  return told([...feeding, ...receiving, ...discardJobs(living, model.today, 0)], wordsOf(question));
}

/** The jobs that need no plan, apart from the models that plan: fewer bytes stand before the first of them. */
import { jobsBeforePlan } from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { Asked } from './asked.ts';

export function firstJobs({ on, ...asked }: Asked, facts: Facts) {
  return jobsBeforePlan(facts, { ...asked, on: on as Day });
}

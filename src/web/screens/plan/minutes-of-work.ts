/** About how long a day's jobs take: common practice, no source; only their ratio is drawn. */
import type { Job } from '../../../app/index.ts';

const minutesEach: Record<Job['kind'], number> = {
  start: 6,
  feed: 3,
  look: 1,
  discard: 1,
  mix: 20,
  buy: 5,
  receive: 5,
  move: 1,
  stretch: 0,
  wash: 15,
  shop: 10,
};

/** Minutes; a job of several cups takes that many times as long. */
export function minutesOf(jobs: Job[]): number {
  return jobs.reduce((sum, job) => sum + minutesEach[job.kind] * (job.cups ?? job.cultures?.length ?? 1), 0);
}

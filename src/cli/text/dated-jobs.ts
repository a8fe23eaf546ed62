/** Jobs under their dates, each date written once. */
import { type Job, joinedJobs } from '../../app/index.ts';
import { shortDay } from './day-text.ts';
import { jobSentence, type LabelBook } from './job-text.ts';
import { wrapped } from './layout.ts';

/** One or two lines a job; looks and throwing out of one date are one line for all their cups. */
export function datedJobs(jobs: readonly Job[], labels: LabelBook): string[] {
  return underDates(joinedJobs(jobs), labels, () => []);
}

/** As `datedJobs`, each job apart and with its reason. */
export function datedJobsWithReasons(jobs: readonly Job[], labels: LabelBook): string[] {
  return underDates(jobs, labels, ({ why }) => wrapped(why, ' '.repeat(16)));
}

function underDates(jobs: readonly Job[], labels: LabelBook, below: (job: Job) => string[]): string[] {
  return jobs.flatMap((job, i) => {
    const date = job.date === jobs[i - 1]?.date ? ' '.repeat(10) : shortDay(job.date);
    return [...wrapped(jobSentence(job, labels), `  ${date}  `), ...below(job)];
  });
}

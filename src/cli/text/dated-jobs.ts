/** Jobs under their dates, each date written once. */
import type { Job } from '../../app/index.ts';
import { shortDay } from './day-text.ts';
import { jobSentence, type LabelBook } from './job-text.ts';
import { wrapped } from './layout.ts';

/** One or two lines a job; looks and throwing out of one date are one line for all their cups. */
export function datedJobs(jobs: readonly Job[], labels: LabelBook): string[] {
  return underDates(joined(jobs), labels, () => []);
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

function joined(jobs: readonly Job[]): Job[] {
  const result: Job[] = [];
  for (const job of jobs) {
    const same = result.find((other) => other.date === job.date && other.kind === job.kind);
    if (same && joinedKinds.includes(job.kind)) join(same, job);
    else result.push({ ...job });
  }
  return result;
}

const joinedKinds: Job['kind'][] = ['look', 'discard', 'mix'];

function join(into: Job, job: Job): void {
  into.cultures = [...(into.cultures ?? []), ...(job.cultures ?? [])];
  if (into.cups !== undefined) into.cups += job.cups ?? 0;
}

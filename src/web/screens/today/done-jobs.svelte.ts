/** Jobs ticked off on this device today: they stay on the list, struck through, until the day is over. */
import type { Job } from '../../../app/index.ts';

const kept = $state<{ on: string; jobs: Job[] }>({ on: '', jobs: [] });

export function doneJobs(on: string): Job[] {
  return kept.on === on ? kept.jobs : [];
}

export function markDone(on: string, job: Job): void {
  kept.jobs = kept.on === on ? [...kept.jobs.filter((each) => each.id !== job.id), job] : [job];
  kept.on = on;
}

export function markUndone(job: Job): void {
  kept.jobs = kept.jobs.filter((each) => each.id !== job.id);
}

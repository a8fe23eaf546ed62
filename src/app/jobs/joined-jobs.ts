/** Jobs of one day and kind as one: looks, throwing out and mixing are one walk along the shelf. */
import type { Job } from '../answers.ts';

const joinedKinds: readonly Job['kind'][] = ['look', 'discard', 'mix'];

/** In the order given, each joined job where its first stood; one for a group of animals stays apart. */
export function joinedJobs(jobs: readonly Job[]): Job[] {
  const result: Job[] = [];
  for (const job of jobs) {
    const same = result.find((other) => mayJoin(other, job));
    if (same) join(same, job);
    else result.push({ ...job });
  }
  return result;
}

function mayJoin(one: Job, other: Job): boolean {
  const sameWork = one.date === other.date && one.kind === other.kind && one.group === other.group;
  return sameWork && joinedKinds.includes(one.kind);
}

function join(into: Job, job: Job): void {
  into.cultures = [...(into.cultures ?? []), ...(job.cultures ?? [])];
  if (into.cups !== undefined) into.cups += job.cups ?? 0;
  if (!into.why.includes(job.why)) into.why = `${into.why} ${job.why}`;
}

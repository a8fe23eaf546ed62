/**
 * Step 2: one order for all, whatever order the entries arrived in: by day, time of day, time recorded
 * and id. What happened comes before when it was written down.
 */
import { compare, instantKey, type Reported } from './step-1-amendments.ts';

/** Sorts in place and returns the same array. */
export function inOrder(reports: Reported[]): Reported[] {
  return reports.sort(
    (a, b) =>
      compare(a.on, b.on) ||
      compare(a.time ?? '', b.time ?? '') ||
      compare(instantKey(a), instantKey(b)) ||
      compare(a.id, b.id),
  );
}

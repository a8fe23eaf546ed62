/**
 * Step 2: one order for all, whatever order the entries arrived in: by day, within a day beginnings
 * before and endings after the rest, then by time of day, time recorded and id.
 */
import { compare, instantKey, type Reported } from './step-1-amendments.ts';

const rankByKind: Partial<Record<Reported['kind'], number>> = { started: 1, bought: 1, ended: 3 };

/** Sorts in place and returns the same array. */
export function inOrder(reports: Reported[]): Reported[] {
  return reports.sort(byDay);
}

function byDay(a: Reported, b: Reported): number {
  return (
    compare(a.on, b.on) ||
    rank(a) - rank(b) ||
    compare(a.time ?? '', b.time ?? '') ||
    compare(instantKey(a), instantKey(b)) ||
    compare(a.id, b.id)
  );
}

function rank(report: Reported): number {
  return rankByKind[report.kind] ?? 2;
}

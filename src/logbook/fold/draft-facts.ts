/** What the steps of the fold hand on: the reports by kind, and a list to write problems on. */
import type { EntryKindName } from '../entries/entry.ts';
import { compare, type EntryProblem, type Reported } from './step-1-amendments.ts';

export type ReportOf<K extends Reported['kind']> = Extract<Reported, { kind: K }>;

/** The ordered reports, by kind. */
export class Reports {
  readonly problems: EntryProblem[] = [];
  private readonly byKind = new Map<EntryKindName, Reported[]>();

  constructor(ordered: readonly Reported[]) {
    for (const report of ordered) {
      const list = this.byKind.get(report.kind);
      if (list) list.push(report);
      else this.byKind.set(report.kind, [report]);
    }
  }

  of<K extends Reported['kind']>(kind: K): ReportOf<K>[] {
    return (this.byKind.get(kind) ?? []) as ReportOf<K>[];
  }

  problem(report: Reported, field: string, found: string, expected: string): void {
    this.problems.push({ entryId: report.id, where: `entry ${report.id}, ${field}`, found, expected });
  }
}

/** The values of a map, sorted by one of their texts. */
export function sortedBy<V>(values: Iterable<V>, text: (value: V) => string): V[] {
  return [...values].sort((a, b) => compare(text(a), text(b)));
}

/** The fields of `later` that are given, over those of `earlier`. */
export function overridden<T extends object>(earlier: T, later: { [F in keyof T]?: T[F] | undefined }): T {
  const result = { ...earlier };
  for (const field of Object.keys(earlier) as (keyof T)[]) {
    const value = later[field];
    if (value !== undefined) result[field] = value;
  }
  return result;
}

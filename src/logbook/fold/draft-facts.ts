/** What the steps of the fold hand on: the reports by kind, and a list to write problems on. */
import type { EntryKindName } from '../entries/entry.ts';
import type { UnknownKey } from './near-names.ts';
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

  problem(
    report: Reported,
    field: string,
    found: string,
    expected: string,
    more: Pick<EntryProblem, 'unknown'> = {},
  ): void {
    this.problems.push({ entryId: report.id, where: `entry ${report.id}, ${field}`, found, expected, ...more });
  }

  /** A key that names nothing. */
  unknown(report: Reported, field: string, key: string, of: UnknownKey['of']): void {
    const expected = field === 'fromCultures' ? 'keys of cultures' : `the key of a ${of}`;
    this.problem(report, field, `${key}, ${unknownKeys[of]}`, expected, { unknown: { of, key } });
  }
}

/** How a key is said that names nothing. */
const unknownKeys: Record<UnknownKey['of'], string> = {
  place: 'a place that no entry describes',
  strain: 'a strain that no entry describes',
  group: 'a group that no entry describes',
  culture: 'a culture that was never started or bought',
};

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

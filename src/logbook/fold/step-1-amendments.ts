/**
 * Step 1: corrections are applied. Of several amendments of one entry the one recorded last holds;
 * an amendment that is itself voided does nothing, and one that is replaced acts as its replacement.
 */
import type { Problem } from '../../foundation/index.ts';
import type { Replacement } from '../entries/amended.ts';
import { canonicalText } from '../entries/canonical-text.ts';
import type { Entry, EntryOf } from '../entries/entry.ts';
import type { UnknownKey } from './near-names.ts';

export type Amendment = EntryOf<'amended'>;
/** An entry that reports something: any kind but an amendment. */
export type Reported = Exclude<Entry, Amendment>;

export type EntryProblem = Problem & {
  entryId: string;
  /** Where it is a key that names nothing. */
  unknown?: UnknownKey;
};

/** The reports that hold after all corrections, in no particular order, and what did not fit. */
export function applyAmendments(entries: Iterable<Entry>): { reports: Reported[]; problems: EntryProblem[] } {
  const problems: EntryProblem[] = [];
  const byId = withoutRepeats(entries, problems);
  const byTarget = new Map<string, Amendment[]>();
  for (const entry of byId.values()) if (entry.kind === 'amended') push(byTarget, entry.amends, entry);
  if (byTarget.size === 0) return { reports: [...byId.values()] as Reported[], problems };
  for (const list of byTarget.values()) list.sort(recordedFirst);
  const winner = winners(byId, byTarget, problems);
  const reports = [...byId.values()].flatMap((e) => (e.kind === 'amended' ? [] : afterCorrection(e, winner(e.id))));
  return { reports, problems };
}

function withoutRepeats(entries: Iterable<Entry>, problems: EntryProblem[]): Map<string, Entry> {
  const byId = new Map<string, Entry>();
  for (const entry of entries) {
    const other = byId.get(entry.id);
    if (other === undefined) byId.set(entry.id, entry);
    else if (other !== entry) keepOne(byId, other, entry, problems);
  }
  return byId;
}

/** Two contents under one id: which one stays must not depend on which came first. */
function keepOne(byId: Map<string, Entry>, a: Entry, b: Entry, problems: EntryProblem[]): void {
  const [textA, textB] = [canonicalText(a), canonicalText(b)];
  if (textA === textB) return;
  byId.set(a.id, textA < textB ? a : b);
  if (problems.some((p) => p.entryId === a.id)) return;
  problems.push({
    entryId: a.id,
    where: `entry ${a.id}`,
    found: 'two entries with the same id and different content',
    expected: 'an id of its own for each entry',
  });
}

type Outcome = { void: true } | { replacement: Replacement } | null;

/** For an entry's id, the amendment that holds for it, as it acts after its own corrections. */
function winners(byId: Map<string, Entry>, byTarget: Map<string, Amendment[]>, problems: EntryProblem[]) {
  const outcomes = new Map<string, Outcome>();
  const winner = (id: string): Outcome => {
    const amendments = byTarget.get(id) ?? [];
    for (let i = amendments.length - 1; i >= 0; i--) {
      const outcome = outcomes.get((amendments[i] as Amendment).id);
      if (outcome) return outcome;
    }
    return null;
  };
  const fromTheRoot = reachable(byId, byTarget, problems);
  for (let i = fromTheRoot.length - 1; i >= 0; i--) {
    const amendment = fromTheRoot[i] as Amendment;
    const correction = winner(amendment.id);
    outcomes.set(amendment.id, correction === null ? ownOutcome(amendment) : 'void' in correction ? null : correction);
  }
  return winner;
}

function ownOutcome(a: Amendment): Outcome {
  return a.replacement ? { replacement: a.replacement } : { void: true };
}

/** Amendments that lead to a report, each after the one that it amends. */
function reachable(
  byId: Map<string, Entry>,
  byTarget: Map<string, Amendment[]>,
  problems: EntryProblem[],
): Amendment[] {
  const found: Amendment[] = [];
  for (const [target, amendments] of byTarget) {
    const root = byId.get(target);
    if (root !== undefined && root.kind !== 'amended') found.push(...amendments);
    if (root === undefined)
      problems.push(...amendments.map((a) => unknownTarget(a, 'an entry that is not in the logbook')));
  }
  for (let i = 0; i < found.length; i++) found.push(...(byTarget.get((found[i] as Amendment).id) ?? []));
  return found;
}

function unknownTarget(a: Amendment, found: string): EntryProblem {
  return {
    entryId: a.id,
    where: `entry ${a.id}, amends`,
    found: `${a.amends}, ${found}`,
    expected: 'the id of an entry in this logbook',
  };
}

function afterCorrection(entry: Reported, outcome: Outcome): Reported[] {
  if (outcome === null) return [entry];
  if ('void' in outcome) return [];
  const { id, recordedAt, by, on, time, note } = entry;
  return [{ time, note, ...outcome.replacement, on: outcome.replacement.on ?? on, id, recordedAt, by } as Reported];
}

function recordedFirst(a: Amendment, b: Amendment): number {
  return compare(instantKey(a), instantKey(b)) || compare(a.id, b.id);
}

/** Instants may be written with and without fractions of a second: `:07Z` sorts after `:07.5Z` as text. */
export function instantKey(e: { recordedAt: string }): string {
  const bare = e.recordedAt.slice(0, -1);
  return bare.length === 19 ? `${bare}.` : bare.replace(/0+$/, '');
}

export function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

/** Entries as they stand after the keeper's corrections: what a correction begins with. */
import type { Entry, EntryOf } from '../../logbook/index.ts';

export type Amendment = EntryOf<'amended'>;

/** How an entry stands, for its line in the logbook. */
export type Standing = 'holds' | 'struck' | 'corrected';

/** By entry id; of several amendments of one entry the latest that was not itself taken back counts. */
export function standings(entries: readonly Entry[]): Map<string, Standing> {
  const byTarget = amendmentsByTarget(entries);
  return new Map(entries.map(({ id }) => [id, standingOf(lastAmendment(byTarget, id))]));
}

/** The report that an entry or an amendment of it speaks of, with its latest correction put in. */
export function standingEntry(entries: readonly Entry[], id: string): Entry | null {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const byTarget = amendmentsByTarget(entries);
  let root = byId.get(id);
  while (root?.kind === 'amended') root = byId.get(root.amends);
  if (!root) return null;
  const replacement = lastAmendment(byTarget, root.id)?.replacement;
  if (!replacement) return root;
  const { on, recordedAt, by, note } = root;
  return { ...(note && { note }), ...replacement, on: replacement.on ?? on, id: root.id, recordedAt, by } as Entry;
}

function amendmentsByTarget(entries: readonly Entry[]): Map<string, Amendment[]> {
  const byTarget = new Map<string, Amendment[]>();
  for (const entry of entries) {
    if (entry.kind !== 'amended') continue;
    byTarget.set(entry.amends, [...(byTarget.get(entry.amends) ?? []), entry]);
  }
  return byTarget;
}

function lastAmendment(byTarget: ReadonlyMap<string, Amendment[]>, id: string): Amendment | null {
  const standing = (byTarget.get(id) ?? []).filter((each) => !lastAmendment(byTarget, each.id)?.void);
  return standing.sort((a, b) => (a.recordedAt + a.id < b.recordedAt + b.id ? -1 : 1)).at(-1) ?? null;
}

function standingOf(amendment: Amendment | null): Standing {
  if (!amendment) return 'holds';
  return amendment.void ? 'struck' : 'corrected';
}

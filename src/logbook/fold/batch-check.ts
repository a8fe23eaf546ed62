/** What a door refuses: entries that contradict the logbook or each other. */
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';
import { foldUntold, type UntoldFacts } from './fold.ts';
import { toldProblems } from './near-names.ts';
import type { EntryProblem } from './step-1-amendments.ts';

/** A problem of a batch, in its place there. */
export type BatchProblem = Omit<EntryProblem, 'entryId'>;

/**
 * The batch, if the logbook can take all of it; else every problem that it would bring: a culture
 * harvested before it was started or after it ended, started twice, unknown keys, an amendment of
 * nothing, an id that another entry has. A batch is written whole or not at all.
 * `where` names the place of the batch's entry at `index`, such as `log.jsonl, line 7`.
 */
export function checkBatch(
  batch: readonly Entry[],
  existing: Iterable<Entry>,
  where?: WhereOfEntry,
): Result<readonly Entry[]> {
  const { problems, facts } = contradictions(batch, existing, where);
  return problems.length === 0 ? ok(batch) : failed(...toldProblems(problems, facts));
}

export type WhereOfEntry = (entry: Entry, index: number) => string;

/** Problems that the batch would bring, each with its place, and the facts that there would be with it. */
export function contradictions(
  batch: readonly Entry[],
  existing: Iterable<Entry>,
  where: WhereOfEntry = (entry) => `entry ${entry.id}`,
): { problems: BatchProblem[]; facts: UntoldFacts } {
  const before = [...existing];
  const facts = foldUntold([...before, ...batch]);
  if (facts.problems.length === 0) return { problems: [], facts };
  const known = new Set(foldUntold(before).problems.map(identity));
  const fresh = firstCauses(facts.problems.filter((p) => !known.has(identity(p))));
  const indexById = new Map(batch.map((entry, index) => [entry.id, index]));
  return { problems: fresh.map((p) => placed(p, batch, indexById, where)), facts };
}

/** A taken id makes other entries look wrong too: it alone is named. */
function firstCauses(problems: EntryProblem[]): EntryProblem[] {
  const takenIds = problems.filter((p) => p.where === `entry ${p.entryId}`);
  return takenIds.length > 0 ? takenIds : problems;
}

function identity(p: EntryProblem): string {
  return `${p.where}\n${p.found}`;
}

function placed(
  p: EntryProblem,
  batch: readonly Entry[],
  indexById: ReadonlyMap<string, number>,
  where: WhereOfEntry,
): BatchProblem {
  const { entryId, ...problem } = p;
  const index = indexById.get(entryId);
  if (index === undefined) {
    return { ...problem, found: `${p.found} (an entry already in the logbook, contradicted by this)` };
  }
  const place = where(batch[index] as Entry, index);
  return { ...problem, where: p.where.replace(`entry ${entryId}`, () => place) };
}

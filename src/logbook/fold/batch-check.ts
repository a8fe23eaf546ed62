/** What a door refuses: entries that contradict the logbook or each other. */
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';
import { fold } from './fold.ts';
import type { EntryProblem } from './step-1-amendments.ts';

/**
 * The batch, if the logbook can take all of it; else every problem that it would bring: a culture
 * harvested before it was started or after it ended, started twice, unknown keys, an amendment of
 * nothing, an id that another entry has. A batch is written whole or not at all.
 * `where` names the place of the batch's entry at `index`, such as `log.jsonl, line 7`.
 */
export function checkBatch(
  batch: readonly Entry[],
  existing: Iterable<Entry>,
  where: (entry: Entry, index: number) => string = (entry) => `entry ${entry.id}`,
): Result<readonly Entry[]> {
  const before = [...existing];
  const after = fold([...before, ...batch]).problems;
  if (after.length === 0) return ok(batch);
  const known = new Set(fold(before).problems.map(identity));
  const fresh = firstCauses(after.filter((p) => !known.has(identity(p))));
  if (fresh.length === 0) return ok(batch);
  const indexById = new Map(batch.map((entry, index) => [entry.id, index]));
  return failed(...fresh.map((p) => placed(p, batch, indexById, where)));
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
  where: (entry: Entry, index: number) => string,
): Problem {
  const { found, expected } = p;
  const index = indexById.get(p.entryId);
  if (index === undefined) {
    return { where: p.where, found: `${found} (an entry already in the logbook, contradicted by this)`, expected };
  }
  const place = where(batch[index] as Entry, index);
  return { where: p.where.replace(`entry ${p.entryId}`, () => place), found, expected };
}

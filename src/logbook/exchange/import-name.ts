/**
 * An import is one act: its name signs every one of its entries, so that all of them can be found again and
 * taken back together.
 */
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Entry } from '../entries/entry.ts';

const mark = 'import of ';
const mostFileName = 40;

/** @param at the moment of the import, an ISO instant. */
export function importName(file: string, at: string): string {
  return `${mark}${file.slice(0, mostFileName)} ${at}`;
}

export interface ImportAct {
  name: string;
  entries: number;
  /** How many of them were corrected or taken back since. */
  amended: number;
}

/** The imports that the logbook has, oldest first. */
export function importActs(existing: readonly Entry[]): ImportAct[] {
  const amended = amendedIds(existing);
  const acts = new Map<string, ImportAct>();
  for (const { id, by } of existing) {
    if (!by.startsWith(mark)) continue;
    const act = acts.get(by) ?? { name: by, entries: 0, amended: 0 };
    acts.set(by, { ...act, entries: act.entries + 1, amended: act.amended + (amended.has(id) ? 1 : 0) });
  }
  return [...acts.values()];
}

/** The ids of an import's entries that nothing has amended yet. */
export function idsOfImport(name: string, existing: readonly Entry[], where: string): Result<string[]> {
  const amended = amendedIds(existing);
  const ids = existing.filter(({ id, by }) => by === name && by.startsWith(mark) && !amended.has(id)).map((e) => e.id);
  if (ids.length > 0) return ok(ids);
  const names = importActs(existing).map((act) => act.name);
  const expected = names.length > 0 ? `one of: ${names.join('; ')}` : 'the name of an import; there was none';
  return failed({ where, found: `"${name.slice(0, 100)}", which has nothing to undo`, expected });
}

function amendedIds(existing: readonly Entry[]): Set<string> {
  return new Set(existing.flatMap((entry) => (entry.kind === 'amended' ? [entry.amends] : [])));
}

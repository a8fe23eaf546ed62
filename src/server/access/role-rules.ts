/** What each role may write: a keeper everything, a helper the day's work, a reader nothing. */
import type { Problem } from '../../foundation/index.ts';
import type { Entry } from '../../logbook/index.ts';
import type { Store } from '../../store/store.ts';
import type { Caller } from './caller.ts';

/** Kinds that say how the household is set up. */
const settings = new Set(['household', 'place', 'strain', 'container', 'recipe', 'group']);

/** Why this caller may not write the entry, or null when they may. */
export async function roleProblem({ role }: Caller, entry: Entry, store: Store): Promise<Problem | null> {
  if (role === 'keeper') return null;
  const where = `entry ${entry.id}`;
  if (role === 'reader') return { where, found: 'an entry by a reader', expected: 'a keeper or helper to record it' };
  if (!(await touchesSettings(entry, store))) return null;
  return { where, found: `a change of the household's settings by a helper`, expected: 'a keeper to make it' };
}

/** An amendment changes settings too, by what it amends and by what it puts in its place. */
async function touchesSettings(entry: Entry, store: Store): Promise<boolean> {
  const passed = new Set<string>();
  for (let at: Entry = entry; ; ) {
    if (at.kind !== 'amended') return settings.has(at.kind);
    if (at.replacement !== undefined && settings.has(at.replacement.kind)) return true;
    passed.add(at.id);
    const amended = await store.entry(at.amends);
    // What comes later may be anything, and amendments in a circle amend nothing.
    if (amended === null || passed.has(amended.id)) return true;
    at = amended;
  }
}

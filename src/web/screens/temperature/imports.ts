/** Imports of logger files: each has a name that its entries carry, so that one act takes it back. */
import type { Entry } from '../../../logbook/index.ts';

export interface Import {
  by: string;
  file: string;
  /** The day it was brought in. */
  on: string;
  entries: Entry[];
}

/** As the command line names its own, so that either door can take back what the other brought. */
export function importName(file: string, now: string): string {
  return `import of ${file.slice(0, 40)} ${now}`;
}

/** Imports of temperatures of which anything still stands, the newest first. */
export function importsOf(entries: readonly Entry[]): Import[] {
  const voided = new Set(entries.flatMap((each) => (each.kind === 'amended' && each.void ? [each.amends] : [])));
  const byName = new Map<string, Entry[]>();
  for (const entry of entries) {
    if (!entry.by.startsWith('import of ') || voided.has(entry.id)) continue;
    const all = byName.get(entry.by);
    if (all) all.push(entry);
    else byName.set(entry.by, [entry]);
  }
  return [...byName]
    .filter(([, all]) => all.some((entry) => entry.kind === 'temperature'))
    .map(([by, all]) => ({ by, ...partsOf(by), entries: all }))
    .toReversed();
}

function partsOf(by: string): { file: string; on: string } {
  const [, file, on] = /^import of (.*) (\d{4}-\d\d-\d\d)\S*$/.exec(by) ?? [];
  return { file: file ?? by, on: on ?? '' };
}

/** Writing checked entries into the household, and saying what was written. */
import { ok, type Result } from '../foundation/index.ts';
import { type Entry, entrySentence } from '../logbook/index.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { allEntries, householdExists, withStore } from './household.ts';
import { readLogbookFile } from './logbook-file.ts';
import type { Options } from './options.ts';
import { entryMaker } from './shell.ts';
import { counted } from './text/layout.ts';
import { printJson, printLines } from './text/print.ts';

/** The household's entries; none when there is no household yet, and none is made. */
export async function existingEntries(options: Options): Promise<Entry[]> {
  return householdExists(options) ? withStore(options, allEntries) : [];
}

/** Records a file's entries, all or none. Everything is checked before the store is opened for writing. */
export async function recordFile(path: string, options: Options): Promise<Result<ExitStatus>> {
  const entries = await readLogbookFile(path, entryMaker(options.by), await existingEntries(options));
  return entries.ok ? recordEntries(entries.value, options) : entries;
}

/** Records entries that were checked. */
export async function recordEntries(entries: readonly Entry[], options: Options): Promise<Result<ExitStatus>> {
  const report = await withStore(options, (store) => store.append(entries));
  if (!report.ok) return report;
  const { added, alreadyThere } = report.value;
  if (options.json) printJson({ added, alreadyThere, ids: entries.map(({ id }) => id) });
  else printLines(reportLines(entries, added, alreadyThere));
  return ok(exitStatus.done);
}

function reportLines(entries: readonly Entry[], added: number, alreadyThere: number): string[] {
  const only = entries.length === 1 ? entries[0] : undefined;
  if (only && added === 1) return [`Recorded for ${only.on}: ${entrySentence(only)}`];
  const there = alreadyThere > 0 ? ` ${counted(alreadyThere, 'entry was', 'entries were')} there already.` : '';
  return [`Recorded ${counted(added, 'entry', 'entries')}.${there}`];
}

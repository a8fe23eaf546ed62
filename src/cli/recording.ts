/** Writing checked entries into the household, and saying what was written. */
import { given } from './given-options.ts';
import { failed, ok, problemText, type Result } from '../foundation/index.ts';
import { entryInWords } from '../app/index.ts';
import { checkStream, type Entry, type EntryDraft } from '../logbook/index.ts';
import type { Store } from '../store/store.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { allEntries, householdExists, withStore } from './household.ts';
import type { Options } from './options.ts';
import { entryMaker } from './shell.ts';
import { type Spool, spooled } from './spool.ts';
import { counted } from './text/layout.ts';
import { printJson, printLines } from './text/print.ts';

/** The household's entries; none when there is no household yet, and none is made. */
export async function existingEntries(options: Options): Promise<Entry[]> {
  return householdExists(options) ? withStore(options, allEntries) : [];
}

/** Ids that a report lists at most. */
const mostIds = 10_000;

/**
 * Records a file's entries, all or none, of any number. Everything is checked before the store is opened for
 * writing, and neither the file nor the logbook is held in memory. Two people may end one cup at the same moment,
 * and their logbook keeps both: one that comes whole, with all its ids, into an empty household is taken as it is.
 */
export async function recordFile(
  path: string,
  options: Options,
  contradictions: 'refused' | 'kept in a logbook that comes whole' = 'refused',
): Promise<Result<ExitStatus>> {
  let isWhole = contradictions !== 'refused';
  const maker = entryMaker(options.by);
  const complete = (draft: EntryDraft) => {
    isWhole = false;
    return maker(draft);
  };
  const read = await spooled(path, complete, mostIds);
  if (!read.ok) return read;
  const spool = read.value;
  try {
    const checked = await checkSpool(spool, options);
    isWhole &&= !checked.ok && (await isEmpty(options));
    if (!checked.ok && !isWhole) return checked;
    const report = await withStore(options, (store) => store.appendStream(spool.pieces()));
    if (!report.ok) return failed(...(await Promise.all(report.problems.map((each) => spool.placed(each)))));
    const { added, alreadyThere } = report.value;
    const only = spool.count === 1 ? await firstOf(spool) : undefined;
    if (options.json) printJson({ added, alreadyThere, ...(spool.count <= mostIds && { ids: spool.ids }) });
    else printLines(reportLines(only, added, alreadyThere, options));
    if (checked.ok) return ok(exitStatus.done);
    for (const problem of checked.problems) console.error(`Kept as it was written: ${problemText(problem)}`);
    return ok(exitStatus.warning);
  } finally {
    spool.remove();
  }
}

/** A household that is yet to be made, or has no entry. */
async function isEmpty(options: Options): Promise<boolean> {
  return !householdExists(options) || withStore(options, async (store) => (await store.count()) === 0);
}

async function checkSpool(spool: Spool, options: Options): Promise<Result<null>> {
  if (!householdExists(options)) return checkStream(() => spool.entries(), nothing);
  return withStore(options, (store) =>
    checkStream(
      () => spool.entries(),
      () => keptEntries(store),
    ),
  );
}

async function* nothing(): AsyncGenerator<Entry> {}

async function* keptEntries(store: Store): AsyncGenerator<Entry> {
  for await (const { entry } of store.entries()) yield entry;
}

async function firstOf(spool: Spool): Promise<Entry | undefined> {
  for await (const { entry } of spool.entries()) return entry;
  return undefined;
}

/** Records entries that were checked. */
export async function recordEntries(entries: readonly Entry[], options: Options): Promise<Result<ExitStatus>> {
  const report = await withStore(options, (store) => store.append(entries));
  if (!report.ok) return report;
  const { added, alreadyThere } = report.value;
  if (options.json) printJson({ added, alreadyThere, ids: entries.map(({ id }) => id) });
  else printLines(reportLines(entries.length === 1 ? entries[0] : undefined, added, alreadyThere, options));
  return ok(exitStatus.done);
}

/** @param only the entry, when there was one alone. */
function reportLines(
  only: Entry | undefined,
  added: number,
  alreadyThere: number,
  { language, degrees }: Options,
): string[] {
  if (only && added === 1) return [`Recorded for ${only.on}: ${entryInWords(only, given({ language, degrees }))}`];
  const there = alreadyThere > 0 ? ` ${counted(alreadyThere, 'entry was', 'entries were')} there already.` : '';
  return [`Recorded ${counted(added, 'entry', 'entries')}.${there}`];
}

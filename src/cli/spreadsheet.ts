/** A keeper's own spreadsheet: shown as it would be read, then written on demand, undone as one act. */
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { failed, ok, type Result, nearestName } from '../foundation/index.ts';
import {
  checkBatch,
  type Entry,
  fold,
  idsOfImport,
  importName,
  previewSheet,
  proposeMatching,
  readSheet,
  type Sheet,
  type SheetField,
  sheetFields,
  type SheetMatching,
  undoDrafts,
} from '../logbook/index.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { fileFault } from './file-fault.ts';
import type { Options } from './options.ts';
import { existingEntries, recordEntries } from './recording.ts';
import { entryMaker, now, todayIn } from './shell.ts';
import { printLines } from './text/print.ts';
import { previewText } from './text/sheet-preview-text.ts';

/** Shows what the sheet would be read as; writes it with `--yes`. */
export async function importSheet(file: string, options: Options): Promise<Result<ExitStatus>> {
  const sheet = await sheetOf(file);
  if (!sheet.ok) return sheet;
  const existing = await existingEntries(options);
  const matching = matchingOf(sheet.value, existing, options);
  if (!matching.ok) return matching;
  const preview = previewSheet(sheet.value, matching.value);
  const name = importName(basename(file), now());
  const entries = preview.drafts.map(({ draft }) => entryMaker(name)(draft));
  const checked = checkBatch(entries, existing, (_, i) => `${file}, line ${preview.drafts[i]?.line}`);
  // A line that cannot be read leaves others without their cup: what it cannot say is said first.
  const problems = preview.problems.length > 0 || checked.ok ? preview.problems : checked.problems;
  if (!options.yes) printLines(previewText(sheet.value, matching.value, preview, options.language));
  if (problems.length > 0) return failed(...problems);
  return options.yes ? write(entries, name, options) : ok(exitStatus.done);
}

async function write(entries: Entry[], name: string, options: Options): Promise<Result<ExitStatus>> {
  const written = await recordEntries(entries, options);
  if (written.ok && !options.json) printLines([`To take it back: flylarder import --undo "${name}"`]);
  return written;
}

/** Voids every entry of an import; the logbook keeps both. */
export async function undoImport(name: string, options: Options): Promise<Result<ExitStatus>> {
  const existing = await existingEntries(options);
  const ids = idsOfImport(name, existing, '--undo');
  if (!ids.ok) return ids;
  const on = todayIn(fold(existing).household.timeZone);
  const entries = undoDrafts(ids.value, on).map(entryMaker(options.by));
  const checked = checkBatch(entries, existing);
  return checked.ok ? recordEntries(entries, options) : checked;
}

async function sheetOf(file: string): Promise<Result<Sheet>> {
  try {
    return readSheet(await readFile(file, 'utf8'), file);
  } catch (error) {
    return failed({ where: file, found: fileFault(error), expected: 'a CSV file that can be read' });
  }
}

function matchingOf(sheet: Sheet, existing: Entry[], options: Options): Result<SheetMatching> {
  const proposed = proposeMatching(sheet);
  const fields = [...proposed.fields];
  for (const pair of (options.match ?? '').split(',').filter((part) => part.trim() !== '')) {
    const matched = matchColumn(pair, sheet, fields);
    if (!matched.ok) return matched;
  }
  return ok({
    ...proposed,
    fields,
    dateOrder: options['date-order'] ?? proposed.dateOrder,
    strain: options.strain ?? proposed.strain,
    knownPlaces: fold(existing).places,
  });
}

/** `Made=startedOn`: that column means that field; `Made=` leaves the column out. */
function matchColumn(pair: string, sheet: Sheet, fields: (SheetField | null)[]): Result<null> {
  const at = pair.lastIndexOf('=');
  const [heading, field] = [pair.slice(0, at).trim(), pair.slice(at + 1).trim()];
  const column = sheet.headings.indexOf(heading);
  if (at < 0 || column < 0) {
    return failed({
      where: '--match',
      found: `"${pair}"`,
      expected: `COLUMN=FIELD, a column of ${sheet.headings.join(', ')}`,
    });
  }
  if (field !== '' && !Object.hasOwn(sheetFields, field)) {
    const names = Object.keys(sheetFields);
    return failed({
      where: '--match',
      found: `the field "${field}"`,
      expected: nearestName(field, names) ?? `one of ${names.join(', ')}`,
    });
  }
  const before = fields.indexOf(field as SheetField);
  if (before >= 0) fields[before] = null;
  fields[column] = field === '' ? null : (field as SheetField);
  return ok(null);
}

/** A logger's file on disk: guessed from its beginning, shown, and written on demand. */
import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { basename } from 'node:path';
import {
  type LoggerCorrection,
  loggerImport,
  type LoggerPlan,
  loggerPlan,
  LoggerReader,
  type LoggerReport,
  loggerSampleChars,
} from '../app/index.ts';
import { type Day, failed, ok, type Result } from '../foundation/index.ts';
import { checkBatch, type Facts, fold, importName } from '../logbook/index.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { fileFault } from './file-fault.ts';
import type { Options } from './options.ts';
import { existingEntries, recordEntries } from './recording.ts';
import { entryMaker, now, todayIn } from './shell.ts';
import { loggerText } from './text/logger-text.ts';
import { printJson, printLines } from './text/print.ts';

/** Shows what the file would be read as; writes its days, and how they were matched, with `--yes`. */
export async function importLoggerFile(file: string, options: Options): Promise<Result<ExitStatus>> {
  const existing = await existingEntries(options);
  const facts = fold(existing);
  const on = options.on ?? todayIn(facts.household.timeZone);
  const read = await readLoggerFile(file, facts, on, options);
  if (!read.ok) return read;
  const { plan, report } = read.value;
  const days = loggerImport(report, plan.place, facts);
  if (!days.ok) return days;
  const name = importName(basename(file), now());
  const drafts =
    plan.remember && days.value.drafts.length > 0 ? [plan.remember, ...days.value.drafts] : days.value.drafts;
  const entries = drafts.map(entryMaker(name));
  const checked = checkBatch(entries, existing, () => file);
  if (!checked.ok) return checked;
  if (!options.yes) {
    if (options.json) printJson({ ...plan, report, ...days.value });
    else printLines(loggerText({ plan, report, ...days.value }));
    return ok(exitStatus.done);
  }
  const written = await recordEntries(entries, options);
  if (written.ok && !options.json && entries.length > 0)
    printLines([`To take it back: flylarder import --undo "${name}"`]);
  return written;
}

async function readLoggerFile(
  file: string,
  facts: Facts,
  on: Day,
  options: Options,
): Promise<Result<{ plan: LoggerPlan; report: LoggerReport }>> {
  try {
    const correction = correctionOf(options);
    if (!correction.ok) return correction;
    const plan = loggerPlan(await beginning(file), file, facts, { ...correction.value, place: options.place }, on);
    if (!plan.ok) return plan;
    const reader = LoggerReader.of(plan.value.form, file, facts.household.timeZone);
    if (!reader.ok) return reader;
    for await (const piece of createReadStream(file, { encoding: 'utf8' })) reader.value.push(piece as string);
    const report = reader.value.end();
    return report.ok ? ok({ plan: plan.value, report: report.value }) : report;
  } catch (error) {
    return failed({ where: file, found: fileFault(error), expected: 'a table of times and degrees that can be read' });
  }
}

async function beginning(file: string): Promise<string> {
  const handle = await open(file);
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(loggerSampleChars), 0, loggerSampleChars, 0);
    const text = buffer.toString('utf8', 0, bytesRead);
    // The last line may be cut in two.
    return bytesRead < loggerSampleChars ? text : text.slice(0, text.lastIndexOf('\n') + 1);
  } finally {
    await handle.close();
  }
}

const matchFields = ['time', 'clock', 'temperature'] as const;

/** `Zeit=time,Temp innen=temperature` and the other options. */
function correctionOf(options: Options): Result<LoggerCorrection> {
  const correction: LoggerCorrection = {};
  for (const pair of (options.match ?? '').split(',').filter((part) => part.trim() !== '')) {
    const at = pair.lastIndexOf('=');
    const field = matchFields.find((one) => one === pair.slice(at + 1).trim());
    if (at < 0 || !field) {
      return failed({
        where: '--match',
        found: `"${pair}"`,
        expected: `COLUMN=FIELD, a field of ${matchFields.join(', ')}`,
      });
    }
    correction[field] = pair.slice(0, at).trim();
  }
  if (options['date-order'] !== undefined) correction.timeOrder = options['date-order'];
  if (options.unit !== undefined) correction.unit = options.unit;
  if (options.zone !== undefined) correction.timeZone = options.zone;
  return ok(correction);
}

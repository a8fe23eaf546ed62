/** A logger's file on disk: guessed from its beginning, shown, and written on demand. */
import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { basename } from 'node:path';
import {
  correctedForm,
  guessLoggerForm,
  type LoggerCorrection,
  type LoggerForm,
  type LoggerGuess,
  loggerImport,
  LoggerReader,
  type LoggerReport,
  placeAsked,
} from '../app/index.ts';
import { failed, ok, type Result } from '../foundation/index.ts';
import { checkBatch, fold } from '../logbook/index.ts';
import { type ExitStatus, exitStatus } from './exit-status.ts';
import { fileFault } from './file-fault.ts';
import type { Options } from './options.ts';
import { existingEntries, recordEntries } from './recording.ts';
import { entryMaker, now } from './shell.ts';
import { loggerText } from './text/logger-text.ts';
import { printJson, printLines } from './text/print.ts';

const sampleBytes = 256 * 1024;

/** Shows what the file would be read as; writes its days with `--yes`. */
export async function importLoggerFile(file: string, options: Options): Promise<Result<ExitStatus>> {
  const existing = await existingEntries(options);
  const facts = fold(existing);
  const place = placeAsked(facts, options.place);
  if (!place.ok) return place;
  const { timeZone } = facts.household;
  const read = await readLoggerFile(file, timeZone, options);
  if (!read.ok) return read;
  const { guess, form, report } = read.value;
  const days = loggerImport(report, place.value, facts);
  if (!days.ok) return days;
  const name = `import of ${basename(file).slice(0, 40)} ${now()}`;
  const entries = days.value.drafts.map(entryMaker(name));
  const checked = checkBatch(entries, existing, () => file);
  if (!checked.ok) return checked;
  if (!options.yes) {
    if (options.json) printJson({ place: place.value, ...guess, form, report, ...days.value });
    else printLines(loggerText({ place: place.value, guess, form, report, ...days.value }));
    return ok(exitStatus.done);
  }
  const written = await recordEntries(entries, options);
  if (written.ok && !options.json && entries.length > 0)
    printLines([`To take it back: flylarder import --undo "${name}"`]);
  return written;
}

interface LoggerFile {
  guess: LoggerGuess;
  form: LoggerForm;
  report: LoggerReport;
}

async function readLoggerFile(file: string, timeZone: string, options: Options): Promise<Result<LoggerFile>> {
  try {
    const guess = guessLoggerForm(await beginning(file), file, timeZone);
    if (!guess.ok) return guess;
    const correction = correctionOf(options);
    if (!correction.ok) return correction;
    const form = correctedForm(guess.value, correction.value);
    if (!form.ok) return form;
    const reader = LoggerReader.of(form.value, file, timeZone);
    if (!reader.ok) return reader;
    for await (const piece of createReadStream(file, { encoding: 'utf8' })) reader.value.push(piece as string);
    const report = reader.value.end();
    return report.ok ? ok({ guess: guess.value, form: form.value, report: report.value }) : report;
  } catch (error) {
    return failed({ where: file, found: fileFault(error), expected: 'a table of times and degrees that can be read' });
  }
}

async function beginning(file: string): Promise<string> {
  const handle = await open(file);
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(sampleBytes), 0, sampleBytes, 0);
    const text = buffer.toString('utf8', 0, bytesRead);
    // The last line may be cut in two.
    return bytesRead < sampleBytes ? text : text.slice(0, text.lastIndexOf('\n') + 1);
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

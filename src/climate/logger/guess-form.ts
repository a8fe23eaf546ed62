/** Guesses how a logger's file is to be read from its first lines, and says what it is not sure of. */
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { degreesIn } from './degrees-text.ts';
import { guessTemperature, type TemperatureGuess } from './guess-temperature.ts';
import { guessTime, momentOf, type TimeGuess } from './guess-time.ts';
import type { LoggerColumn, LoggerDoubt, LoggerForm, LoggerGuess } from './logger-form.ts';
import { cellsOf, type Delimiter, delimiters } from './logger-line.ts';

const sampleLines = 400;

interface Attempt {
  delimiter: Delimiter;
  rows: string[][];
  time: TimeGuess | null;
  temperature: TemperatureGuess | null;
  headerLines: number;
  headings: string[];
}

/**
 * @param sample the file's beginning; a few hundred lines are enough.
 * @param timeZone the household's, which a logger's clock is taken to show unless it writes an offset.
 */
export function guessLoggerForm(sample: string, file: string, timeZone: string): Result<LoggerGuess> {
  const lines = sample
    .replace(/^\ufeff/, '')
    .split(/\r\n|\n|\r/)
    .slice(0, sampleLines);
  if (lines.every((line) => line.trim() === '')) return failed(nothing(file, 'an empty file'));
  if (lines.some((line) => line.includes('\0'))) return failed(nothing(file, 'a file that is not text'));
  const attempts = delimiters.map((delimiter) => attempt(lines, delimiter));
  const good = attempts.find((one) => one.time && one.temperature);
  if (good) return ok(guessOf(good, timeZone));
  return failed(whatIsMissing(lines, attempts, file));
}

/** Reads the sample's later part, where readings surely are, then looks for where they begin. */
function attempt(lines: string[], delimiter: Delimiter): Attempt {
  const rows = lines.map((line) => cellsOf(line, delimiter));
  const filled = rows.filter((_, i) => (lines[i] as string).trim() !== '');
  const body = filled.slice(filled.length > 1 ? Math.min(Math.ceil(filled.length / 3), filled.length - 1) : 0);
  const width = Math.max(0, ...body.map((cells) => cells.length));
  const time = width > 1 ? guessTime(body, width) : null;
  if (!time) return { delimiter, rows, time, temperature: null, headerLines: 0, headings: [] };
  const from = rows.findIndex(
    (cells) =>
      momentOf(
        time.timeColumns.map((c) => cells[c] ?? ''),
        time.timeOrder,
      ) !== null,
  );
  const headerLines = Math.max(0, from);
  const headings = headingsOf(rows, headerLines, width);
  const temperature = guessTemperature(headings, body, width, time.timeColumns, delimiter);
  return { delimiter, rows, time, temperature, headerLines, headings };
}

/** The last line above the readings that is as wide as they are. */
function headingsOf(rows: string[][], headerLines: number, width: number): string[] {
  const above = rows
    .slice(0, headerLines)
    .findLast((cells) => cells.length >= Math.min(2, width) && cells.some(Boolean));
  return Array.from({ length: width }, (_, i) => above?.[i] || `column ${i + 1}`);
}

function guessOf(
  { delimiter, rows, time, temperature, headerLines, headings }: Attempt,
  timeZone: string,
): LoggerGuess {
  const { timeColumns, timeOrder } = time as TimeGuess;
  const { column, unit, decimalComma } = temperature as TemperatureGuess;
  const form: LoggerForm = {
    delimiter,
    headerLines,
    timeColumns,
    timeOrder,
    temperatureColumn: column,
    decimalComma,
    unit,
    timeZone,
  };
  const columns = headings.map((heading, i) => columnOf(form, temperature as TemperatureGuess, heading, i, rows));
  return { form, columns, doubts: doubtsOf(time as TimeGuess, temperature as TemperatureGuess, columns) };
}

function columnOf(
  form: LoggerForm,
  { numbers, others }: TemperatureGuess,
  heading: string,
  i: number,
  rows: string[][],
): LoggerColumn {
  const holds = form.timeColumns.includes(i)
    ? 'time'
    : i === form.temperatureColumn || others.includes(i)
      ? 'temperature'
      : numbers.includes(i)
        ? 'number'
        : 'text';
  return { heading, firstCell: rows[form.headerLines]?.[i] ?? '', holds };
}

function doubtsOf(time: TimeGuess, temperature: TemperatureGuess, columns: LoggerColumn[]): LoggerDoubt[] {
  const doubts: LoggerDoubt[] = [];
  if (time.equallyGood.length > 0) {
    doubts.push({
      about: 'timeOrder',
      chosen: time.timeOrder,
      choices: [time.timeOrder, ...time.equallyGood],
      why: 'no day in the first lines is later than the 12th, so day and month cannot be told apart',
    });
  }
  if (temperature.others.length > 0) {
    const named = (column: number) => columns[column]?.heading ?? '';
    doubts.push({
      about: 'temperatureColumn',
      chosen: named(temperature.column),
      choices: [temperature.column, ...temperature.others].map(named),
      why: 'more than one column could be the temperature',
    });
  }
  if (temperature.unitGuessed) {
    doubts.push({
      about: 'unit',
      chosen: temperature.unit,
      choices: ['F', 'C', 'K'],
      why: 'no unit is written, and the numbers are too high for a room in Celsius',
    });
  }
  return doubts;
}

function nothing(where: string, found: string): Problem {
  return { where, found, expected: 'a table with a column of times and a column of degrees' };
}

function whatIsMissing(lines: string[], attempts: Attempt[], file: string): Problem {
  const dated = attempts.find((one) => one.time);
  const line = lines.length - 1 - lines.toReversed().findIndex((text) => text.trim() !== '');
  const where = `${file}, line ${line + 1}`;
  const excerpt = `"${(lines[line] ?? '').slice(0, 60)}"`;
  if (dated?.time) {
    const cells = dated.rows[line] ?? [];
    const words = cells.find((cell, i) => !dated.time?.timeColumns.includes(i) && degreesIn(cell, true) === null);
    const found =
      words === undefined ? `a time and no degrees in ${excerpt}` : `"${words.slice(0, 40)}" beside the time`;
    return { where, found, expected: 'degrees such as 22.5 or 22,5 in a column beside the time' };
  }
  return {
    where,
    found: `no time in ${excerpt}`,
    expected: 'a time and degrees on each line, such as 2026-11-25 14:00;22,5',
  };
}

/**
 * Reads a logger's file piece by piece under a confirmed form and gives the days in it. A line that
 * cannot be read is counted under what is wrong with it and left out; the others are kept.
 */
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import { cleanedSeries } from './cleaned-series.ts';
import { type DailyReading, dailyReadings, leastHours } from './daily-readings.ts';
import { degreesIn, toCelsius } from './degrees-text.ts';
import { momentOf } from './guess-time.ts';
import type { LoggerForm } from './logger-form.ts';
import { cellAt } from './logger-line.ts';
import { ZoneClock } from './zone-clock.ts';

/** What was left out for one reason, with its first example. */
export interface LeftOut extends Problem {
  reason: LeftOutReason;
  lines: number;
  /** The file's line with the first of them; 1 is its first. */
  firstLine: number;
}

export const leftOutReasons = ['time', 'gap', 'degrees', 'room', 'most'] as const;
export type LeftOutReason = (typeof leftOutReasons)[number];

/** Readings that a room never had, and days that were too thin, by what was wrong with them. */
export interface SetAside {
  duplicates: number;
  spikes: number;
  stuck: number;
  thinDays: number;
  /** Not left out, but at a time that the clocks jumped over. */
  jumpedOver: number;
}

export interface LoggerReport {
  days: DailyReading[];
  /** Lines with something on them, after the header. */
  lines: number;
  /** Readings that the days are made of. */
  readings: number;
  leftOut: LeftOut[];
  setAside: SetAside;
  /** What a keeper should know of the file, as sentences. */
  notes: string[];
}

/** What a room with flies can have, and the logbook takes, C. */
export const coldestC = -20;
export const warmestC = 60;
const mostReadings = 20_000_000;

const expectedTime = 'a time such as on the lines before it';
const expectedDegrees = 'degrees such as 22.5 or 22,5';
const expectedRoom = `degrees of a room, ${coldestC} to ${warmestC} C; sensors say 85 or -127 when something is wrong`;

export class LoggerReader {
  private readonly form: LoggerForm;
  private readonly file: string;
  private readonly household: ZoneClock;
  private readonly logger: ZoneClock;
  private timesMs = new Float64Array(1024);
  private valuesC = new Float64Array(1024);
  private kept = 0;
  private line = 0;
  private filled = 0;
  private rest = '';
  private jumpedOver = 0;
  private readonly leftOut = new Map<LeftOutReason, LeftOut>();

  private constructor(form: LoggerForm, file: string, household: ZoneClock, logger: ZoneClock) {
    this.form = form;
    this.file = file;
    this.household = household;
    this.logger = logger;
  }

  /** @param timeZone the household's, whose calendar days the readings are put under. */
  static of(form: LoggerForm, file: string, timeZone: string): Result<LoggerReader> {
    const household = ZoneClock.of(timeZone);
    const logger = ZoneClock.of(form.timeZone, 'timeZone of the file');
    if (!household.ok) return household;
    return logger.ok ? ok(new LoggerReader(form, file, household.value, logger.value)) : logger;
  }

  /** The next piece of the file's text, cut anywhere. */
  push(piece: string): void {
    const text = this.rest + piece;
    let from = 0;
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      this.readLine(text.slice(from, text.charCodeAt(end - 1) === 13 && end > from ? end - 1 : end));
      from = end + 1;
    }
    this.rest = text.slice(from);
  }

  end(): Result<LoggerReport> {
    if (this.rest !== '') this.readLine(this.rest);
    this.rest = '';
    if (this.kept === 0) return failed(...this.nothingKept());
    const cleaned = cleanedSeries({
      timesMs: this.timesMs.subarray(0, this.kept),
      valuesC: this.valuesC.subarray(0, this.kept),
    });
    const { days, thinDays } = dailyReadings(cleaned, this.household, [...cleaned.spikesMs, ...cleaned.stuckMs]);
    const notes = [
      ...cleaningNotes(cleaned),
      thinDays.length > 0 &&
        `${thinDays.length} days with readings in fewer than ${leastHours} hours were left out (${thinDays[0]} first).`,
      this.jumpedOver > 0 &&
        `${this.jumpedOver} times fall into an hour that the clocks of ${this.form.timeZone} jumped over: this logger's clock was not put forward. If it stays on winter time all year, give its offset, such as +01:00.`,
    ].filter((note) => note !== false);
    const readings = cleaned.timesMs.length;
    const setAside = {
      duplicates: cleaned.duplicates,
      spikes: cleaned.spikesMs.length,
      stuck: cleaned.stuckMs.length,
      thinDays: thinDays.length,
      jumpedOver: this.jumpedOver,
    };
    return ok({ days, lines: this.filled, readings, leftOut: [...this.leftOut.values()], setAside, notes });
  }

  private readLine(line: string): void {
    this.line += 1;
    if (this.line <= this.form.headerLines || line.trim() === '') return;
    this.filled += 1;
    const { delimiter, timeColumns, timeOrder, temperatureColumn, decimalComma, unit } = this.form;
    const cells = timeColumns.map((column) => cellAt(line, delimiter, column));
    const moment = momentOf(cells, timeOrder);
    if (!moment) return this.leave('time', `"${cells.join(' ').slice(0, 40)}" as time`, expectedTime);
    const cell = cellAt(line, delimiter, temperatureColumn);
    const degrees = degreesIn(cell ?? '', decimalComma);
    if (cell === null || cell === '') return this.leave('gap', 'no degrees', expectedDegrees);
    if (degrees === null) return this.leave('degrees', `"${cell.slice(0, 40)}" as degrees`, expectedDegrees);
    const celsius = toCelsius(degrees, unit);
    if (!(celsius >= coldestC && celsius <= warmestC)) {
      return this.leave('room', `${cell.slice(0, 40)} ${unit}`, expectedRoom);
    }
    this.keep(moment.wallMs, moment.offsetMs, celsius);
  }

  private keep(wallMs: number, offsetMs: number | null, celsius: number): void {
    if (this.kept >= mostReadings) {
      return this.leave('most', 'one reading more', `at most ${mostReadings} readings in a file: cut it in two`);
    }
    if (this.kept === this.timesMs.length) this.grow();
    this.timesMs[this.kept] = offsetMs === null ? this.instantOf(wallMs) : wallMs - offsetMs;
    this.valuesC[this.kept] = celsius;
    this.kept += 1;
  }

  private instantOf(wallMs: number): number {
    const before = this.kept > 0 ? (this.timesMs[this.kept - 1] as number) : Number.NEGATIVE_INFINITY;
    const { instantMs, jumpedOver } = this.logger.instantOf(wallMs, before);
    if (jumpedOver) this.jumpedOver += 1;
    return instantMs;
  }

  private grow(): void {
    const [times, values] = [this.timesMs, this.valuesC];
    this.timesMs = new Float64Array(2 * times.length);
    this.valuesC = new Float64Array(2 * values.length);
    this.timesMs.set(times);
    this.valuesC.set(values);
  }

  private leave(reason: LeftOutReason, found: string, expected: string): void {
    const known = this.leftOut.get(reason);
    if (known) known.lines += 1;
    else {
      const where = `${this.file}, line ${this.line}`;
      this.leftOut.set(reason, { reason, where, found, expected, lines: 1, firstLine: this.line });
    }
  }

  private nothingKept(): Problem[] {
    if (this.leftOut.size > 0)
      return [...this.leftOut.values()].map(({ where, found, expected }) => ({ where, found, expected }));
    return [{ where: this.file, found: 'no reading', expected: 'a time and degrees on each line' }];
  }
}

function cleaningNotes(cleaned: ReturnType<typeof cleanedSeries>): (string | false)[] {
  const { duplicates, spikesMs, stuckMs } = cleaned;
  const readings = (n: number) => (n === 1 ? '1 reading' : `${n} readings`);
  return [
    duplicates > 0 && `Left out, at a moment that was there already: ${readings(duplicates)}.`,
    spikesMs.length > 0 && `Left out as spikes, far off those around them: ${readings(spikesMs.length)}.`,
    stuckMs.length > 0 && `Left out, the same digits for more than a day and a half: ${readings(stuckMs.length)}.`,
  ];
}

/** All of a text at once. */
export function readLogger(text: string, form: LoggerForm, file: string, timeZone: string): Result<LoggerReport> {
  const reader = LoggerReader.of(form, file, timeZone);
  if (!reader.ok) return reader;
  reader.value.push(text.replace(/^\ufeff/, ''));
  return reader.value.end();
}

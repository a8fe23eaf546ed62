/** A logger's file as entries of the logbook: its days under one place, those already there passed over. */
import { type LoggerForm, type LoggerGuess, type LoggerReport, type TimeOrder } from '../../climate/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { EntryDraft, Facts } from '../../logbook/index.ts';

/** What the keeper corrects of a guess; columns by heading, or by number from 1. */
export interface LoggerCorrection {
  time?: string;
  clock?: string;
  temperature?: string;
  timeOrder?: TimeOrder;
  unit?: LoggerForm['unit'];
  timeZone?: string;
}

export interface LoggerImport {
  drafts: EntryDraft[];
  /** Days whose reading the logbook has already. */
  alreadyThere: number;
}

/** The guessed form with the keeper's corrections in place. */
export function correctedForm({ form, columns }: LoggerGuess, correction: LoggerCorrection): Result<LoggerForm> {
  const corrected = { ...form };
  const headings = columns.map(({ heading }) => heading);
  const column = (name: string, where: string): Result<number> => {
    const byHeading = headings.indexOf(name);
    const at = byHeading >= 0 ? byHeading : /^\d+$/.test(name) ? Number(name) - 1 : -1;
    if (at >= 0 && at < headings.length) return ok(at);
    return failed({
      where,
      found: `"${name.slice(0, 60)}"`,
      expected: `a column: ${headings.join(', ')}, or its number`,
    });
  };
  if (correction.temperature !== undefined) {
    const at = column(correction.temperature, 'temperature');
    if (!at.ok) return at;
    corrected.temperatureColumn = at.value;
  }
  if (correction.time !== undefined || correction.clock !== undefined) {
    const times: number[] = [];
    const [first, second] = form.timeColumns.map((i) => headings[i] as string);
    const named =
      correction.time === undefined ? [first, correction.clock] : [correction.time, correction.clock ?? second];
    for (const name of named.filter((one) => one !== undefined)) {
      const at = column(name, 'time');
      if (!at.ok) return at;
      if (!times.includes(at.value)) times.push(at.value);
    }
    corrected.timeColumns = times;
  }
  return ok({
    ...corrected,
    timeOrder: correction.timeOrder ?? corrected.timeOrder,
    unit: correction.unit ?? corrected.unit,
    timeZone: correction.timeZone ?? corrected.timeZone,
  });
}

/** One `temperature` entry a day. The place must be one that the facts know. */
export function loggerImport(report: LoggerReport, place: string, facts: Facts): Result<LoggerImport> {
  const known = facts.places.find((one) => one.place === place);
  if (!known) {
    const expected = `one of ${facts.places.map((one) => one.place).join(', ')}, or a new one by \`record place\``;
    return failed({ where: 'place', found: `"${place.slice(0, 60)}"`, expected });
  }
  const before = new Map(known.readings.map((reading) => [reading.on, reading]));
  const isThere = (day: LoggerReport['days'][number]) => {
    const reading = before.get(day.on);
    return reading?.meanC === day.meanC && reading.minC === day.minC && reading.maxC === day.maxC;
  };
  const fresh = report.days.filter((day) => !isThere(day));
  const drafts = fresh.map(
    ({ on, meanC, minC, maxC, leftOut }) =>
      ({
        kind: 'temperature',
        on,
        place,
        meanC,
        ...(minC === null ? {} : { minC, maxC }),
        ...(leftOut > 0 ? { note: leftOutNote(leftOut) } : {}),
      }) as EntryDraft,
  );
  return ok({ drafts, alreadyThere: report.days.length - fresh.length });
}

function leftOutNote(readings: number): string {
  return `${readings} ${readings === 1 ? 'reading' : 'readings'} left out: spikes, or a sensor that was stuck`;
}

/** The place when only one is there and none was named. */
export function placeAsked(facts: Facts, place: string | undefined): Result<string> {
  if (place !== undefined) return ok(place);
  const only = facts.places.length === 1 ? facts.places[0] : undefined;
  if (only) return ok(only.place);
  return failed({
    where: 'place',
    found: 'nothing',
    expected: `the place that was measured: ${facts.places.map((one) => one.place).join(', ')}`,
  });
}

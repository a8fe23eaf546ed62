/**
 * A logger's file before it is read: guessed from its beginning, with what the keeper says now and what was
 * said of the last file with the same headings. What is settled so is not asked about again.
 */
import { guessLoggerForm, type LoggerDoubt, type LoggerForm, type LoggerGuess } from '../../climate/index.ts';
import { type Day, mix32, ok, type Result } from '../../foundation/index.ts';
import type { EntryDraft, Facts, LoggerFacts } from '../../logbook/index.ts';
import { correctedForm, type LoggerCorrection, placeAsked } from './logger-import.ts';

/** So many characters of a file's beginning are enough for the guess. */
export const loggerSampleChars = 256 * 1024;

export interface LoggerPlan extends LoggerGuess {
  place: string;
  /** True when a file with these headings was matched before. */
  known: boolean;
  /** What to remember of this matching; null when nothing of it is new. */
  remember: EntryDraft | null;
}

/** @param given what the keeper says of this file; it overrides what was remembered. */
export function loggerPlan(
  sample: string,
  file: string,
  facts: Facts,
  given: LoggerCorrection & { place?: string | undefined },
  on: Day,
): Result<LoggerPlan> {
  const { timeZone } = facts.household;
  const guess = guessLoggerForm(sample, file, timeZone);
  if (!guess.ok) return guess;
  const headings = guess.value.columns.map(({ heading }) => heading.slice(0, 200));
  const known = facts.loggers.find((one) => one.logger === loggerKey(headings));
  const { place: named, ...correction } = given;
  const place = placeAsked(facts, named ?? placeOf(known, facts));
  if (!place.ok) return place;
  const said = { ...rememberedCorrection(known, guess.value.doubts), ...definedOf(correction) };
  const form = correctedForm(guess.value, said);
  if (!form.ok) return form;
  return ok({
    ...guess.value,
    form: form.value,
    doubts: guess.value.doubts.filter((doubt) => said[fieldOf[doubt.about]] === undefined),
    place: place.value,
    known: known !== undefined,
    remember: news(matchingOf(headings, form.value, place.value, timeZone), known, on),
  });
}

const fieldOf = { timeOrder: 'timeOrder', temperatureColumn: 'temperature', unit: 'unit' } as const;

/** Files with the same headings, in the same order, are of one logger. */
export function loggerKey(headings: readonly string[]): string {
  let [a, b] = [headings.length, 1];
  for (const char of headings.join('\n')) {
    a = mix32(a, char.codePointAt(0) as number);
    b = mix32(b, a);
  }
  return `logger-${hex(a)}${hex(b)}`;
}

function hex(word: number): string {
  return (word >>> 0).toString(16).padStart(8, '0');
}

function placeOf(known: LoggerFacts | undefined, facts: Facts): string | undefined {
  return facts.places.some(({ place }) => place === known?.place) ? (known?.place ?? undefined) : undefined;
}

/** The order of the date is the file's own matter wherever it settles it. */
function rememberedCorrection(known: LoggerFacts | undefined, doubts: readonly LoggerDoubt[]): LoggerCorrection {
  if (!known) return {};
  const { time, clock, temperature, unit, timeZone } = known;
  const timeOrder = doubts.some(({ about }) => about === 'timeOrder') ? known.timeOrder : null;
  return definedOf({ time, clock, temperature, timeOrder, unit, timeZone });
}

function definedOf(
  fields: { [F in keyof LoggerCorrection]: LoggerCorrection[F] | null | undefined },
): LoggerCorrection {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null && value !== undefined));
}

type Matching = Omit<LoggerFacts, 'logger'>;

function matchingOf(headings: string[], form: LoggerForm, place: string, timeZone: string): Matching {
  const named = (column: number | undefined) => {
    if (column === undefined) return null;
    const heading = headings[column] as string;
    // Of two columns with one heading only the number tells which.
    return headings.indexOf(heading) === headings.lastIndexOf(heading) ? heading : String(column + 1);
  };
  return {
    headings,
    place,
    time: named(form.timeColumns[0]),
    clock: named(form.timeColumns[1]),
    temperature: named(form.temperatureColumn),
    timeOrder: form.timeOrder,
    unit: form.unit,
    timeZone: form.timeZone === timeZone ? null : form.timeZone,
  };
}

function news(matching: Matching, known: LoggerFacts | undefined, on: Day): EntryDraft | null {
  const fields = Object.entries(matching).filter(([, value]) => value !== null);
  const isOld = known && Object.entries(matching).every(([name, value]) => same(value, known[name as keyof Matching]));
  if (isOld) return null;
  return { kind: 'logger', on, logger: loggerKey(matching.headings), ...Object.fromEntries(fields) } as EntryDraft;
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

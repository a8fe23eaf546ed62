/**
 * Checks of single fields, used by every kind of entry. Each carries one sentence of what would be
 * right, and its limits refuse only what no keeper can mean.
 */
import { z } from 'zod';
import { parseDay, weekdays } from '../../foundation/index.ts';
import type { Day } from '../../foundation/index.ts';

// Control characters and lone halves of surrogate pairs cannot be kept byte for byte everywhere.
const oneLine = /^[^\p{Cc}\p{Cs}]*$/u;
const severalLines = /^(?:[^\p{Cc}\p{Cs}]|[\n\t])*$/u;
const keyPattern = /^[\p{L}\p{N}][\p{L}\p{N}._-]{0,63}$/u;

/** A whole number from `least` to `most`. */
export function whole(least: number, most: number) {
  const error = `a whole number from ${least} to ${most}`;
  return z.int({ error }).min(least, { error }).max(most, { error });
}

/** A number from `least` to `most`, both allowed. */
export function between(least: number, most: number) {
  const error = `a number from ${least} to ${most}`;
  return z.number({ error }).min(least, { error }).max(most, { error });
}

/** One line of text, 1 to `most` characters, not blank. */
export function line(most: number) {
  const error = `one line of text, 1 to ${most} characters, without control characters`;
  return z.string({ error }).min(1, { error }).max(most, { error }).regex(oneLine, { error }).regex(/\S/, { error });
}

/** Text of several lines, 1 to `most` characters. */
export function longText(most: number) {
  const error = `text of 1 to ${most} characters, without control characters`;
  return z.string({ error }).min(1, { error }).max(most, { error }).regex(severalLines, { error });
}

/** One of some words. */
export function word<const W extends readonly [string, ...string[]]>(words: W) {
  return z.enum(words, { error: `one of ${words.join(', ')}` });
}

/** A list of at most `most` items without repeats. */
export function listOf<T extends z.ZodType>(item: T, most: number) {
  return z
    .array(item, { error: `a list of at most ${most}` })
    .max(most, { error: `a list of at most ${most}` })
    .refine((items) => new Set(items.map((i) => JSON.stringify(i))).size === items.length, {
      error: 'a list in which nothing stands twice',
    });
}

/** The keeper's own short name of a cup, place, strain and so on. */
export const key = z.string({ error: 'a key' }).regex(keyPattern, {
  error: 'a key: 1 to 64 letters, digits, dots, dashes or underscores, beginning with a letter or digit',
});

const dayError = 'a real calendar day such as 2026-11-25, from 1990 to 2200';
export const isoDay = z
  .custom<Day>((value) => typeof value === 'string' && parseDay(value).ok, { error: dayError })
  .meta({ type: 'string', format: 'date', description: 'Calendar day, ISO 8601' });

const timeError = 'a time of day such as 18:30';
export const timeOfDay = z.string({ error: timeError }).regex(/^([01]\d|2[0-3]):[0-5]\d$/, { error: timeError });

const instantError = 'an instant in UTC such as 2026-11-25T18:30:00.000Z';
export const instant = z.iso.datetime({ error: instantError }).max(30, { error: instantError });

const idError = 'a UUID of version 7 in small letters';
export const entryId = z
  .string({ error: idError })
  .regex(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/, { error: idError });

export const yesNo = z.boolean({ error: 'true or false' });
export const temperatureC = between(-20, 60);
export const flyCount = whole(0, 1_000_000);
export const founderCount = whole(1, 5000);
export const mediumMassG = between(1, 100_000);
export const surfaceCm2 = between(1, 100_000);
export const weekdayList = listOf(word(weekdays), 7);
export const name = line(120);
export const cultureList = listOf(key, 200);
/** Which supplement on how many feedings a week. */
export const dustingSchedule = z.array(z.strictObject({ supplement: name, timesPerWeek: whole(1, 14) })).max(20);

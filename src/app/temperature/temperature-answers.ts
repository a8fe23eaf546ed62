/** The shapes of what is answered about temperature. */
import { z } from 'zod';
import { dayBand, isoDay } from '../answers.ts';

const celsius = z.number();
const bandC = { p05C: celsius, p50C: celsius, p95C: celsius };
const reading = z.object({ on: isoDay, meanC: celsius, minC: celsius.nullable(), maxC: celsius.nullable() });

export const placeTemperatureAnswer = z.object({
  place: z.string(),
  name: z.string(),
  latest: reading.nullable(),
  readings: z.int(),
  limitsC: z.object({ low: celsius, high: celsius }),
  /** True until the keeper sets limits. */
  limitsAreUsual: z.boolean(),
  /** Cup minus room as it is reckoned with, C. */
  cupOffsetC: celsius,
  /** The keeper's own number, and what it and pairs of readings in and beside cups come to. */
  cupOffset: z.object({ keeperC: celsius, meanC: celsius, sdC: z.number().min(0), pairs: z.int() }),
  /** The room's daily mean in the last four weeks; where nobody read it, as likely, 5 to 95 %. */
  past: z.array(
    z.object({
      date: isoDay,
      read: z.boolean(),
      minC: celsius.nullable(),
      maxC: celsius.nullable(),
      ...bandC,
      usualC: celsius,
    }),
  ),
  /** The room's daily mean in the coming fortnight, 5 to 95 %; `usualC` is the season's alone. */
  ahead: z.array(z.object({ date: isoDay, ...bandC, usualC: celsius })),
  /** What was expected a week before each reading, from the readings of then, and what came. */
  hindcast: z.object({
    leadDays: z.int(),
    days: z.array(z.object({ date: isoDay, expectedC: celsius, cameC: celsius, within90: z.boolean() })),
    /** Came less expected, mean and root of the mean square, C; null without days. */
    meanErrorC: celsius.nullable(),
    rmsErrorC: celsius.nullable(),
    within90Share: z.number().min(0).max(1).nullable(),
  }),
  alarms: z.array(
    z.object({
      date: isoDay,
      kind: z.enum(['warm', 'cold']),
      /** In the cups, C. */
      cupsC: celsius,
      limitC: celsius,
      /** Near this males turn sterile. */
      sterile: z.boolean(),
      frost: z.boolean(),
      /** All of it in a sentence, with what to do. */
      text: z.string(),
    }),
  ),
});

export const cultureClock = z.object({
  id: z.string(),
  label: z.string(),
  strain: z.string(),
  place: z.string().nullable(),
  ageDays: z.int(),
  /** Share of the way from egg to adult of what was laid on the first day; 1 when done. */
  developmentShare: z.number().min(0).max(1),
  /** Degree-days above the strain's lower threshold since the start, day C. */
  degreeDays: z.number().min(0),
  /** The same from the start to the expected first flies, day C. */
  degreeDaysNeeded: z.number().min(0),
  thresholdC: celsius,
  /** True when flies were seen or taken. */
  fliesHaveCome: z.boolean(),
  /** Expected day of the first flies. */
  firstAdults: isoDay,
  firstAdultsBand: dayBand,
  /** Days that the last week's readings have moved it by, positive = later. */
  shiftDays: z.number(),
  /** Days of the week that were cool or warm, and the week's mean against what was expected, C; null for a small shift. */
  shiftCause: z.object({ kind: z.enum(['cool', 'warm']), days: z.int(), meanOffC: celsius }).nullable(),
  /** That in a sentence, or null when it is less than half a day. */
  shift: z.string().nullable(),
});

export const temperatureAnswer = z.object({
  on: isoDay,
  places: z.array(placeTemperatureAnswer),
  cultures: z.array(cultureClock),
});

export const temperatureWhatIfAnswer = z.object({
  on: isoDay,
  cultures: z.array(
    z.object({
      id: z.string(),
      label: z.string(),
      firstAdults: z.object({ asIs: isoDay, changed: isoDay }),
      peak: z.object({ asIs: isoDay, changed: isoDay }),
      spent: z.object({ asIs: isoDay, changed: isoDay }),
      firstAdultsLaterDays: z.number(),
      /** What of its life is next, and by how many days it comes later (below 0 earlier), 5 to 95 %. */
      next: z.enum(['firstAdults', 'peak', 'spent']),
      nextLaterDays: z.object({ p05: z.number(), p50: z.number(), p95: z.number() }),
    }),
  ),
  cautions: z.array(z.string()),
});

export type PlaceTemperatureAnswer = z.infer<typeof placeTemperatureAnswer>;
export type CultureClock = z.infer<typeof cultureClock>;
export type TemperatureAnswer = z.infer<typeof temperatureAnswer>;
export type TemperatureWhatIfAnswer = z.infer<typeof temperatureWhatIfAnswer>;

/** The shapes of what is answered about temperature. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const celsius = z.number();
const reading = z.object({ on: isoDay, meanC: celsius, minC: celsius.nullable(), maxC: celsius.nullable() });

export const placeTemperatureAnswer = z.object({
  place: z.string(),
  name: z.string(),
  latest: reading.nullable(),
  readings: z.int(),
  limitsC: z.object({ low: celsius, high: celsius }),
  cupOffsetC: celsius,
  /** The room's daily mean in the coming fortnight, 5 to 95 %. */
  ahead: z.array(z.object({ date: isoDay, p05C: celsius, p50C: celsius, p95C: celsius })),
  /** What was expected a week before each reading, from the readings of then, and what came. */
  hindcast: z.object({
    leadDays: z.int(),
    days: z.array(z.object({ date: isoDay, expectedC: celsius, cameC: celsius, within90: z.boolean() })),
    /** Came less expected, mean and root of the mean square, C; null without days. */
    meanErrorC: celsius.nullable(),
    rmsErrorC: celsius.nullable(),
    within90Share: z.number().min(0).max(1).nullable(),
  }),
  alarms: z.array(z.string()),
});

export const cultureClock = z.object({
  id: z.string(),
  label: z.string(),
  strain: z.string(),
  place: z.string().nullable(),
  /** Share of the way from egg to adult of what was laid on the first day; 1 when done. */
  developmentShare: z.number().min(0).max(1),
  /** Degree-days above the strain's lower threshold since the start, day C. */
  degreeDays: z.number().min(0),
  thresholdC: celsius,
  /** Expected day of the first flies. */
  firstAdults: isoDay,
  /** Days that the last week's readings have moved it by, positive = later. */
  shiftDays: z.number(),
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
    }),
  ),
  cautions: z.array(z.string()),
});

export type PlaceTemperatureAnswer = z.infer<typeof placeTemperatureAnswer>;
export type CultureClock = z.infer<typeof cultureClock>;
export type TemperatureAnswer = z.infer<typeof temperatureAnswer>;
export type TemperatureWhatIfAnswer = z.infer<typeof temperatureWhatIfAnswer>;

/** What the answering routes may be asked with, in the query string. */
import { z } from '@hono/zod-openapi';
import { type Day, parseDay } from '../../foundation/index.ts';

const wholeNumber = (least: number, most: number, about: string) => {
  const error = `a whole number from ${least} to ${most}`;
  return z
    .string()
    .regex(/^\d{1,10}$/, { error })
    .transform(Number)
    .refine((n) => n >= least && n <= most, { error })
    .optional()
    .openapi({ type: 'integer', minimum: least, maximum: most, description: about });
};

export const dayText = z
  .string()
  .refine((text) => parseDay(text).ok, { error: 'a real calendar day such as 2026-11-25, from 1990 to 2200' })
  .transform((text) => text as Day)
  .openapi({ type: 'string', format: 'date' });

/** `on` is today and `seed` 1 when left out. */
export const questionQuery = z.strictObject({
  on: dayText.optional(),
  seed: wholeNumber(0, 2147483647, 'Seed of the random scenarios'),
  scenarios: wholeNumber(50, 100000, 'How many scenarios to draw'),
});

export const horizonQuery = questionQuery.extend({ weeks: wholeNumber(1, 104, 'Weeks ahead') });

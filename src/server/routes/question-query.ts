/** What the answering routes may be asked with, in the query string. */
import { z } from '@hono/zod-openapi';
import { type Day, degreeUnits, parseDay } from '../../foundation/index.ts';
import { wholeNumberText } from './number-query.ts';

export const dayText = z
  .string()
  .refine((text) => parseDay(text).ok, { error: 'a real calendar day such as 2026-11-25, from 1990 to 2200' })
  .transform((text) => text as Day)
  .openapi({ type: 'string', format: 'date' });

export const seedText = wholeNumberText(0, 2147483647, 'Seed of the random scenarios; 1 when left out');

/** Of the sentences in an answer; English when left out. */
export const sentenceLanguage = z.enum(['en', 'de']);

/** In what the sentences of an answer are told; English and degrees Celsius when left out. */
export const telling = {
  language: sentenceLanguage.optional(),
  degrees: z.enum(degreeUnits).optional().openapi({ description: 'Degrees in sentences; C when left out' }),
};

/** `on` is today when left out. */
export const questionQuery = z.strictObject({
  on: dayText.optional(),
  seed: seedText.optional(),
  scenarios: wholeNumberText(50, 100000, 'How many scenarios to draw').optional(),
  ...telling,
});

export const horizonQuery = questionQuery.extend({ weeks: wholeNumberText(1, 104, 'Weeks ahead').optional() });

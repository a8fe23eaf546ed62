/** Numbers and switches in a query string. */
import { z } from '@hono/zod-openapi';

export function numberText(about: string) {
  return z
    .string()
    .regex(/^-?\d{1,9}(\.\d{1,9})?$/, { error: 'a number' })
    .transform(Number)
    .openapi({ type: 'number', description: about });
}

export function wholeNumberText(least: number, most: number, about: string) {
  const error = `a whole number from ${least} to ${most}`;
  return z
    .string()
    .regex(/^\d{1,10}$/, { error })
    .transform(Number)
    .refine((n) => n >= least && n <= most, { error })
    .openapi({ type: 'integer', minimum: least, maximum: most, description: about });
}

export function yesNoText(about: string) {
  return z
    .enum(['true', 'false'], { error: 'true or false' })
    .transform((text) => text === 'true')
    .openapi({ type: 'boolean', description: about });
}

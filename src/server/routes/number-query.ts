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

/** First and last day of age, such as 3-8. */
export function ageSpanText(about: string) {
  return z
    .string()
    .regex(/^\d{1,3}-\d{1,3}$/, { error: 'first and last day of age, such as 3-8' })
    .transform((text) => {
      const [fromAgeDays, untilAgeDays] = text.split('-').map(Number) as [number, number];
      return { fromAgeDays, untilAgeDays };
    })
    .openapi({ type: 'string', example: '3-8', description: about });
}

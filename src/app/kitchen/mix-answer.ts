/** The shape of the answer to `mix`, at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const amount = z.number().min(0);

export const mixIngredient = z.object({
  ingredient: z.string(),
  massG: amount,
  /** To the step of the kitchen scale, and how far off that is (share). */
  weighedG: amount,
  weighedErrorShare: z.number(),
  /** By spoons and cups, where the ingredient's gram weight is known. */
  spoons: z
    .object({
      text: z.string(),
      parts: z.array(z.object({ measure: z.string(), count: amount })),
      errorShare: z.number(),
    })
    .nullable(),
});

export const mixDose = z.object({
  preservative: z.string(),
  percent: amount,
  basis: z.enum(['w/v', 'v/v']),
  amount,
  unit: z.enum(['g', 'ml']),
  stockMl: amount.nullable(),
  verdict: z.enum(['below-usual', 'usual', 'high', 'harmful']),
  /** Percent of the finished medium: usual from and to, warned above, and where harm was measured. */
  range: z.object({
    usualLowPercent: amount,
    usualHighPercent: amount,
    warnAbovePercent: amount,
    harmPercent: amount.nullable(),
  }),
  arithmetic: z.string(),
  source: z.string(),
});

export const workStep = z.object({
  step: z.string(),
  text: z.string(),
  afterMinutes: amount,
  takesMinutes: amount,
  cautions: z.array(z.string()),
});

export const mixCost = z.object({
  currency: z.string(),
  perCup: amount,
  /** With the cups that fail paid for by those that do not. */
  perGoodCup: amount,
  per100Flies: amount.nullable(),
  failureShare: amount,
  fliesPerGoodCup: amount.nullable(),
  lines: z.array(z.object({ item: z.string(), cost: amount })),
  missingPrices: z.array(z.string()),
});

export const mixAnswer = z.object({
  on: isoDay,
  recipe: z.string(),
  name: z.string(),
  method: z.enum(['cooked', 'soaked']),
  cups: amount,
  mediumMassG: amount.describe('In each cup'),
  mixedMassG: amount.describe('To put together, loss included'),
  finishedVolumeMl: amount.describe('Estimate that doses are reckoned on'),
  waterMl: amount,
  ingredients: z.array(mixIngredient),
  liquidToDryByMass: amount.nullable(),
  liquidToDryByVolume: amount.nullable(),
  doses: z.array(mixDose),
  warnings: z.array(z.string()),
  /** What the stock makes; null when no stock was ever counted. */
  onHand: z
    .object({
      cups: amount,
      limitedBy: z.string().nullable(),
      byIngredient: z.array(
        z.object({ ingredient: z.string(), perCupG: amount, onHandG: amount, cups: amount, leftG: z.number() }),
      ),
    })
    .nullable(),
  /** From the prices in stock entries; null when none was ever written. */
  cost: mixCost.nullable(),
  steps: z.array(workStep),
});

export type MixAnswer = z.infer<typeof mixAnswer>;

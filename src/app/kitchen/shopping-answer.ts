/** The shape of the answer to `shopping`, at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const amount = z.number().min(0);
const unit = z.enum(['g', 'piece']);

export const shoppingAnswer = z.object({
  on: isoDay,
  until: isoDay,
  recipe: z.string(),
  mix: z.array(z.object({ on: isoDay, massG: amount, forCups: amount, goodUntil: isoDay })),
  wash: z.array(z.object({ on: isoDay, cups: amount })),
  shop: z.array(
    z.object({ on: isoDay, items: z.array(z.object({ item: z.string(), missing: amount, unit, neededOn: isoDay })) }),
  ),
  /** Everything that is missing until then. */
  shoppingList: z.array(z.object({ item: z.string(), amount, unit, neededOn: isoDay, price: amount.nullable() })),
  /** Of the list, as far as prices are known. */
  price: amount,
  currency: z.string(),
  /** Needed by the plan but never counted: nothing can be said of them. */
  uncounted: z.array(z.string()),
});

export type ShoppingAnswer = z.infer<typeof shoppingAnswer>;
